using Shaduf.Shape;
using Shaduf.Station;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>A rack's bare frame on props and ropes over its open pits, seen along the row.</summary>
public static class ErectionPicture
{
    // Room for the labels on the right.
    private const double LabelsMm = 72;

    private const double BoardThickMm = 50;
    private const double StakeMm = 60;

    /// <summary>Composes the picture from the solid model.</summary>
    /// <param name="erection">The works.</param>
    /// <param name="size">Size of the picture, at least 100 x 90 mm.</param>
    /// <param name="oneToFactor">n of the scale 1:n; left out, a scale of the book's that fits.</param>
    /// <returns>The picture, to scale.</returns>
    public static Scene Of(Erection erection, PaperSize size, double? oneToFactor = null)
    {
        var rack = erection.Rack;
        var view = new RackEnd(rack, rack.TubePlacesMm[0]);
        var heads = Heads(view);
        var middles = Middles(erection.Footings, view);
        var halfMm = erection.Footings.Block.WidthMm / 2;
        var (left, right) = (
            Anchor(heads[0], -1, middles[0] - halfMm, view),
            Anchor(heads[^1], 1, middles[^1] + halfMm, view)
        );
        var depthMm = Math.Max(Erection.LogDepthMm + Erection.LogMm, erection.Footings.Block.DepthMm);
        var scale =
            oneToFactor
            ?? Math.Max(
                BookScale.FittingOneToFactor(right.XMm - left.XMm + 1200, size.WidthMm - LabelsMm),
                BookScale.FittingOneToFactor(view.TopMm + depthMm, size.HeightMm - 60)
            );
        var originMm = 12 - (left.XMm / scale);
        var site = new SceneBuilder(size).View(new(scale, new(0, 0), new(originMm, 14 + (view.TopMm / scale))));
        Ground(site, erection, view, (left, right));
        foreach (var part in view.Parts)
        {
            RackEnd.Tube(site, part);
        }

        var props = erection.Props;
        var pair = props.Pairs[0];
        foreach (var prop in pair.Both)
        {
            if (props.IsAlong)
            {
                site.Line(Layer.Hidden, RackEnd.At(prop.Head), RackEnd.At(prop.Foot));
            }
            else
            {
                Standing(site, props, prop, Math.Sign(prop.Foot.YMm - prop.Head.YMm));
            }
        }

        Rope(site, heads[0], left);
        Rope(site, heads[^1], right);
        Labels(site, erection, (heads[^1], right), pair);
        Sizes(
            site,
            erection.Footings.Block.DepthMm,
            [.. heads.Concat(pair.Both.Select(prop => RackEnd.At(prop.Foot))).OrderBy(at => at.XMm)],
            (left, right)
        );
        Notes(site, erection, (left, scale));
        return site.Builder.Build("the frame on props and ropes over its open pits");
    }

    private static void Notes(SiteView site, Erection erection, (SitePoint Left, double Scale) drawn)
    {
        var ((left, scale), props) = (drawn, erection.Props);
        site.Under(
            site.At(left).XMm,
            [
                Invariant(
                    $"1:{scale:0.##}, millimetres; modules are not on yet; pits open{(erection.Footings.IsPlan ? "" : Invariant($", {erection.Footings.Block.DepthMm:0} deep"))}"
                ),
                Invariant(
                    $"anchors: logs {Erection.LogMm:0} x {Erection.LogMm:0}, {Erection.LogLongMm:0} long, buried along the row, pulled up with {GuyRope.UpKN(erection.RopeKN, Erection.RopeDeg):0.0} kN each"
                ),
                Invariant(
                    $"props: {props.ASide} at each end of each {props.TubeRole}, {props.Count} in all, {props.LengthsSay}"
                ),
                Invariant(
                    $"their boards: {PropPlaces.ClearOfPitMm:0} and more clear of every pit{(props.IsAlong ? ", to the left and right of it (hidden here)" : "")}"
                ),
                Invariant($"column feet hang {Rack.CoverMm:0} over the bottoms of the pits; nothing stands under them"),
            ]
        );
    }

    // Heads of the columns, from the low edge to the high one.
    private static IReadOnlyList<SitePoint> Heads(RackEnd view) =>
        [
            .. view
                .Parts.Where(part => part.Mark[0] == 'C')
                .Select(part => part.Shape.Start.ZMm > part.Shape.End.ZMm ? part.Shape.Start : part.Shape.End)
                .Select(RackEnd.At)
                .OrderBy(head => head.XMm),
        ];

    // Middles of the pits: one beam under all columns that are seen, or a pit for each.
    private static IReadOnlyList<double> Middles(Footings footings, RackEnd view) =>
        footings.Form == FootingForm.Beam ? [(view.ColumnsMm[0] + view.ColumnsMm[^1]) / 2] : view.ColumnsMm;

    // Where the ground is met at the slope of the ropes, near enough on falling ground; clear of the pits.
    private static SitePoint Anchor(SitePoint head, int side, double pitMm, RackEnd view)
    {
        var run = (head.YMm - view.GroundMm(head.XMm)) / Math.Tan(Erection.RopeDeg * Math.PI / 180);
        var x = side * Math.Max(side * (head.XMm + (side * run)), (side * pitMm) + Erection.ClearOfPitMm);
        return new(x, view.GroundMm(x));
    }

