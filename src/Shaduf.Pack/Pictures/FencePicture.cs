using Shaduf.Ground;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The fence from above.</summary>
internal static class FencePicture
{
    private static readonly PaperSize s_room = new(1200, 1200);

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
        foreach (var post in fence.Line.Posts)
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
        string Mark(string role) =>
            string.Join(", ", fence.Steel.Groups.Where(part => part.Role == role).Select(part => part.Mark));
        var (strained, plain) = (Mark(FenceSteel.StrainedRole), Mark(FenceSteel.PlainRole));
        NorthArrow.Draw(view);
        return view.Under(
                view.Builder.Build().Bounds()!.Value.LeftMm,
                [
                    Invariant(
                        $"1:{oneToFactor:0}, north up; filled: {strained}, strained; rings: {plain}, between them; thick: struts and rails; broken: the racks"
                    ),
                ]
            )
            .Builder.Build("fence from above")
            .Trimmed();
    }

    private static SitePoint At(FencePoint point) => SitePoint.Metres(point.EastM, point.NorthM);

    private static void Posts(SiteView view, FenceLine line)
    {
        foreach (var rail in line.Rails)
        {
            view.Line(Layer.Steel, At(rail.From.Foot), At(rail.To.Foot));
        }

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
        if (line.GatePosts is var (from, to))
        {
            var (a, b) = (view.At(At(from)), view.At(At(to)));
            view.Builder.Line(Layer.Steel, a, b);
            texts.Beside(new((a.XMm + b.XMm) / 2, (a.YMm + b.YMm) / 2), Invariant($"gate {line.Gate!.WidthM:0.0} m"));
        }

        foreach (var run in line.Runs)
        {
            var (a, b) = (view.At(At(run.From)), view.At(At(run.To)));
            texts.Beside(new((a.XMm + b.XMm) / 2, (a.YMm + b.YMm) / 2), FenceSheets.Bays(run), isNeeded: false);
        }
    }
}
