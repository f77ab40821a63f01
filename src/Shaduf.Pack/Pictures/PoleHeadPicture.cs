using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The head of a pole: what is held there, and how.</summary>
internal static class PoleHeadPicture
{
    private const double OneToFactor = 10;

    // Two holders of the rod on the tube's side, 100 and 400 mm below its end; common practice, no source.
    private static readonly double[] s_holdersMm = [100, 400];
    private const double RodMm = 16;

    /// <summary>Composes the picture.</summary>
    /// <param name="pole">The pole.</param>
    public static Scene Of(LightColumnStrength pole)
    {
        var radius = pole.Column.Size.DiameterMm / 2;
        var view = new SceneBuilder(new(400, 300)).View(new(OneToFactor, new(0, 0), new(150, 150)));
        view.Rectangle(Layer.Steel, new(-radius, -600), new(radius, 0), Palette.White);
        view.Line(Layer.Centre, new(0, -650), new(0, 60));
        if (pole.IsMast)
        {
            Rod(view, radius);
        }
        else
        {
            Lamp(view, pole.Column, radius);
        }

        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            Invariant($"1:{OneToFactor:0}, millimetres; head of {pole.Column.Pole.Mark}, its tube closed by a cap"),
            TextStyle.Small
        );
        return view.Builder.Build("head of a pole").Trimmed();
    }

    private static void Rod(SiteView view, double radius)
    {
        var x = radius + 20;
        view.Rectangle(
            Layer.Steel,
            new(x - (RodMm / 2), LightColumn.TipMm - LightColumn.AirRodMm),
            new(x + (RodMm / 2), LightColumn.TipMm),
            Palette.White
        );
        foreach (var down in s_holdersMm)
        {
            view.Rectangle(
                Layer.Outline,
                new(-radius - 6, -down - 15),
                new(x + 18, -down + 15),
                Palette.Steel.Tint(0.3)
            );
        }

        view.Leader(
            new(x, LightColumn.TipMm * 0.6),
            12,
            -6,
            Invariant($"air rod {RodMm:0}, {LightColumn.AirRodMm:0} long, its tip {LightColumn.TipMm:0} over the tube")
        );
        view.Leader(new(x + 18, -s_holdersMm[0]), 10, 4, "two holders clamped round the tube");
        view.Leader(new(x, -s_holdersMm[^1] - 50), 14, 8, "down conductor clamped to the rod's lower end");
        view.Dimensions(
            DimensionSide.Left,
            [
                new(new(-radius, 0), new(-radius, LightColumn.TipMm)),
                new(new(-radius, -s_holdersMm[^1]), new(-radius, -s_holdersMm[0])),
            ]
        );
    }

    private static void Lamp(SiteView view, LightColumn column, double radius)
    {
        view.Rectangle(Layer.Outline, new(-radius - 6, -90), new(radius + 6, -40), Palette.Steel.Tint(0.3));
        view.Line(Layer.Steel, new(radius + 6, -65), new(radius + 220, 0));
        view.Rectangle(Layer.Outline, new(radius + 200, -20), new(radius + 560, 30), Palette.White);
        view.Leader(new(radius + 400, 0), 10, -10, Invariant($"lamp, {column.HeightMm:0} over the ground"));
        view.Leader(new(radius + 6, -80), 14, 14, "bracket clamped round the tube, bolts by the lamp's card");
    }
}
