using Shaduf.Ground;
using Shaduf.Power;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The pits of all racks from above, with the two pegs that they are taped from.</summary>
internal static class PitPlanPicture
{
    private static readonly PaperSize s_room = new(900, 900);

    /// <summary>Composes the picture.</summary>
    /// <param name="plan">The pits.</param>
    /// <param name="field">The racks on the ground.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static Scene Of(PitPlan plan, GuardField field, double oneToFactor)
    {
        var view = new SceneBuilder(s_room).View(new(oneToFactor, new(0, 0), new(300, 600)));
        for (var rack = 0; rack < field.RackCount; rack++)
        {
            var low = rack * field.PitchM;
            view.Rectangle(Layer.Hidden, SitePoint.Metres(0, low), SitePoint.Metres(field.LengthM, low + field.RackM));
        }

        Tapes(view, plan);
        foreach (var pit in plan.Pits)
        {
            Pit(view, plan.Block, pit);
        }

        Pegs(view, plan);
        Sizes(view, plan, field);
        Names(view, plan);
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            Invariant(
                $"1:{oneToFactor:0.##}, millimetres, seen from above, low edge below; broken lines: the racks' planes"
            ),
            TextStyle.Small
        );
        return view.Builder.Build("pits from two pegs").Trimmed();
    }

    private static SitePoint At(GroundPlace place) => SitePoint.Metres(place.XM, place.YM);

    private static void Pit(SiteView view, FootingBlock block, Pit pit)
    {
        var (x, y) = (pit.Middle.XM * 1000, pit.Middle.YM * 1000);
        SitePoint[] corners =
        [
            new(x - (block.LengthMm / 2), y - (block.WidthMm / 2)),
            new(x + (block.LengthMm / 2), y - (block.WidthMm / 2)),
            new(x + (block.LengthMm / 2), y + (block.WidthMm / 2)),
            new(x - (block.LengthMm / 2), y + (block.WidthMm / 2)),
        ];
        view.Polygon(Layer.Concrete, corners, Palette.White);
        var middle = view.At(At(pit.Middle));
        view.Builder.Line(Layer.Thin, middle.Moved(-1.5, 0), middle.Moved(1.5, 0));
        view.Builder.Line(Layer.Thin, middle.Moved(0, -1.5), middle.Moved(0, 1.5));
        foreach (var column in pit.Columns)
        {
            view.Builder.Circle(Layer.Thin, view.At(At(column.Place)), 0.6, Palette.Ink);
        }

        // Beside the pit's upper right corner, where no other pit lies.
        view.Builder.Text(
            view.At(corners[2]).Moved(0.8, 0),
            pit.Name,
            TextStyle.Small with
            {
                Weight = FontWeight.Bold,
                IsOpaque = true,
            }
        );
    }

    // The tapes of the pit at which they cross flattest, as an example.
    private static void Tapes(SiteView view, PitPlan plan)
    {
        var pit = plan.Pits.MinBy(pit => pit.CrossingDeg)!;
        view.Line(Layer.Thin, At(plan.A), At(pit.Middle)).Line(Layer.Thin, At(plan.B), At(pit.Middle));
    }

    private static void Pegs(SiteView view, PitPlan plan)
    {
        foreach (var place in new[] { plan.A, plan.B })
        {
            var at = view.At(At(place));
            view.Builder.Polygon(
                Layer.Outline,
                [at.Moved(-1.6, 1.4), at.Moved(1.6, 1.4), at.Moved(0, -1.8)],
                Palette.Sun.Tint(0.6)
            );
        }

        view.Line(Layer.Centre, At(plan.A), At(plan.B));
    }

    // The line from peg to peg runs on to their names, beyond all dimensions.
    private static void Names(SiteView view, PitPlan plan)
    {
        var drawn = view.Builder.Build().Bounds()!.Value;
        foreach (var (name, place, x) in new[] { ("A", plan.A, drawn.LeftMm - 4), ("B", plan.B, drawn.RightMm + 4) })
        {
            var at = view.At(At(place));
            view.Builder.Line(Layer.Thin, at, at with { XMm = x }).Balloon(at with { XMm = x }, name);
        }
    }

    private static void Sizes(SiteView view, PitPlan plan, GuardField field)
    {
        var (a, b) = (plan.A, plan.B);
        var columns = plan.Pits.Select(pit => pit.Middle.XM).Distinct().Order().ToList();
        var rows = plan.Pits.Select(pit => pit.Middle.YM).Distinct().Order().ToList();
        view.DimensionChain(DimensionSide.Below, [At(a), .. columns.Select(x => SitePoint.Metres(x, a.YM)), At(b)]);
        var left = Math.Min(a.XM, 0);
        view.DimensionChain(
            DimensionSide.Left,
            [SitePoint.Metres(left, a.YM), .. rows.Select(y => SitePoint.Metres(left, y))],
            withOverall: false
        );
        var right = Math.Max(b.XM, field.LengthM);
        view.Dimensions(DimensionSide.Right, [new(SitePoint.Metres(right, a.YM), SitePoint.Metres(field.LengthM, 0))]);
    }
}
