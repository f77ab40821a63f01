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
    /// <param name="oneToFactor">n of the scale 1:n; left out, a scale of the book's that fits.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene Of(Rack rack, Footings footings, PaperSize size, double? oneToFactor = null)
    {
        var view = new RackEnd(rack, rack.TubePlacesMm[0]);
        var (block, topMm) = (footings.Block, view.TopMm);
        var middlesMm = Middles(footings, view);
        var (leftMm, wideMm) = Across(view, block, middlesMm);
        var scale = oneToFactor ?? BookScale.FittingOneToFactor(LeastOneToFactor(rack, footings, size), 1);
        var originMm = ((size.WidthMm - (wideMm / scale)) / 2) - (leftMm / scale);
        var site = new SceneBuilder(size).View(new(scale, new(0, 0), new(originMm, 17 + (topMm / scale))));
        foreach (var middleMm in middlesMm)
        {
            var groundMm = view.GroundMm(middleMm);
            Concrete(site, middleMm, block.WidthMm / 2, (groundMm - block.DepthMm, groundMm));
        }

        foreach (var columnMm in view.ColumnsMm)
        {
            var groundMm = view.GroundMm(columnMm);
            Concrete(site, columnMm, block.PlinthSideMm / 2, (groundMm, groundMm + block.PlinthHeightMm));
        }

        foreach (var at in view.FeetMm)
        {
            var half = new SitePoint(rack.Sections.Tube.SideMm / 2, rack.Sections.Tube.SideMm / 2);
            site.Rectangle(
                Layer.Steel,
                new(at.XMm - half.XMm, at.YMm - half.YMm),
                new(at.XMm + half.XMm, at.YMm + half.YMm),
                Palette.White
            );
        }

        site.Line(
            Layer.Ground,
            new(-300, view.GroundMm(-300)),
            new(view.PlanMm + 300, view.GroundMm(view.PlanMm + 300))
        );
        foreach (var part in view.Parts)
        {
            RackEnd.Tube(site, part);
        }

        Plane(site, rack);
        Marks(site, view);
        Heights(site, rack, footings, (view, middlesMm));
        var drawn = site.Builder.Build().Bounds()!.Value;
        site.Builder.Text(
            new(site.At(new(0, 0)).XMm, drawn.BottomMm + 5),
            Invariant($"1:{scale:0.##}, millimetres; seen along the row, low edge on the left"),
            TextStyle.Small
        );
        return site.Builder.Build("rack, seen from its end");
    }

    /// <summary>The n of the largest scale 1:n at which the picture fits, not rounded.</summary>
    internal static double LeastOneToFactor(Rack rack, Footings footings, PaperSize size)
    {
        var view = new RackEnd(rack, rack.TubePlacesMm[0]);
        var middlesMm = Middles(footings, view);
        var bottomMm = middlesMm.Min(view.GroundMm) - footings.Block.DepthMm;
        var (_, wideMm) = Across(view, footings.Block, middlesMm);
        return Math.Max(wideMm / (size.WidthMm - 44), (view.TopMm - bottomMm) / (size.HeightMm - 38));
    }

    // How far plane and concrete reach together.
    private static (double LeftMm, double WideMm) Across(
        RackEnd view,
        FootingBlock block,
        IReadOnlyList<double> middlesMm
    )
    {
        var leftMm = Math.Min(0, middlesMm[0] - (block.WidthMm / 2));
        return (leftMm, Math.Max(view.PlanMm, middlesMm[^1] + (block.WidthMm / 2)) - leftMm);
    }

    // A beam lies under all the columns that are seen; blocks and strips each under one.
    private static IReadOnlyList<double> Middles(Footings footings, RackEnd view) =>
        footings.Form == FootingForm.Beam ? [(view.ColumnsMm[0] + view.ColumnsMm[^1]) / 2] : view.ColumnsMm;

    private static void Concrete(SiteView view, double middleMm, double half, (double LowMm, double HighMm) level)
    {
        SitePoint[] outline =
        [
            new(middleMm - half, level.HighMm),
            new(middleMm + half, level.HighMm),
            new(middleMm + half, level.LowMm),
            new(middleMm - half, level.LowMm),
        ];
        view.Hatch(HatchPattern.Concrete, outline).Polygon(Layer.Concrete, outline);
    }

    // Channels with their modules as one slab; rails seen on end under theirs.
    private static void Plane(SiteView view, Rack rack)
    {
        var railMm = rack.Clamping is null ? 0 : rack.Sections.Angle.SideMm;
        SitePoint[] Slab(double fromMm, double toMm, double lowMm, double highMm) =>
            [
                RackEnd.At(rack.Setting.OnSlope(0, fromMm, lowMm)),
                RackEnd.At(rack.Setting.OnSlope(0, toMm, lowMm)),
                RackEnd.At(rack.Setting.OnSlope(0, toMm, highMm)),
                RackEnd.At(rack.Setting.OnSlope(0, fromMm, highMm)),
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

    private static void Marks(SiteView site, RackEnd view)
    {
        foreach (var part in view.Parts.Where(part => part.Mark[0] is not 'T'))
        {
            var share = part.Mark[0] == 'C' ? (view.ColumnsMm.Count > 1 ? 0.8 : 0.66) : 0.5;
            RackEnd.Balloon(site, part, share, isFirst: part.Shape.Start.YMm < view.PlanMm / 2);
        }
    }

    private static void Heights(
        SiteView site,
        Rack rack,
        Footings footings,
        (RackEnd View, IReadOnlyList<double> MiddlesMm) seen
    )
    {
        var (view, middlesMm) = seen;
        var block = footings.Block;
        var (lowMm, highMm) = (view.GroundMm(0), view.GroundMm(view.PlanMm));
        var first = middlesMm[0];
        var pit = view.GroundMm(first);
        site.Dimensions(
            DimensionSide.Left,
            [
                new(new(0, lowMm), new(0, rack.Setting.LowEdgeMm)),
                .. footings.IsPlan
                    ? (Dimension[])[]
                    :
                    [
                        new(
                            new(first - (block.WidthMm / 2), pit - block.DepthMm),
                            new(first - (block.WidthMm / 2), pit)
                        ),
                    ],
            ]
        );
        site.Dimensions(DimensionSide.Right, [new(new(view.PlanMm, highMm), new(view.PlanMm, view.TopMm))]);
        site.Dimensions(
            DimensionSide.Below,
            [
                .. footings.IsPlan
                    ? (Dimension[])[]
                    :
                    [
                        new(
                            new(first - (block.WidthMm / 2), pit - block.DepthMm),
                            new(first + (block.WidthMm / 2), pit - block.DepthMm)
                        ),
                    ],
                .. view.ColumnsMm.Count > 1
                    ? [new(new(view.ColumnsMm[0], pit - block.DepthMm), new(view.ColumnsMm[1], pit - block.DepthMm))]
                    : (Dimension[])[],
            ]
        );
        if (footings.IsPlan)
        {
            site.Leader(
                new(middlesMm[^1] + (block.WidthMm / 2), pit - (block.DepthMm / 2)),
                6,
                4,
                "by a geotechnical design"
            );
        }

        site.Leader(
            RackEnd.At(rack.Setting.OnSlope(0, rack.Size.DepthMm * 0.12, 0)),
            5,
            -12,
            Invariant($"tilt {rack.Setting.TiltDeg:0} deg")
        );
    }
}
