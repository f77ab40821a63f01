using Shaduf.Parts;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The stand seen from above: legs on their blocks, row beams, joists, platform, tank, ladder.</summary>
public static class StandAbove
{
    /// <summary>Composes the picture from the solid model.</summary>
    /// <param name="design">The stands.</param>
    /// <param name="size">Size of the picture, at least 120 x 100 mm.</param>
    /// <param name="oneToFactor">n of the scale 1:n; left out, a scale of the book's that fits.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene Of(StandDesign design, PaperSize size, double? oneToFactor = null)
    {
        var (stand, plan, block) = (design.Stand, design.Stand.Plan, design.Footings.Block);
        var (halfLong, half) = (block.LengthMm / 2, block.WidthMm / 2);
        var middles = design.FootingsAtMm;
        var (leftMm, rightMm) = (
            Math.Min(plan.WidthMm.LeftMm, middles.Min(at => at.XMm) - halfLong),
            Math.Max(plan.WidthMm.RightMm, middles.Max(at => at.XMm) + halfLong)
        );
        var (frontMm, backMm) = (
            Math.Min(plan.DepthMm.FrontMm, -half),
            Math.Max(plan.DepthMm.BackMm, plan.SideMm + half)
        );
        var scale =
            oneToFactor
            ?? Math.Max(
                BookScale.FittingOneToFactor(rightMm - leftMm, size.WidthMm - 84),
                BookScale.FittingOneToFactor(backMm - frontMm, size.HeightMm - 36)
            );
        var view = new SceneBuilder(size).View(
            new(scale, new(leftMm, backMm), new((size.WidthMm - ((rightMm - leftMm) / scale)) / 2, 6))
        );
        foreach (var (x, y) in middles)
        {
            view.Rectangle(Layer.Hidden, new(x - halfLong, y - half), new(x + halfLong, y + half));
        }

        view.Rectangle(
            Layer.Outline,
            new(plan.WidthMm.LeftMm, plan.DepthMm.FrontMm),
            new(plan.WidthMm.RightMm, plan.DepthMm.BackMm)
        );
        foreach (var part in stand.Steel.Parts.Where(part => part.Mark[0] is 'J' or 'G'))
        {
            Bar(view, part);
        }

        foreach (var brace in stand.Steel.Parts.Where(part => part.Mark[0] == 'Z'))
        {
            var (from, to) = (brace.Shape.Start, brace.Shape.End);
            view.Line(Layer.Hidden, new(from.XMm, from.YMm), new(to.XMm, to.YMm));
        }

        Legs(view, stand);
        Tank(view, plan);
        Ladder(view, stand);
        Labels(view, stand);
        Lengths(view, plan, (frontMm, rightMm));
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            Invariant($"1:{scale:0.##}, millimetres; the deck taken off; broken lines: footings in the ground"),
            TextStyle.Small
        );
        return view.Builder.Build("stand of the tank, seen from above");
    }

    private static void Bar(SiteView view, Part part)
    {
        var (from, to, half) = (part.Shape.Start, part.Shape.End, part.Section.SideMm / 2);
        var isAlong = part.Mark[0] == 'G';
        view.Rectangle(
            Layer.Steel,
            isAlong ? new(from.XMm, from.YMm - half) : new(from.XMm - half, from.YMm),
            isAlong ? new(to.XMm, to.YMm + half) : new(to.XMm + half, to.YMm),
            Palette.White
        );
    }

    private static void Legs(SiteView view, TankStand stand)
    {
        var half = stand.Plan.Sections.Leg.SideMm / 2;
        foreach (var (i, foot) in stand.Skeleton.Feet.Index())
        {
            var (x, y) = (foot.Ground.XMm, foot.Ground.YMm);
            view.Rectangle(Layer.Outline, new(x - half, y - half), new(x + half, y + half), Palette.Steel.Tint(0.4));
            view.Builder.Balloon(
                view.At(new(x, y)).Moved(i < stand.Plan.RowCount ? -5 : 5, i < stand.Plan.RowCount ? 5 : -5),
                Invariant($"{i + 1}")
            );
        }
    }

    private static void Tank(SiteView view, StandPlan plan)
    {
        var (middle, half) = (plan.MiddleMm, plan.Tank.WidthMm / 2);
        if (plan.Tank.IsRound)
        {
            view.Circle(Layer.Water, new(middle, middle), half);
        }
        else
        {
            view.Rectangle(Layer.Water, new(middle - half, middle - half), new(middle + half, middle + half));
        }
    }

    private static void Ladder(SiteView view, TankStand stand)
    {
        var stiles = stand.Steel.Parts.Where(part => part.Mark[0] == 'V').ToList();
        var half = stiles[0].Section.SideMm / 2;
        foreach (var stile in stiles)
        {
            var (x, y) = (stile.Shape.Start.XMm, stile.Shape.Start.YMm);
            view.Rectangle(Layer.Outline, new(x - half, y - half), new(x + half, y + half), Palette.Steel);
        }

        view.Line(
            Layer.Outline,
            new(stiles[0].Shape.Start.XMm, stiles[0].Shape.Start.YMm),
            new(stiles[1].Shape.Start.XMm, stiles[1].Shape.Start.YMm)
        );
    }

    private static void Labels(SiteView view, TankStand stand)
    {
        var plan = stand.Plan;
        foreach (var (letter, y, down) in new[] { ('J', plan.MiddleMm, 4), ('G', plan.SideMm, -4) })
        {
            var parts = stand.Steel.Parts.Where(part => part.Mark[0] == letter).ToList();
            var marks = string.Join(
                ", ",
                parts.GroupBy(part => part.Mark).Select(alike => Invariant($"{alike.Count()} {alike.Key}"))
            );
            view.Leader(
                new(plan.WidthMm.LeftMm + (parts[0].Section.SideMm / 2), y),
                -20,
                down,
                $"{marks} {parts[0].Section.Name}"
            );
        }

        view.Leader(
            new(plan.WidthMm.LeftMm + (StandAccess.GateMm / 2), plan.DepthMm.FrontMm),
            -26,
            6,
            "ladder and gate"
        );
    }

    private static void Lengths(SiteView view, StandPlan plan, (double FrontMm, double RightMm) edge)
    {
        var joists = plan.JoistXMm;
        view.Dimensions(
            DimensionSide.Below,
            [
                .. plan.LegXMm.Zip(
                    plan.LegXMm.Skip(1),
                    (a, b) => new Dimension(new(a, edge.FrontMm), new(b, edge.FrontMm))
                ),
                new(new(plan.WidthMm.LeftMm, edge.FrontMm), new(plan.WidthMm.RightMm, edge.FrontMm)),
                new(new(joists[0], edge.FrontMm), new(joists[^1], edge.FrontMm))
                {
                    Text = Invariant($"{joists.Count - 1} × {plan.PitchMm:0}"),
                },
            ]
        );
        if (!plan.IsPaired)
        {
            view.DimensionChain(
                DimensionSide.Above,
                [.. plan.RowsXMm[1].Select(x => new SitePoint(x, plan.DepthMm.BackMm))],
                withOverall: false
            );
        }

        view.DimensionChain(
            DimensionSide.Right,
            [
                new(edge.RightMm, plan.DepthMm.FrontMm),
                new(edge.RightMm, 0),
                new(edge.RightMm, plan.SideMm),
                new(edge.RightMm, plan.DepthMm.BackMm),
            ]
        );
    }
}
