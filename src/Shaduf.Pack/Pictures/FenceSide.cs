using Shaduf.Ground;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Pieces of the fence from the side, as if on level ground.</summary>
internal static class FenceSide
{
    // As many bays of a straight as show how it is made.
    private const int MostBays = 3;
    private static readonly PaperSize s_room = new(1200, 1200);

    // Posts in a row, the bays between them, and the gate at their end.
    private sealed record Piece(
        StationFence Fence,
        IReadOnlyList<FencePost> Posts,
        IReadOnlyList<double> BaysMm,
        double GateMm,
        string Says
    )
    {
        public FenceForm Form => Fence.Line.Form;

        public IReadOnlyList<double> AtMm { get; } =
        [.. BaysMm.Aggregate(new List<double> { 0 }, (all, bayMm) => [.. all, all[^1] + bayMm])];

        public double EndMm => AtMm[^1] + GateMm;

        public IEnumerable<(double AtMm, FencePostKind Kind, string Mark)> Uprights
        {
            get
            {
                var all = Posts.Zip(AtMm, (post, at) => (at, post.Kind, MarkOf(Fence, post)));
                return GateMm > 0 ? all.Append((EndMm, FencePostKind.Gate, MarkOf(Fence, Fence.Line.Posts[0]))) : all;
            }
        }

        /// <summary>Struts whose post and whose foot are shown: where the post stands, and to which side the strut leans.</summary>
        public IEnumerable<(double AtMm, int Way, string Mark)> Struts =>
            FenceSteel
                .Struts(Fence.Line, Fence.Steel)
                .Select(each => (each.Strut.Mark, At: Of(each.Post), To: Of(each.To)))
                .Where(each => each.At >= 0 && each.To >= 0)
                .Select(each => (AtMm[each.At], each.To - each.At, each.Mark));

        private int Of(FencePoint foot) => Posts.ToList().FindIndex(post => post.Foot == foot);

        public IEnumerable<int> Rails =>
            Enumerable
                .Range(0, BaysMm.Count)
                .Where(i =>
                    Fence.Line.Rails.Any(rail => rail.From.Foot == Posts[i].Foot && rail.To.Foot == Posts[i + 1].Foot)
                );
    }

    /// <summary>The straight beside the gate with the gate; and a corner with its strut where that does not show one.</summary>
    /// <param name="fence">The fence.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static IEnumerable<Scene> Of(StationFence fence, double oneToFactor)
    {
        var runs = fence.Line.Runs;
        Piece[] gate = fence.Line.Gate is null ? [] : [End(fence, runs.Count - 1)];
        var shown = gate.Any(piece => piece.Struts.Any(strut => strut.Way > 0));
        Piece[] corner =
        [
            .. Enumerable
                .Range(0, runs.Count)
                .Select(run => Start(fence, run))
                .Where(piece => !shown && piece.Struts.Any(strut => strut.Way > 0))
                .OrderByDescending(piece => piece.Posts[0].Kind == FencePostKind.Corner)
                .Take(1),
        ];
        Piece[] all = [.. gate, .. corner];
        return (all.Length > 0 ? all : [Start(fence, 0)]).Select(piece => Drawn(piece, oneToFactor));
    }

    /// <summary>Mark of a post.</summary>
    public static string MarkOf(StationFence fence, FencePost post) =>
        fence.Steel.Parts[fence.Line.Posts.ToList().FindIndex(each => each.Foot == post.Foot)].Mark;

    private static Piece Start(StationFence fence, int run) =>
        Cut(fence, run, 0, Math.Min(MostBays, fence.Line.Runs[run].BayCount), 0);

    private static Piece End(StationFence fence, int run)
    {
        var count = Math.Min(MostBays, fence.Line.Runs[run].BayCount);
        return Cut(fence, run, fence.Line.Runs[run].BayCount - count, count, fence.Line.Gate!.WidthM * 1000);
    }

    private static Piece Cut(StationFence fence, int run, int from, int count, double gateMm)
    {
        var line = fence.Line;
        var first = line.Runs.Take(run).Sum(each => each.BayCount) + from;
        var (start, end) = (FenceSheets.Name(line, line.Runs[run].From), FenceSheets.Name(line, line.Runs[run].To));
        var all = line.Runs[run].BayCount;
        return new(
            fence,
            [.. Enumerable.Range(first, count + 1).Select(i => line.Posts[i % line.Posts.Count])],
            [.. line.Runs[run].BaysM.Skip(from).Take(count).Select(bayM => bayM * 1000)],
            gateMm,
            count == all ? $"{start} to {end}"
                : from == 0 ? Invariant($"first {count} of {all} bays from {start} to {end}")
                : Invariant($"last {count} of {all} bays from {start} to {end}")
        );
    }

