using Shaduf.Ground;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>One footing with its columns: from the side, and from above.</summary>
internal static class FootingPicture
{
    // The ground is drawn so far beyond the pit, on the paper no farther than dimension lines may stand off.
    private static double BeyondMm(double oneToFactor) => Math.Min(400, 40 * oneToFactor);

    private static readonly PaperSize s_room = new(900, 900);

    /// <summary>The footing of the first pit, cut across the row.</summary>
    public static Scene Side(Rack rack, PitPlan plan, double oneToFactor)
    {
        var (pit, block) = (plan.Pits[0], plan.Block);
        var bent = new RackEnd(rack, rack.TubePlacesMm[0]);
        var view = new SceneBuilder(s_room).View(new(oneToFactor, new(0, 0), new(300, 500)));
        var (y, half) = (pit.Middle.YM * 1000, block.WidthMm / 2);
        var (ground, bottom) = (pit.GroundM * 1000, pit.BottomM * 1000);
        view.Concrete(new(y - half, bottom), new(y + half, ground));
        foreach (var column in pit.Columns)
        {
            var (at, side, top) = (column.Place.YM * 1000, block.PlinthSideMm / 2, column.PlinthTopM * 1000);
            view.Concrete(new(at - side, top - block.PlinthHeightMm), new(at + side, top));
            Column(view, rack, column);
        }

        var beyond = half + BeyondMm(oneToFactor);
        view.Line(Layer.Ground, new(y - beyond, bent.GroundMm(y - beyond)), new(y + beyond, bent.GroundMm(y + beyond)));
        Levels(view, rack, plan);
        return FrameDetails.Titled(view, oneToFactor, Invariant($"pit {pit.Name}, cut across the row"));
    }

    /// <summary>The footing of the first pit from above.</summary>
    public static Scene Above(Rack rack, PitPlan plan, double oneToFactor)
    {
        var (pit, block) = (plan.Pits[0], plan.Block);
        var view = new SceneBuilder(s_room).View(new(oneToFactor, new(0, 0), new(300, 500)));
        var (x, y) = (pit.Middle.XM * 1000, pit.Middle.YM * 1000);
        var (left, right) = (x - (block.LengthMm / 2), x + (block.LengthMm / 2));
        var (near, far) = (y - (block.WidthMm / 2), y + (block.WidthMm / 2));
        view.Rectangle(Layer.Concrete, new(left, near), new(right, far));
        foreach (var place in pit.Columns.Select(column => column.Place))
        {
            var (atX, atY) = (place.XM * 1000, place.YM * 1000);
            foreach (
                var (side, layer) in new[]
                {
                    (block.PlinthSideMm, Layer.Outline),
                    (rack.Sections.Column.SideMm, Layer.Steel),
                }
            )
            {
                view.Rectangle(layer, new(atX - (side / 2), atY - (side / 2)), new(atX + (side / 2), atY + (side / 2)));
            }
        }

        var columns = pit.Columns.Select(column => column.Place).ToList();
        view.DimensionChain(
            DimensionSide.Below,
            [
                new(left, near),
                .. Stops(columns.Select(place => place.XM)).Select(at => new SitePoint(at, near)),
                new(right, near),
            ]
        );
        view.DimensionChain(
            DimensionSide.Left,
            [
                new(left, near),
                .. Stops(columns.Select(place => place.YM)).Select(at => new SitePoint(left, at)),
                new(left, far),
            ]
        );
        view.Dimensions(
            DimensionSide.Right,
            [
                new(
                    new(right, (columns[0].YM * 1000) - (block.PlinthSideMm / 2)),
                    new(right, (columns[0].YM * 1000) + (block.PlinthSideMm / 2))
                ),
            ]
        );
        return FrameDetails.Titled(
            view,
            oneToFactor,
            Invariant($"pit {pit.Name} from above, low edge of the rack below; plinth and column in it")
        );
    }

    private static IEnumerable<double> Stops(IEnumerable<double> placesM) =>
        placesM.Select(m => m * 1000).Distinct().Order();

    private static void Column(SiteView view, Rack rack, StandingColumn column)
    {
        var (at, half, foot) = (column.Place.YM * 1000, rack.Sections.Column.SideMm / 2, column.FootM * 1000);
        view.Rectangle(
            Layer.Steel,
            new(at - half, foot),
            new(at + half, (column.PlinthTopM * 1000) + 250),
            Palette.White
        );
        var piece = rack.Sections.Tube.SideMm;
        foreach (var side in new[] { -1, 1 })
        {
            view.Rectangle(
                Layer.Steel,
                new(at + (side * half), foot),
                new(at + (side * (half + piece)), foot + piece),
                Palette.White
            );
        }

        view.Line(Layer.Centre, new(at, foot - 60), new(at, (column.PlinthTopM * 1000) + 320));
    }

    private static void Levels(SiteView view, Rack rack, PitPlan plan)
    {
        var (pit, block) = (plan.Pits[0], plan.Block);
        var (left, right) = (
            (pit.Middle.YM * 1000) - (block.WidthMm / 2),
            (pit.Middle.YM * 1000) + (block.WidthMm / 2)
        );
        var (first, last) = (pit.Columns[0], pit.Columns[^1]);
        var (bottom, ground) = (pit.BottomM * 1000, pit.GroundM * 1000);
        var outside = DimensionLayout.House with
        {
            FirstMm = DimensionLayout.House.FirstMm + view.Placing.LengthMm(BeyondMm(view.Placing.OneToFactor)),
        };
        view.Dimensions(DimensionSide.Left, [new(new(left, bottom), new(left, ground))], outside);
        view.Dimensions(
            DimensionSide.Right,
            [
                new(new(right, bottom), new(right, last.FootM * 1000)),
                new(new(right, last.FootM * 1000), new(right, last.PlinthTopM * 1000)),
            ],
            outside
        );
        view.DimensionChain(
            DimensionSide.Below,
            [
                new(left, bottom),
                .. pit.Columns.Select(column => new SitePoint(column.Place.YM * 1000, bottom)),
                new(right, bottom),
            ]
        );
        var top = first.PlinthTopM * 1000;
        var (near, half) = (first.Place.YM * 1000, block.PlinthSideMm / 2);
        view.Dimensions(DimensionSide.Above, [new(new(near - half, top + 330), new(near + half, top + 330))]);
        view.Leader(
            new(near - (rack.Sections.Column.SideMm / 2), first.FootM * 1000 + (rack.Sections.Tube.SideMm / 2)),
            -18,
            9,
            Invariant($"{Rack.FootMark}, {rack.Sections.Tube.Name}")
        );
    }
}
