using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>A rack seen square on its low edge: the plane, the columns under it, their plinths and pits, the ground.</summary>
internal static class RackFront
{
    private const double BeyondMm = 300;
    private static readonly PaperSize s_room = new(900, 600);

    /// <summary>Composes the picture from the solid model.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="pits">The pits of all racks.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static Scene Of(Rack rack, PitPlan pits, double oneToFactor)
    {
        var front = pits.Pits.Where(pit => pit.Rack == 0).ToList();
        var nearM = front.SelectMany(pit => pit.Columns).Min(column => column.Place.YM);
        var view = new SceneBuilder(s_room).View(new(oneToFactor, new(0, 0), new(120, 400)));
        foreach (var pit in front.Where(pit => pit.Columns.Any(column => IsNear(column, nearM))))
        {
            Concrete(view, pits, pit, nearM);
        }

        foreach (
            var column in rack
                .Steel.Parts.Where(part => part.Mark[0] == 'C')
                .OrderByDescending(part => part.Shape.Start.YMm)
        )
        {
            Column(view, column);
        }

        Plane(view, rack);
        Ground(view, rack, nearM * 1000);
        Sizes(view, rack, front, nearM * 1000);
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(view.At(new(0, 0)).XMm, drawn.BottomMm + 5),
            Invariant(
                $"1:{oneToFactor:0.##}, millimetres; front, seen on the low edge; each column's ground is its own"
            ),
            TextStyle.Small
        );
        return view.Builder.Build("rack, seen from its front").Trimmed();
    }

    private static bool IsNear(StandingColumn column, double nearM) => Math.Abs(column.Place.YM - nearM) < 1e-6;

    private static void Concrete(SiteView view, PitPlan pits, Pit pit, double nearM)
    {
        var (half, x) = (pits.Block.LengthMm / 2, pit.Middle.XM * 1000);
        view.Concrete(new(x - half, pit.BottomM * 1000), new(x + half, pit.GroundM * 1000));
        foreach (var column in pit.Columns.Where(column => IsNear(column, nearM)))
        {
            var (at, side, top) = (column.Place.XM * 1000, pits.Block.PlinthSideMm / 2, column.PlinthTopM * 1000);
            view.Concrete(new(at - side, top - pits.Block.PlinthHeightMm), new(at + side, top));
        }
    }

    private static void Column(SiteView view, Part column)
    {
        var (from, to, half) = (column.Shape.Start, column.Shape.End, column.Section.SideMm / 2);
        view.Rectangle(Layer.Steel, new(from.XMm - half, from.ZMm), new(to.XMm + half, to.ZMm), Palette.White);
    }

    // The plane hides what stands behind it.
    private static void Plane(SiteView view, Rack rack)
    {
        SitePoint Seen(double xMm, double slopeMm) => At(rack.Setting.OnSlope(xMm, slopeMm, rack.Size.DeckMm));
        var low = At(rack.Setting.OnSlope(0, 0, 0));
        view.Rectangle(Layer.Outline, low, Seen(rack.Size.LengthMm, rack.Size.DepthMm), Palette.White);
        foreach (var row in rack.Rows)
        {
            for (var column = 0; column < rack.Grid.Columns; column++)
            {
                var x = rack.Along.FirstMm + (column * rack.Along.PitchMm);
                view.Rectangle(
                    Layer.Module,
                    Seen(x, row.FromMm),
                    Seen(x + rack.Lay.AlongMm, row.FromMm + rack.Lay.UpMm),
                    Palette.Water.Tint(0.08)
                );
            }
        }
    }

    private static SitePoint At(Point point) => new(point.XMm, point.ZMm);

    private static void Ground(SiteView view, Rack rack, double nearMm)
    {
        var ground = rack.Setting.Ground;
        view.Line(
            Layer.Ground,
            new(-BeyondMm, ground.ZMm(-BeyondMm, nearMm)),
            new(rack.Size.LengthMm + BeyondMm, ground.ZMm(rack.Size.LengthMm + BeyondMm, nearMm))
        );
    }

    private static void Sizes(SiteView view, Rack rack, List<Pit> front, double nearMm)
    {
        var (ground, lengthMm) = (rack.Setting.Ground, rack.Size.LengthMm);
        var bottomMm = front.Min(pit => pit.BottomM) * 1000;
        view.DimensionChain(
            DimensionSide.Below,
            [new(0, bottomMm), .. rack.TubePlacesMm.Select(x => new SitePoint(x, bottomMm)), new(lengthMm, bottomMm)]
        );
        view.Dimensions(
            DimensionSide.Left,
            [new(new(-BeyondMm, ground.ZMm(0, nearMm)), new(0, rack.Setting.LowEdgeMm))]
        );
        view.Dimensions(
            DimensionSide.Right,
            [
                new(
                    new(lengthMm + BeyondMm, ground.ZMm(lengthMm, nearMm)),
                    new(lengthMm, rack.Setting.OnSlope(0, rack.Size.DepthMm, rack.Size.DeckMm).ZMm)
                ),
            ]
        );
    }
}
