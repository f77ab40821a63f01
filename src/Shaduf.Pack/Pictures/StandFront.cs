using Shaduf.Ground;
using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The stand seen from its ladder: blocks, legs, diagonals, platform, tank, with heights.</summary>
public static class StandFront
{
    /// <summary>Composes the picture from the solid model.</summary>
    /// <param name="design">The stands.</param>
    /// <param name="size">Size of the picture, at least 120 x 120 mm.</param>
    /// <param name="oneToFactor">n of the scale 1:n; left out, a scale of the book's that fits.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene Of(StandDesign design, PaperSize size, double? oneToFactor = null)
    {
        var (stand, plan, block) = (design.Stand, design.Stand.Plan, design.Footings.Block);
        var tank = plan.Tank;
        var topMm = plan.FloorMm + Math.Max(tank.HeightMm, StandAccess.RailMm);
        var (lowMm, highMm) = (
            design.FootingsAtMm.Min(at => at.XMm) - (block.LengthMm / 2),
            design.FootingsAtMm.Max(at => at.XMm) + (block.LengthMm / 2)
        );
        var (leftMm, rightMm) = (Math.Min(plan.WidthMm.LeftMm, lowMm), Math.Max(plan.WidthMm.RightMm, highMm));
        var scale =
            oneToFactor
            ?? Math.Max(
                BookScale.FittingOneToFactor(rightMm - leftMm, size.WidthMm - 80),
                BookScale.FittingOneToFactor(topMm + block.DepthMm, size.HeightMm - 34)
            );
        var view = new SceneBuilder(size).View(
            new(scale, new(leftMm, 0), new((size.WidthMm - ((rightMm - leftMm) / scale)) / 2, 6 + (topMm / scale)))
        );
        foreach (var x in design.FootingsAtMm.Select(at => at.XMm).Distinct())
        {
            Concrete(view, (x, block.LengthMm), -block.DepthMm, 0);
        }

        foreach (var x in plan.LegXMm)
        {
            Concrete(view, (x, block.PlinthSideMm), 0, block.PlinthHeightMm);
        }

        view.Line(Layer.Ground, new(leftMm - 400, 0), new(rightMm + 400, 0));
        Tank(view, plan);
        foreach (var part in stand.Steel.Parts.Where(IsInFront))
        {
            Bar(view, part);
        }

        Rungs(view, stand);
        Deck(view, plan);
        Marks(view, stand);
        Heights(view, plan, block, (leftMm, highMm));
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(drawn.LeftMm, drawn.BottomMm + 5),
            Invariant($"1:{scale:0.##}, millimetres; seen from the side of the ladder, the front row of legs"),
            TextStyle.Small
        );
        return view.Builder.Build("stand of the tank, seen from its front");
    }

    private static void Concrete(SiteView view, (double MiddleMm, double LengthMm) at, double lowMm, double highMm)
    {
        var (left, right) = (at.MiddleMm - (at.LengthMm / 2), at.MiddleMm + (at.LengthMm / 2));
        SitePoint[] outline = [new(left, highMm), new(right, highMm), new(right, lowMm), new(left, lowMm)];
        view.Hatch(HatchPattern.Concrete, outline).Polygon(Layer.Concrete, outline);
    }

    private static void Tank(SiteView view, StandPlan plan)
    {
        var half = plan.Tank.WidthMm / 2;
        view.Rectangle(
            Layer.Water,
            new(plan.MiddleMm - half, plan.FloorMm),
            new(plan.MiddleMm + half, plan.FloorMm + plan.Tank.HeightMm),
            Palette.Water.Tint(0.12)
        );
        view.Text(
            new(
                plan.MiddleMm,
                plan.FloorMm
                    + Math.Max(
                        plan.Tank.HeightMm / 2,
                        (plan.Tank.HeightMm + Math.Min(plan.Tank.HeightMm, StandAccess.RailMm)) / 2
                    )
            ),
            Invariant($"{plan.Tank.Name}, {plan.Tank.WaterM3:0.#} m3"),
            TextStyle.Small.Centred
        );
    }

    // The front row and what stands before it; joists are seen on end.
    private static bool IsInFront(Part part) =>
        Math.Max(part.Shape.Start.YMm, part.Shape.End.YMm) < 1 || part.Mark[0] == 'J';

    private static void Bar(SiteView view, Part part)
    {
        var (from, to, half) = (At(part.Shape.Start), At(part.Shape.End), part.Section.SideMm / 2);
        if (part.Mark[0] == 'J')
        {
            view.Rectangle(
                Layer.Steel,
                new(from.XMm - half, from.YMm - half),
                new(from.XMm + half, from.YMm + half),
                Palette.White
            );
            return;
        }

        var lengthMm = Math.Sqrt(Math.Pow(to.XMm - from.XMm, 2) + Math.Pow(to.YMm - from.YMm, 2));
        var (acrossX, acrossY) = (-(to.YMm - from.YMm) / lengthMm * half, (to.XMm - from.XMm) / lengthMm * half);
        view.Polygon(
            part.Mark[0] is 'Q' or 'U' or 'V' ? Layer.Thin : Layer.Steel,
            [
                new(from.XMm + acrossX, from.YMm + acrossY),
                new(to.XMm + acrossX, to.YMm + acrossY),
                new(to.XMm - acrossX, to.YMm - acrossY),
                new(from.XMm - acrossX, from.YMm - acrossY),
            ],
            Palette.White
        );
    }

    // The last rung is level with the deck; nothing bars the way between the hand holds.
    private static void Rungs(SiteView view, TankStand stand)
    {
        var stiles = stand.Steel.Parts.Where(part => part.Mark[0] == 'V').Select(part => part.Shape.Start.XMm).ToList();
        var half = stand.Plan.Sections.Rail.SideMm / 2;
        for (var i = 1; i <= stand.Access.RungCount; i++)
        {
            var up = i * stand.Access.RungSpacingMm;
            view.Line(Layer.Thin, new(stiles.Min() + half, up), new(stiles.Max() - half, up));
        }
    }

    private static void Deck(SiteView view, StandPlan plan) =>
        view.Rectangle(
            Layer.Steel,
            new(plan.WidthMm.LeftMm, plan.FloorMm - StandPlan.DeckMm),
            new(plan.WidthMm.RightMm, plan.FloorMm)
        );

    // Marks stand in a column to the right of all that is drawn, in the order of their heights.
    private static void Marks(SiteView view, TankStand stand)
    {
        var plan = stand.Plan;
        var right = view.At(new(plan.WidthMm.RightMm, 0)).XMm + 12;
        var lowestMm = double.NegativeInfinity;
        foreach (var (tip, text) in Tips(stand).OrderByDescending(each => each.Tip.YMm))
        {
            var at = view.At(tip);
            lowestMm = Math.Max(lowestMm + 6.5, at.YMm + 3);
            view.Leader(tip, right - at.XMm, lowestMm - at.YMm, text);
        }
    }

    private static IEnumerable<(SitePoint Tip, string Text)> Tips(TankStand stand)
    {
        var plan = stand.Plan;
        foreach (var (letter, zMm) in new[] { ('J', plan.JoistZMm), ('G', plan.BeamZMm) })
        {
            var part = stand.Steel.Parts.First(each => each.Mark[0] == letter);
            yield return (
                new(plan.WidthMm.RightMm - (part.Section.SideMm / 2), zMm),
                $"{part.Mark} {part.Section.Name}"
            );
        }

        foreach (var (letter, share) in new[] { ('L', 0.5), ('X', 0.42), ('H', 0.8) })
        {
            var part = stand.Steel.Parts.Where(IsInFront).Last(each => each.Mark[0] == letter);
            yield return (
                At(part.Shape.Start + ((part.Shape.End - part.Shape.Start) * share)),
                $"{part.Mark} {part.Section.Name}"
            );
        }

        var stile = stand.Steel.Parts.Last(part => part.Mark[0] == 'V');
        yield return (
            At(stile.Shape.Start + ((stile.Shape.End - stile.Shape.Start) * 0.12)),
            Invariant($"ladder {stile.Mark}, {stand.Access.RungCount} rungs")
        );
    }

    private static void Heights(SiteView view, StandPlan plan, FootingBlock block, (double LeftMm, double RightMm) edge)
    {
        var left = edge.LeftMm;
        view.DimensionChain(
            DimensionSide.Left,
            [
                new(left, -block.DepthMm),
                new(left, 0),
                new(left, StandPlan.FootMm),
                .. plan.LevelsMm.Skip(1).Select(level => new SitePoint(left, level)),
                new(left, plan.FloorMm),
                new(left, plan.FloorMm + plan.Tank.HeightMm),
            ],
            withOverall: false
        );
        view.Dimensions(
            DimensionSide.Left,
            [new(new(left, 0), new(left, plan.FloorMm))],
            DimensionLayout.House with
            {
                FirstMm = 23,
            }
        );
        view.Dimensions(
            DimensionSide.Below,
            [
                new(new(edge.RightMm - block.LengthMm, -block.DepthMm), new(edge.RightMm, -block.DepthMm)),
                .. plan.LegXMm.Zip(
                    plan.LegXMm.Skip(1),
                    (a, b) => new Dimension(new(a, -block.DepthMm), new(b, -block.DepthMm))
                ),
            ]
        );
    }

    private static SitePoint At(Point point) => new(point.XMm, point.ZMm);
}
