using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The rack seen from its end: plane, cross tube, column, struts and footing, with heights.</summary>
public static class RackSide
{
    /// <summary>Composes the picture from the solid model.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="footings">Its footings.</param>
    /// <param name="size">Size of the picture, at least 100 x 90 mm.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene Of(Rack rack, Footings footings, PaperSize size)
    {
        var planMm = rack.Size.DepthMm * Math.Cos(rack.Setting.TiltDeg * Math.PI / 180);
        var block = footings.Block;
        var scale = Math.Max(
            BookScale.FittingOneToFactor(planMm, size.WidthMm - 44),
            BookScale.FittingOneToFactor(rack.Size.TopEdgeMm + block.DepthMm, size.HeightMm - 28)
        );
        var originMm = (size.WidthMm - (planMm / scale)) / 2;
        var view = new SceneBuilder(size).View(new(scale, new(0, 0), new(originMm, 8 + (rack.Size.TopEdgeMm / scale))));
        var columnMm = rack.Steel.Parts.First(part => part.Mark == "C1").Shape.Start.YMm;
        Footing(view, block, columnMm, planMm);
        foreach (var part in rack.Steel.Parts.Where(part => part.Mark is "T1" or "C1" or "B1" or "B2"))
        {
            Tube(view, part);
        }

        Frame(view, rack);
        Heights(view, rack, block, columnMm, planMm);
        var drawn = view.Builder.Build().Bounds()!.Value;
        view.Builder.Text(
            new(view.At(new(0, 0)).XMm, drawn.BottomMm + 5),
            Invariant($"1:{scale:0.##}, millimetres; seen along the row"),
            TextStyle.Small
        );
        return view.Builder.Build("rack, seen from its end");
    }

    private static void Footing(SiteView view, Shaduf.Ground.FootingBlock block, double columnMm, double planMm)
    {
        SitePoint[] pit =
        [
            new(columnMm - (block.WidthMm / 2), 0),
            new(columnMm + (block.WidthMm / 2), 0),
            new(columnMm + (block.WidthMm / 2), -block.DepthMm),
            new(columnMm - (block.WidthMm / 2), -block.DepthMm),
        ];
        view.Hatch(HatchPattern.Concrete, pit).Polygon(Layer.Concrete, pit);
        SitePoint[] plinth =
        [
            new(columnMm - (block.PlinthSideMm / 2), block.PlinthHeightMm),
            new(columnMm + (block.PlinthSideMm / 2), block.PlinthHeightMm),
            new(columnMm + (block.PlinthSideMm / 2), 0),
            new(columnMm - (block.PlinthSideMm / 2), 0),
        ];
        view.Hatch(HatchPattern.Concrete, plinth).Polygon(Layer.Concrete, plinth);
        view.Line(Layer.Ground, new(-300, 0), new(planMm + 300, 0));
    }

    // A part as its four edges seen from the end: the axis with half a side to each hand.
    private static void Tube(SiteView view, Part part)
    {
        var (from, to) = (Seen(part.Shape.Start), Seen(part.Shape.End));
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

    private static void Frame(SiteView view, Rack rack)
    {
        var rad = rack.Setting.TiltDeg * Math.PI / 180;
        SitePoint On(double slopeMm, double offMm) =>
            new(
                (slopeMm * Math.Cos(rad)) - (offMm * Math.Sin(rad)),
                rack.Setting.LowEdgeMm + (slopeMm * Math.Sin(rad)) + (offMm * Math.Cos(rad))
            );
        var depth = rack.Sections.Channel.OuterDepthMm;
        view.Polygon(
            Layer.Module,
            [On(0, 0), On(rack.Size.DepthMm, 0), On(rack.Size.DepthMm, depth), On(0, depth)],
            Palette.Water.Tint(0.15)
        );
        foreach (var (mark, share) in new[] { ("C1", 0.35), ("B1", 0.55), ("B2", 0.55) })
        {
            var part = rack.Steel.Parts.First(each => each.Mark == mark);
            var (from, to) = (Seen(part.Shape.Start), Seen(part.Shape.End));
            view.Builder.Balloon(
                view.At(new(from.XMm + ((to.XMm - from.XMm) * share), from.YMm + ((to.YMm - from.YMm) * share))),
                mark
            );
        }
    }

    private static void Heights(
        SiteView view,
        Rack rack,
        Shaduf.Ground.FootingBlock block,
        double columnMm,
        double planMm
    )
    {
        view.Dimensions(
            DimensionSide.Left,
            [new(new(0, 0), new(0, rack.Setting.LowEdgeMm)), new(new(0, -block.DepthMm), new(0, 0))]
        );
        view.Dimensions(DimensionSide.Right, [new(new(planMm, 0), new(planMm, rack.Size.TopEdgeMm))]);
        view.Dimensions(
            DimensionSide.Below,
            [
                new(
                    new(columnMm - (block.WidthMm / 2), -block.DepthMm),
                    new(columnMm + (block.WidthMm / 2), -block.DepthMm)
                ),
            ]
        );
        var rad = rack.Setting.TiltDeg * Math.PI / 180;
        var low = rack.Size.DepthMm * 0.12;
        view.Leader(
            new(low * Math.Cos(rad), rack.Setting.LowEdgeMm + (low * Math.Sin(rad))),
            5,
            -12,
            Invariant($"tilt {rack.Setting.TiltDeg:0} deg")
        );
    }

    private static SitePoint Seen(Point point) => new(point.YMm, point.ZMm);
}
