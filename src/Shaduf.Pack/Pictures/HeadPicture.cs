using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The head of a borehole on its slab, to scale, and its fittings in the order of the flow, as signs.</summary>
internal static class HeadPicture
{
    private const double CasingAboveMm = 300;
    private const double PipeAboveMm = 600;
    private const double StepMm = 13;

    /// <summary>The slab with the casing, cut.</summary>
    /// <param name="design">The design.</param>
    /// <param name="build">What is built.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static Scene Slab(Design design, WellBuild build, double oneToFactor)
    {
        var (casingMm, lift) = (design.Survey["casing"], design.Choice.Lift);
        var seal = design.Brief.Source is BoreholeBrief { SealM: { } sealM }
            ? Invariant($"the ring round it grouted to {sealM:0.#} m down")
            : "the ring round it sealed with grout: see the driller's log";
        var (half, thick, bore) = (build.Apron.SideM * 500, build.Apron.ThickM * 1000, casingMm / 2);
        var view = new SceneBuilder(new(600, 400)).View(new(oneToFactor, new(0, 0), new(300, 200)));
        foreach (var side in new[] { -1, 1 })
        {
            SitePoint[] slab =
            [
                new(side * bore, 0),
                new(side * half, 0),
                new(side * half, thick),
                new(side * bore, thick),
            ];
            view.Hatch(HatchPattern.Concrete, slab).Polygon(Layer.Concrete, slab);
            view.Line(Layer.Ground, new(side * half, 0), new(side * (half + 400), 0));
            view.Line(Layer.Steel, new(side * bore, -700), new(side * bore, thick + CasingAboveMm));
        }

        view.Rectangle(
            Layer.Steel,
            new(-bore - 30, thick + CasingAboveMm),
            new(bore + 30, thick + CasingAboveMm + 20),
            Palette.Steel.Tint(0.6)
        );
        view.Polyline(Layer.Pipe, [new(0, -700), new(0, thick + PipeAboveMm), new(half + 400, thick + PipeAboveMm)]);
        view.Dimensions(DimensionSide.Below, [new(new(-half, -700), new(half, -700))]);
        view.Dimensions(
            DimensionSide.Left,
            [
                new(new(-half, 0), new(-half, thick)),
                new(new(-half, thick), new(-bore, thick + CasingAboveMm)),
                new(new(-half, thick), new(0, thick + PipeAboveMm)),
            ]
        );
        view.Leader(new(bore, -350), 12, 4, Invariant($"casing {casingMm:0} mm, {seal}"));
        view.Leader(
            new(bore + 200, thick + PipeAboveMm),
            10,
            -6,
            $"riser {lift.Foot.Card.Name}, main {lift.Lay.Reaches[0].Pipe.Name}"
        );
        return Titled(
            view,
            Invariant(
                $"1:{oneToFactor:0.##}, millimetres; slab {build.Apron.SideM * 1000:0} x {build.Apron.SideM * 1000:0}, concrete {build.Apron.Mix}, falling 2 % away from the casing"
            )
        );
    }

    /// <summary>Fittings in a row, the flow from the left.</summary>
    /// <param name="fittings">The fittings in order.</param>
    public static Scene Row(IReadOnlyList<SourceFitting> fittings)
    {
        var builder = new SceneBuilder(new(((fittings.Count + 1) * StepMm) + 4, 34));
        builder.Line(Layer.Pipe, new(2, 22), new(((fittings.Count + 1) * StepMm) + 2, 22));
        builder.Polygon(
            Layer.Pipe,
            [
                new(2 + ((fittings.Count + 1) * StepMm), 22),
                new(((fittings.Count + 1) * StepMm) - 2, 20.5),
                new(((fittings.Count + 1) * StepMm) - 2, 23.5),
            ],
            Palette.Water
        );
        foreach (var (i, fitting) in fittings.Index())
        {
            PaperPoint at = new(2 + ((i + 1) * StepMm), 22);
            Sign(builder, at, fitting.Item);
            builder.Balloon(at.Moved(0, -15), Invariant($"{fitting.Order}"));
        }

        return builder.Build("fittings in the order of the flow").Trimmed();
    }

    private static void Sign(SceneBuilder builder, PaperPoint at, string item)
    {
        switch (item)
        {
            case "washout-tee":
                builder.Line(Layer.Pipe, at, at.Moved(0, 9)).Line(Layer.Pipe, at.Moved(0, 9), at.Moved(-1.5, 11));
                builder.Polygon(
                    Layer.Outline,
                    [at.Moved(-2, 2), at.Moved(2, 8), at.Moved(-2, 8), at.Moved(2, 2)],
                    Palette.White
                );
                break;
            case "gate-valve":
                builder.Polygon(
                    Layer.Outline,
                    [at.Moved(-3, -2), at.Moved(3, 2), at.Moved(3, -2), at.Moved(-3, 2)],
                    Palette.White
                );
                break;
            case "check-valve" or "foot-valve":
                builder.Polygon(
                    Layer.Outline,
                    [at.Moved(-2.5, -2), at.Moved(2.5, 0), at.Moved(-2.5, 2)],
                    Palette.White
                );
                builder.Line(Layer.Outline, at.Moved(2.5, -2), at.Moved(2.5, 2));
                break;
            case "flow-meter" or "pressure-gauge" or "vacuum-gauge" or "air-valve":
                var up = item == "flow-meter" ? 0 : -6.0;
                builder.Line(Layer.Outline, at, at.Moved(0, up));
                builder.Circle(Layer.Outline, at.Moved(0, up), 2.6, Palette.White);
                builder.Text(
                    at.Moved(0, up),
                    item switch
                    {
                        "flow-meter" => "Q",
                        "air-valve" => "A",
                        _ => "p",
                    },
                    TextStyle.Small.Centred
                );
                break;
            case "union" or "hose-coupling":
                builder.Line(Layer.Outline, at.Moved(-0.8, -2.4), at.Moved(-0.8, 2.4));
                builder.Line(Layer.Outline, at.Moved(0.8, -2.4), at.Moved(0.8, 2.4));
                break;
            case "sampling-cock" or "priming-tee":
                builder.Polyline(Layer.Outline, [at, at.Moved(0, -5), at.Moved(2.5, -5)]);
                break;
            default:
                builder.Rectangle(Layer.Outline, PaperBox.Round([at.Moved(-2, -1.6), at.Moved(2, 1.6)]), Palette.White);
                break;
        }
    }

    private static Scene Titled(SiteView view, string says)
    {
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(new(drawn.LeftMm, drawn.BottomMm + 5), says, TextStyle.Small);
        return view.Builder.Build(says).Trimmed();
    }
}