    private static void Ground(
        SiteView site,
        Erection erection,
        RackEnd view,
        (SitePoint Left, SitePoint Right) anchors
    )
    {
        var block = erection.Footings.Block;
        var middles = Middles(erection.Footings, view);
        var edge = new List<SitePoint> { new(anchors.Left.XMm - 500, view.GroundMm(anchors.Left.XMm - 500)) };
        foreach (var middle in middles)
        {
            var (from, to, level) = (middle - (block.WidthMm / 2), middle + (block.WidthMm / 2), view.GroundMm(middle));
            edge.AddRange([
                new(from, level),
                new(from, level - block.DepthMm),
                new(to, level - block.DepthMm),
                new(to, level),
            ]);
        }

        edge.Add(new(anchors.Right.XMm + 500, view.GroundMm(anchors.Right.XMm + 500)));
        site.Polyline(Layer.Ground, edge);
        foreach (var anchor in new[] { anchors.Left, anchors.Right })
        {
            site.Rectangle(
                Layer.Outline,
                new(anchor.XMm - (Erection.LogMm / 2), anchor.YMm - Erection.LogDepthMm),
                new(anchor.XMm + (Erection.LogMm / 2), anchor.YMm - Erection.LogDepthMm - Erection.LogMm)
            );
            site.Line(Layer.Thin, anchor, new(anchor.XMm, anchor.YMm - Erection.LogDepthMm));
        }
    }

    private static void Rope(SiteView site, SitePoint head, SitePoint anchor) => site.Line(Layer.Centre, head, anchor);

    // A prop, its board let into trodden ground, and the stake behind its foot.
    private static void Standing(SiteView site, Propping props, Prop prop, int side)
    {
        var (head, foot) = (RackEnd.At(prop.Head), RackEnd.At(prop.Foot));
        var half = props.BoardMm / 2;
        site.Rectangle(
            Layer.Steel,
            new(foot.XMm - half, foot.YMm),
            new(foot.XMm + half, foot.YMm + BoardThickMm),
            Palette.White
        );
        var stakeMm = foot.XMm + (side * (half + StakeMm));
        site.Rectangle(
            Layer.Steel,
            new(stakeMm - (StakeMm / 2), foot.YMm + 300),
            new(stakeMm + (StakeMm / 2), foot.YMm - 700),
            Palette.White
        );
        foot = new(foot.XMm, foot.YMm + BoardThickMm);
        var (alongMm, upMm) = (head.XMm - foot.XMm, head.YMm - foot.YMm);
        var across = Propping.TubeMm / 2 / double.Hypot(alongMm, upMm);
        SitePoint Beside(SitePoint at, int hand) =>
            new(at.XMm - (hand * upMm * across), at.YMm + (hand * alongMm * across));
        site.Polygon(
            Layer.Steel,
            [Beside(foot, 1), Beside(head, 1), Beside(head, -1), Beside(foot, -1)],
            Palette.White
        );
    }

    private static void Labels(
        SiteView site,
        Erection erection,
        (SitePoint Head, SitePoint Anchor) right,
        PropPair pair
    )
    {
        var props = erection.Props;
        var ropeTip = site.At(Between(right.Head, right.Anchor, 0.4));
        var onProp = Between(RackEnd.At(pair.High.Head), RackEnd.At(pair.High.Foot), 0.7);
        var tip = site.At(onProp);

        // Under the label of the ropes, clear of the rope that comes down there.
        site.Leader(
            onProp,
            site.At(right.Anchor).XMm + 3 - tip.XMm,
            Math.Max(-1, ropeTip.YMm - 6 + 10 - tip.YMm),
            Invariant(
                $"prop {Propping.TubeMm:0.0} x {Propping.TubeWallMm:0.0}, {props.MostAlongKN:0.0} kN,\nboard {props.BoardMm:0} x {props.BoardMm:0} x {BoardThickMm:0}, {props.StakesASide} {(props.StakesASide == 1 ? "stake" : "stakes")} behind it"
            )
        );
        site.Leader(
            Between(right.Head, right.Anchor, 0.4),
            14,
            -6,
            Invariant(
                $"{erection.RopesASide} ropes to each side, {erection.RopeKN:0.0} kN in each,\nbreaking load {erection.BreakingKN:0} kN, {Erection.RopeDeg:0} deg from level or flatter"
            )
        );
    }

    private static void Sizes(
        SiteView site,
        double pitMm,
        IReadOnlyList<SitePoint> heads,
        (SitePoint Left, SitePoint Right) anchors
    )
    {
        var (left, right) = anchors;
        var low = Math.Min(left.YMm, right.YMm) - Math.Max(Erection.LogDepthMm + Erection.LogMm, pitMm);
        site.Dimensions(
            DimensionSide.Right,
            [new(new(right.XMm + 500, right.YMm - Erection.LogDepthMm), new(right.XMm + 500, right.YMm))]
        );
        site.DimensionChain(
            DimensionSide.Below,
            [new(left.XMm, low), .. heads.Select(head => new SitePoint(head.XMm, low)), new(right.XMm, low)],
            withOverall: false
        );
    }

    private static SitePoint Between(SitePoint from, SitePoint to, double share) =>
        new(from.XMm + ((to.XMm - from.XMm) * share), from.YMm + ((to.YMm - from.YMm) * share));
}
