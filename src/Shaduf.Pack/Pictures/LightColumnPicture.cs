using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The foot of a light column: from the side on its block, and its plate from above.</summary>
public static class LightColumnPicture
{
    /// <summary>Composes the picture.</summary>
    /// <param name="column">The column.</param>
    /// <param name="size">Size of the picture, at least 120 x 60 mm.</param>
    /// <param name="oneToFactor">n of the scale 1:n; left out, a scale of the book's that fits.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene Of(LightColumn column, PaperSize size, double? oneToFactor = null)
    {
        var foot = column.Foot;
        var pole = column.Steel.Parts[0];
        var heightMm = (2 * foot.GussetMm) + foot.ThicknessMm + 60 + foot.BoltInConcreteMm;
        var scale =
            oneToFactor
            ?? Math.Max(
                BookScale.FittingOneToFactor(heightMm, size.HeightMm - 14),
                BookScale.FittingOneToFactor(3 * foot.SideMm, size.WidthMm - 90)
            );
        var builder = new SceneBuilder(size);
        var topMm = 6 + (((2 * foot.GussetMm) + foot.ThicknessMm + 30) / scale);
        Side(builder.View(new(scale, new(0, 0), new(40, topMm))), foot, pole.Section.SideMm);
        Plate(builder.View(new(scale, new(0, 0), new(size.WidthMm - 52, topMm + 4))), foot, pole.Section.SideMm);
        var drawn = builder.Build().Bounds()!.Value;
        builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            Invariant(
                $"1:{scale:0.##}, millimetres; {pole.Mark} {pole.Section.Name}, {pole.LengthMm:0} long; left from the side, right the plate from above"
            ),
            TextStyle.Small
        );
        return builder.Build("foot of a light column");
    }

    private static void Side(SiteView view, PoleFoot foot, double poleMm)
    {
        var (half, bolt, radius) = (foot.SideMm / 2, foot.BoltSpacingMm / 2, poleMm / 2);
        var plateTop = foot.ThicknessMm;
        SitePoint[] block =
        [
            new(-half - 60, -30),
            new(half + 60, -30),
            new(half + 60, -foot.BoltInConcreteMm - 60),
            new(-half - 60, -foot.BoltInConcreteMm - 60),
        ];
        view.Hatch(HatchPattern.Concrete, block).Polygon(Layer.Concrete, block);
        foreach (var side in new[] { -1, 1 })
        {
            view.Line(
                Layer.Steel,
                new(side * bolt, plateTop + (2 * foot.BoltMm)),
                new(side * bolt, -foot.BoltInConcreteMm)
            );
            view.Polygon(
                Layer.Steel,
                [
                    new(side * radius, plateTop),
                    new(side * (radius + foot.GussetMm), plateTop),
                    new(side * radius, plateTop + foot.GussetMm),
                ],
                Palette.White
            );
        }

        view.Rectangle(Layer.Steel, new(-half, 0), new(half, plateTop), Palette.White);
        view.Rectangle(Layer.Steel, new(-radius, plateTop), new(radius, plateTop + (2 * foot.GussetMm)), Palette.White);
        view.Leader(
            new(half, plateTop / 2),
            8,
            -8,
            Invariant($"plate {foot.SideMm:0} x {foot.SideMm:0} x {foot.ThicknessMm:0}")
        );
        view.Leader(
            new(bolt, -foot.BoltInConcreteMm * 0.5),
            14,
            4,
            Invariant(
                $"4 bolts M{foot.BoltMm:0}, {foot.BoltLengthMm:0} long,\n{foot.BoltInConcreteMm:0} in the concrete"
            )
        );
        view.Leader(
            new(radius + (foot.GussetMm * 0.3), plateTop + (foot.GussetMm * 0.5)),
            14,
            -12,
            Invariant($"4 gussets {foot.GussetMm:0} x {foot.GussetMm:0} x {foot.GussetThicknessMm:0}")
        );
    }

    private static void Plate(SiteView view, PoleFoot foot, double poleMm)
    {
        var (half, bolt, radius) = (foot.SideMm / 2, foot.BoltSpacingMm / 2, poleMm / 2);
        view.Rectangle(Layer.Steel, new(-half, -half), new(half, half), Palette.White);
        view.Circle(Layer.Steel, new(0, 0), radius);
        foreach (var (x, y) in new[] { (-1, -1), (-1, 1), (1, -1), (1, 1) })
        {
            view.Circle(Layer.Steel, new(x * bolt, y * bolt), foot.BoltMm / 2);
        }

        var thick = foot.GussetThicknessMm / 2;
        foreach (var side in new[] { -1, 1 })
        {
            view.Rectangle(Layer.Steel, new(side * radius, -thick), new(side * (radius + foot.GussetMm), thick));
            view.Rectangle(Layer.Steel, new(-thick, side * radius), new(thick, side * (radius + foot.GussetMm)));
        }

        view.Dimensions(
            DimensionSide.Below,
            [new(new(-half, -half), new(half, -half)), new(new(-bolt, -half), new(bolt, -half))]
        );
    }
}
