using Shaduf.Ground;
using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The rack seen from its left end: plane, cross tube, columns, struts and footings, with heights.</summary>
public static class RackSide
{
    /// <summary>Composes the picture from the solid model.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="footings">Its footings.</param>
    /// <param name="size">Size of the picture, at least 100 x 90 mm.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene Of(Rack rack, Footings footings, PaperSize size)
    {
        var view = new Seen(rack, rack.TubePlacesMm[0]);
        var block = footings.Block;
        var (topMm, bottomMm) = (view.TopMm, view.ColumnsMm.Min(view.GroundMm) - block.DepthMm);
        var scale = Math.Max(
            BookScale.FittingOneToFactor(view.PlanMm, size.WidthMm - 44),
            BookScale.FittingOneToFactor(topMm - bottomMm, size.HeightMm - 38)
        );
        var originMm = (size.WidthMm - (view.PlanMm / scale)) / 2;
        var site = new SceneBuilder(size).View(new(scale, new(0, 0), new(originMm, 17 + (topMm / scale))));
        foreach (var columnMm in view.ColumnsMm)
        {
            Footing(site, block, columnMm, view.GroundMm(columnMm));
        }

        site.Line(
            Layer.Ground,
            new(-300, view.GroundMm(-300)),
            new(view.PlanMm + 300, view.GroundMm(view.PlanMm + 300))
        );
        foreach (var part in view.Parts)
        {
            Tube(site, part);
        }

        Plane(site, rack);
        Marks(site, view);
        Heights(site, rack, block, view);
        var drawn = site.Builder.Build().Bounds()!.Value;
        site.Builder.Text(
            new(site.At(new(0, 0)).XMm, drawn.BottomMm + 5),
            Invariant($"1:{scale:0.##}, millimetres; seen along the row, low edge on the left"),
            TextStyle.Small
        );
        return site.Builder.Build("rack, seen from its end");
    }

    private static void Footing(SiteView view, FootingBlock block, double columnMm, double groundMm)
    {
        foreach (
            var (half, lowMm, highMm) in new[]
            {
                (block.WidthMm / 2, groundMm - block.DepthMm, groundMm),
                (block.PlinthSideMm / 2, groundMm, groundMm + block.PlinthHeightMm),
            }
        )
        {
            SitePoint[] outline =
            [
                new(columnMm - half, highMm),
                new(columnMm + half, highMm),
                new(columnMm + half, lowMm),
                new(columnMm - half, lowMm),
            ];
            view.Hatch(HatchPattern.Concrete, outline).Polygon(Layer.Concrete, outline);
        }
    }

    // A part as its four edges seen from the end: the axis with half a side to each hand.
    private static void Tube(SiteView view, Part part)
    {
        var (from, to) = (At(part.Shape.Start), At(part.Shape.End));
        var lengthMm = Math.Sqrt(Math.Pow(to.XMm - from.XMm, 2) + Math.Pow(to.YMm - from.YMm, 2));
        var half = part.Section.SideMm / 2;
        var (acrossX, acrossY) = (-(to.YMm - from.YMm) / lengthMm * half, (to.XMm - from.XMm) / lengthMm * half);
        view.Polygon(
            Layer.Steel,
            [
                new(from.XMm + acrossX, from.YMm + acrossY),
                new(to.XMm + acrossX, to.YMm + acrossY),
                new(to.XMm - acrossX, to.YMm - acrossY),
                new(from.XMm - acrossX, from.YMm - acrossY),
            ],
            Palette.White
        );
    }