    private static Scene Drawn(Piece piece, double oneToFactor)
    {
        var view = new SceneBuilder(s_room).View(new(oneToFactor, new(0, 0), new(400, 300)));
        var (form, topMm) = (piece.Form, piece.Form.HeightM * 1000);
        foreach (var (atMm, way, _) in piece.Struts)
        {
            Hole(view, form.StrutHole, atMm + (way * form.StrutHoleAtM * 1000));
        }

        foreach (var (atMm, kind, _) in piece.Uprights)
        {
            Hole(view, form.HoleOf(kind), atMm);
        }

        view.Line(Layer.Ground, new(-400, 0), new(piece.EndMm + 400, 0));
        Mesh(view, form, piece.AtMm[^1]);
        Slanting(view, piece);
        foreach (var (atMm, kind, mark) in piece.Uprights)
        {
            view.Rectangle(
                Layer.Steel,
                new(atMm - 30, -form.HoleOf(kind).DepthM * 1000),
                new(atMm + 30, topMm),
                Palette.White
            );
            view.Builder.Text(view.At(new(atMm, topMm)).Moved(0, -1.5), mark, TextStyle.Small.Centred);
        }

        Leaves(view, (piece.AtMm[^1], piece.GateMm), topMm);
        Sizes(view, piece);
        return view.Under(
                view.Builder.Build().Bounds()!.Value.LeftMm,
                [Invariant($"1:{oneToFactor:0}, millimetres; {piece.Says}, from the side, on level ground")]
            )
            .Builder.Build("a piece of the fence")
            .Trimmed();
    }

    private static void Hole(SiteView view, FenceHole hole, double atMm) =>
        view.Concrete(new(atMm - (hole.LengthM * 500), -hole.DepthM * 1000), new(atMm + (hole.LengthM * 500), 0));

    // Line wires from edge to edge of the mesh, and the mesh as a few slant lines.
    private static void Mesh(SiteView view, FenceForm form, double endMm)
    {
        var topMm = form.HeightM * 1000;
        for (var wire = 0; wire < form.WireCount; wire++)
        {
            var at = topMm * (wire + 0.04) / (form.WireCount - 0.92);
            view.Line(Layer.Thin, new(0, at), new(endMm, at));
        }

        view.Hatch(HatchPattern.Cross, [new(0, 0), new(endMm, 0), new(endMm, topMm), new(0, topMm)], Layer.Fence, 6);
    }

    // Struts and rails, each with its mark.
    private static void Slanting(SiteView view, Piece piece)
    {
        var (reachMm, half) = (piece.Form.StrutReachM * 1000, FenceSteel.StrutDiameterMm / 2);
        foreach (var (atMm, way, mark) in piece.Struts)
        {
            var endMm = (piece.Form.StrutM * 1000) + FenceSteel.StrutOffMm;
            SitePoint At(double alongMm, double asideMm) =>
                new(atMm + (way * (alongMm + asideMm) / Math.Sqrt(2)), reachMm - ((alongMm - asideMm) / Math.Sqrt(2)));
            view.Polygon(Layer.Steel, [At(0, -half), At(endMm, -half), At(endMm, half), At(0, half)], Palette.White);
            view.Leader(At(reachMm * 0.8, half), way * 3, -8, mark);
        }

        foreach (var bay in piece.Rails)
        {
            var rail = piece.Fence.Line.Rails.ToList().FindIndex(each => each.From.Foot == piece.Posts[bay].Foot);
            var mark = piece.Fence.Steel.Parts[^(piece.Fence.Line.Rails.Count - rail)].Mark;
            view.Rectangle(
                Layer.Steel,
                new(piece.AtMm[bay], reachMm - half),
                new(piece.AtMm[bay + 1], reachMm + half),
                Palette.White
            );
            view.Leader(new((piece.AtMm[bay] + piece.AtMm[bay + 1]) / 2, reachMm), 3, 6, mark);
        }
    }

    private static void Leaves(SiteView view, (double AtMm, double WideMm) gate, double topMm)
    {
        foreach (var half in gate.WideMm > 0 ? new[] { 0, 1 } : [])
        {
            var left = gate.AtMm + (half * gate.WideMm / 2) + 50;
            var right = left + (gate.WideMm / 2) - 100;
            view.Rectangle(Layer.Steel, new(left, 60), new(right, topMm));
            view.Line(Layer.Steel, half == 0 ? new(left, 60) : new(right, 60), new(half == 0 ? right : left, topMm));
        }
    }

    private static void Sizes(SiteView view, Piece piece)
    {
        var form = piece.Form;
        view.DimensionChain(
            DimensionSide.Below,
            [
                .. piece
                    .Uprights.Select(each => (each.AtMm, form.HoleOf(each.Kind)))
                    .Concat(
                        piece.Struts.Select(each => (each.AtMm + (each.Way * form.StrutHoleAtM * 1000), form.StrutHole))
                    )
                    .OrderBy(each => each.Item1)
                    .Select(each => new SitePoint(each.Item1, -each.Item2.DepthM * 1000)),
            ],
            withOverall: false
        );
        var (left, strained) = (-form.StrainedHole.LengthM * 500, form.HoleOf(piece.Posts[0].Kind));
        view.DimensionChain(
            DimensionSide.Left,
            [
                new(left, -strained.DepthM * 1000),
                new(left, 0),
                new(left, form.StrutReachM * 1000),
                new(left, form.HeightM * 1000),
            ]
        );
        var end = piece.EndMm + (form.StrainedHole.LengthM * 500);
        (string Name, FenceHole Hole)[] deep =
        [
            .. piece.Uprights.Any(each => each.Kind == FencePostKind.Intermediate)
                ? new[] { ("plain", form.PlainHole) }
                : [],
            .. piece.Struts.Any() ? new[] { ("strut", form.StrutHole) } : [],
        ];
        view.Dimensions(
            DimensionSide.Right,
            [
                .. deep.Select(each => new Dimension(new(end, -each.Hole.DepthM * 1000), new(end, 0))
                {
                    Text = Invariant($"{each.Name} {each.Hole.DepthM * 1000:0}"),
                }),
            ]
        );
    }
}
