using Shaduf.Ground;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The fence from above, and a piece of it from the side.</summary>
internal static class FencePicture
{
    private static readonly PaperSize s_room = new(1200, 1200);

    /// <summary>Name of a corner: its number in the line, from 1.</summary>
    public static string Corner(int index, int count) => Invariant($"{(index % count) + 1}");

    /// <summary>The fence from above, north up, with every post.</summary>
    /// <param name="fence">The fence.</param>
    /// <param name="plan">The station from above.</param>
    /// <param name="pegs">Names and places of the pegs that it is taped from.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static Scene Above(
        StationFence fence,
        SitePlan plan,
        IReadOnlyList<(string Name, SitePlace Place)> pegs,
        double oneToFactor
    )
    {
        var view = new SceneBuilder(s_room).View(new(oneToFactor, new(0, 0), new(600, 600)));
        var texts = new FreeTexts(view.Builder);
        foreach (var rack in plan.RackCorners)
        {
            view.Polygon(Layer.Hidden, [.. rack.Select(corner => SitePoint.Metres(corner.EastM, corner.NorthM))]);
        }

        foreach (var run in fence.Line.Runs)
        {
            view.Line(Layer.Fence, At(run.From), At(run.To));
        }

        Posts(view, fence.Line);
        foreach (var post in fence.Line.Posts.Where(post => post.Kind != FencePostKind.Intermediate))
        {
            texts.Avoid(view.At(At(post.Foot)), 1);
        }

        foreach (var (i, corner) in fence.Line.Corners.Index())
        {
            texts.Beside(view.At(At(corner)), Invariant($"point {i + 1}"));
        }

        foreach (var (name, place) in pegs)
        {
            var at = view.At(SitePoint.Metres(place.EastM, place.NorthM));
            view.Builder.Polygon(
                Layer.Outline,
                [at.Moved(-1.4, 1.2), at.Moved(1.4, 1.2), at.Moved(0, -1.6)],
                Palette.Sun.Tint(0.6)
            );
            texts.Beside(at, name);
        }

        Runs(view, texts, fence.Line);
        texts.Write();
        NorthArrow.Draw(view);
        return view.Under(
                view.Builder.Build().Bounds()!.Value.LeftMm,
                [
                    Invariant(
                        $"1:{oneToFactor:0}, north up; filled: posts that struts hold; rings: posts between them; broken: the racks"
                    ),
                ]
            )
            .Builder.Build("fence from above")
            .Trimmed();
    }

    /// <summary>A piece of the fence on level ground: corner with its strut, a post between, the gate.</summary>
    /// <param name="line">The fence.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static Scene Side(FenceLine line, double oneToFactor)
    {
        var view = new SceneBuilder(s_room).View(new(oneToFactor, new(0, 0), new(200, 300)));
        var (form, bayMm) = (line.Form, line.Runs.Max(run => run.BayM) * 1000);
        var topMm = form.HeightM * 1000;
        var gateMm = (line.Gate?.WidthM ?? 0) * 1000;
        double[] strained = line.Gate is null ? [0] : [0, 2 * bayMm, (2 * bayMm) + gateMm];
        var end = strained[^1] + (line.Gate is null ? 2 * bayMm : 0);
        Hole(view, form.PlainHole, bayMm);
        Hole(view, form.StrutHole, form.StrutReachM * 1000);
        foreach (var at in strained)
        {
            Hole(view, form.StrainedHole, at);
        }

        view.Line(Layer.Ground, new(-400, 0), new(end + 400, 0));
        Mesh(view, form, (0, line.Gate is null ? end : 2 * bayMm));
        foreach (var (at, hole) in strained.Select(at => (at, form.StrainedHole)).Append((bayMm, form.PlainHole)))
        {
            view.Rectangle(Layer.Steel, new(at - 30, -hole.DepthM * 1000), new(at + 30, topMm), Palette.White);
        }

        Strut(view, form);
        if (line.Gate is not null)
        {
            Leaves(view, (2 * bayMm, gateMm), topMm);
        }

        Sizes(view, line, bayMm);
        return view.Under(
                view.Builder.Build().Bounds()!.Value.LeftMm,
                [Invariant($"1:{oneToFactor:0}, millimetres; from the side, on level ground")]
            )
            .Builder.Build("a piece of the fence")
            .Trimmed();
    }

    private static SitePoint At(FencePoint point) => SitePoint.Metres(point.EastM, point.NorthM);

    private static void Posts(SiteView view, FenceLine line)
    {
        foreach (var post in line.Posts)
        {
            var isPlain = post.Kind == FencePostKind.Intermediate;
            foreach (var to in post.StrutsTo)
            {
                var awayM = double.Hypot(to.EastM - post.Foot.EastM, to.NorthM - post.Foot.NorthM);
                var share = line.Form.StrutReachM / awayM;
                view.Line(
                    Layer.Steel,
                    At(post.Foot),
                    SitePoint.Metres(
                        post.Foot.EastM + ((to.EastM - post.Foot.EastM) * share),
                        post.Foot.NorthM + ((to.NorthM - post.Foot.NorthM) * share)
                    )
                );
            }

            view.Builder.Circle(
                Layer.Outline,
                view.At(At(post.Foot)),
                isPlain ? 0.5 : 0.9,
                isPlain ? Palette.White : Palette.Ink
            );
        }
    }

    private static void Runs(SiteView view, FreeTexts texts, FenceLine line)
    {
        foreach (var run in line.Runs)
        {
            var (a, b) = (view.At(At(run.From)), view.At(At(run.To)));
            texts.Beside(
                new((a.XMm + b.XMm) / 2, (a.YMm + b.YMm) / 2),
                Invariant($"{run.BayCount} x {run.BayM:0.000}"),
                isNeeded: false
            );
        }

        if (line.GatePosts is var (from, to))
        {
            var (a, b) = (view.At(At(from)), view.At(At(to)));
            view.Builder.Line(Layer.Steel, a, b);
            texts.Beside(new((a.XMm + b.XMm) / 2, (a.YMm + b.YMm) / 2), Invariant($"gate {line.Gate!.WidthM:0.0} m"));
        }
    }

    private static void Hole(SiteView view, FenceHole hole, double atMm) =>
        view.Concrete(new(atMm - (hole.LengthM * 500), -hole.DepthM * 1000), new(atMm + (hole.LengthM * 500), 0));

    // Line wires from edge to edge of the mesh, and the mesh as a few slant lines.
    private static void Mesh(SiteView view, FenceForm form, (double From, double To) along)
    {
        for (var wire = 0; wire < form.WireCount; wire++)
        {
            var at = form.HeightM * 1000 * (wire + 0.04) / (form.WireCount - 0.92);
            view.Line(Layer.Thin, new(along.From, at), new(along.To, at));
        }

        view.Hatch(
            HatchPattern.Cross,
            [
                new(along.From, 0),
                new(along.To, 0),
                new(along.To, form.HeightM * 1000),
                new(along.From, form.HeightM * 1000),
            ],
            Layer.Fence,
            6
        );
    }

    private static void Strut(SiteView view, FenceForm form)
    {
        var (reachMm, lengthMm) = (form.StrutReachM * 1000, form.StrutM * 1000);
        var way = lengthMm / Math.Sqrt(2);
        foreach (var off in new[] { -24, 24 })
        {
            view.Line(Layer.Steel, new(30, reachMm - 30 + (off * 1.4)), new(way, reachMm - way + (off * 1.4)));
        }
    }

    private static void Leaves(SiteView view, (double AtMm, double WideMm) gate, double topMm)
    {
        foreach (var half in new[] { 0, 1 })
        {
            var left = gate.AtMm + (half * gate.WideMm / 2) + 50;
            var right = left + (gate.WideMm / 2) - 100;
            view.Rectangle(Layer.Steel, new(left, 60), new(right, topMm));
            view.Line(Layer.Steel, half == 0 ? new(left, 60) : new(right, 60), new(half == 0 ? right : left, topMm));
        }
    }

    private static void Sizes(SiteView view, FenceLine line, double bayMm)
    {
        var form = line.Form;
        var (strained, plain, strut) = (form.StrainedHole, form.PlainHole, form.StrutHole);
        var gateMm = (line.Gate?.WidthM ?? 0) * 1000;
        SitePoint Low(double at, FenceHole hole) => new(at, -hole.DepthM * 1000);
        view.DimensionChain(
            DimensionSide.Below,
            [
                Low(0, strained),
                Low(form.StrutReachM * 1000, strut),
                Low(bayMm, plain),
                .. line.Gate is null ? [] : new[] { Low(2 * bayMm, strained), Low((2 * bayMm) + gateMm, strained) },
            ],
            withOverall: false
        );
        var left = -strained.LengthM * 500;
        view.DimensionChain(
            DimensionSide.Left,
            [
                new(left, -strained.DepthM * 1000),
                new(left, 0),
                new(left, form.StrutReachM * 1000),
                new(left, form.HeightM * 1000),
            ]
        );
        var end = (line.Gate is null ? bayMm : (2 * bayMm) + gateMm) + (strained.LengthM * 500);
        view.Dimensions(
            DimensionSide.Right,
            [
                new(new(end, -plain.DepthM * 1000), new(end, 0)) { Text = Invariant($"plain {plain.DepthM * 1000:0}") },
                new(new(end, -strut.DepthM * 1000), new(end, 0)) { Text = Invariant($"strut {strut.DepthM * 1000:0}") },
            ]
        );
    }
}