    // Channels with their modules as one slab; rails seen on end under theirs.
    private static void Plane(SiteView view, Rack rack)
    {
        var railMm = rack.Clamping is null ? 0 : rack.Sections.Angle.SideMm;
        SitePoint[] Slab(double fromMm, double toMm, double lowMm, double highMm) =>
            [
                At(rack.Setting.OnSlope(0, fromMm, lowMm)),
                At(rack.Setting.OnSlope(0, toMm, lowMm)),
                At(rack.Setting.OnSlope(0, toMm, highMm)),
                At(rack.Setting.OnSlope(0, fromMm, highMm)),
            ];
        if (rack.Clamping is null)
        {
            view.Polygon(Layer.Module, Slab(0, rack.Size.DepthMm, 0, rack.Size.DeckMm), Palette.Water.Tint(0.15));
            return;
        }

        foreach (var row in rack.Rows)
        {
            foreach (var atMm in new[] { row.LowAtMm, row.HighAtMm })
            {
                view.Polygon(Layer.Steel, Slab(atMm - (railMm / 2), atMm + (railMm / 2), 0, railMm), Palette.White);
            }

            view.Polygon(Layer.Module, Slab(row.FromMm, row.ToMm, railMm, rack.Size.DeckMm), Palette.Water.Tint(0.15));
        }
    }

    private static void Marks(SiteView site, Seen view)
    {
        foreach (var part in view.Parts.Where(part => part.Mark[0] is not 'T'))
        {
            var share = part.Mark[0] == 'C' ? 0.8 : 0.5;
            var (from, to) = (At(part.Shape.Start), At(part.Shape.End));
            site.Builder.Balloon(
                site.At(new(from.XMm + ((to.XMm - from.XMm) * share), from.YMm + ((to.YMm - from.YMm) * share))),
                part.Mark
            );
        }
    }

    private static void Heights(SiteView site, Rack rack, FootingBlock block, Seen view)
    {
        var (lowMm, highMm) = (view.GroundMm(0), view.GroundMm(view.PlanMm));
        var first = view.ColumnsMm[0];
        var pit = view.GroundMm(first);
        site.Dimensions(
            DimensionSide.Left,
            [
                new(new(0, lowMm), new(0, rack.Setting.LowEdgeMm)),
                new(new(first - (block.WidthMm / 2), pit - block.DepthMm), new(first - (block.WidthMm / 2), pit)),
            ]
        );
        site.Dimensions(DimensionSide.Right, [new(new(view.PlanMm, highMm), new(view.PlanMm, view.TopMm))]);
        site.Dimensions(
            DimensionSide.Below,
            [
                new(
                    new(first - (block.WidthMm / 2), pit - block.DepthMm),
                    new(first + (block.WidthMm / 2), pit - block.DepthMm)
                ),
                .. view.ColumnsMm.Count > 1
                    ? [new(new(first, pit - block.DepthMm), new(view.ColumnsMm[1], pit - block.DepthMm))]
                    : (Dimension[])[],
            ]
        );
        site.Leader(
            At(rack.Setting.OnSlope(0, rack.Size.DepthMm * 0.12, 0)),
            5,
            -12,
            Invariant($"tilt {rack.Setting.TiltDeg:0} deg")
        );
    }

    private static SitePoint At(Point point) => new(point.YMm, point.ZMm);

    // What stands under one cross tube, on the ground there.
    private sealed class Seen(Rack rack, double xMm)
    {
        public IReadOnlyList<Part> Parts =>
            [
                .. rack.Steel.Parts.Where(part =>
                    part.Mark[0] is 'T' or 'B' or 'C' or 'D' && Math.Abs(part.Shape.Start.XMm - xMm) < 1
                ),
            ];

        public IReadOnlyList<double> ColumnsMm =>
            [.. Parts.Where(part => part.Mark[0] == 'C').Select(part => part.Shape.Start.YMm).Order()];

        public double PlanMm => rack.Setting.OnSlope(0, rack.Size.DepthMm, 0).YMm;

        public double TopMm => rack.Setting.OnSlope(0, rack.Size.DepthMm, rack.Size.DeckMm).ZMm;

        public double GroundMm(double yMm) => rack.Setting.Ground.ZMm(xMm, yMm);
    }
}
