using Shaduf.Ground;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The fence: where its posts stand, how it is made, and what it takes.</summary>
internal static class FenceSheets
{
    private const double SideScale = 50;

    /// <summary>The sheets; none without a fence.</summary>
    public static IEnumerable<SheetDraft> Of(Design design)
    {
        if (design.Works.Guard.Fence is not { } fence)
        {
            return [];
        }

        var (plan, pits) = (SitePlan.Of(design), design.Works.Pits);
        (string Name, SitePlace Place)[] pegs =
        [
            ("peg A", plan.Bearing.At(pits.A)),
            ("peg B", plan.Bearing.At(pits.B)),
        ];
        var corners = fence.Line.Corners;
        var wideM = Math.Max(
            corners.Max(corner => corner.EastM) - corners.Min(corner => corner.EastM),
            (corners.Max(corner => corner.NorthM) - corners.Min(corner => corner.NorthM)) * 380 / 200
        );
        return SheetDraft
            .Scaled(
                "fence",
                "fence: setting out and build",
                scale => [FencePicture.Above(fence, plan, pegs, scale)],
                [.. FenceSide.Of(fence, SideScale), .. Tables(fence, pegs)],
                [.. Notes(fence)],
                wideM * 1000 / 380
            )
            .Concat(Saddles(fence.Steel));
    }

    // Each on its own small sheet, to be printed and cut out.
    private static IEnumerable<SheetDraft> Saddles(Parts.Assembly steel) =>
        FenceSteel
            .Saddles(steel)
            .SelectMany(
                (saddle, i) =>
                    SheetDraft.Fixed(
                        i == 0 ? "fence-strut" : Invariant($"fence-strut-{i + 1}"),
                        Invariant($"template for the end of the fence's {saddle.Mark}"),
                        "1:1",
                        CutTemplate.Round(
                            Invariant($"{saddle.Mark}, {saddle.AngleDeg:0} deg {saddle.What}"),
                            FenceSteel.StrutDiameterMm,
                            saddle.BehindMm
                        ),
                        [
                            CutTemplate.Caution,
                            "Wrap it round the tube, upper line at the long point, seam on the short side; of a rail the seam is on top at both ends.",
                        ]
                    )
            );

    private static IEnumerable<Scene> Tables(StationFence fence, IReadOnlyList<(string Name, SitePlace Place)> pegs)
    {
        var (line, tallMm) = (fence.Line, 120);
        return
        [
            .. SheetTexts.Table(
                "Points: tapes held level, metres",
                ["point", "east", "north", "level", "from peg A", "from peg B"],
                [.. Points(line).Select(each => PointRow(each.Name, each.At, pegs))],
                tallMm
            ),
            .. SheetTexts.Table(
                "Straights between them, metres",
                ["from", "to", "on plan", "rise", "along ground", "bays", "mesh"],
                [.. line.Runs.Select(run => RunRow(line, run))],
                tallMm
            ),
            .. SheetTexts.Table(
                "Tubes, holes in mm along x across x deep",
                ["mark", "what", "tube", "length mm", "nr", "hole"],
                [.. fence.Steel.Groups.Select(part => TubeRow(line.Form, part))],
                tallMm
            ),
            .. StrutTable(fence, tallMm),
        ];
    }

    // Where the ground slopes, struts are not all of one length.
    private static IEnumerable<Scene> StrutTable(StationFence fence, double tallMm)
    {
        var struts = FenceSteel.Struts(fence.Line, fence.Steel).ToList();
        return struts.DistinctBy(each => each.Strut.Mark).Count() < 2
            ? []
            : SheetTexts.Table(
                "Struts: from which post towards which",
                ["mark", "at", "towards"],
                [
                    .. struts.Select(each =>
                        (IReadOnlyList<string>)
                            [each.Strut.Mark, Name(fence.Line, each.Post), Towards(fence.Line, each.Post, each.To)]
                    ),
                ],
                tallMm
            );
    }

    // The end of the straight in which the strut lies, on the side to which it leans.
    private static string Towards(FenceLine line, FencePoint post, FencePoint to)
    {
        var all = line.Posts.ToList();
        var (at, next) = (all.FindIndex(each => each.Foot == post), all.FindIndex(each => each.Foot == to));
        var (start, isOnward) = (0, next == (at + 1) % all.Count);
        foreach (var run in line.Runs)
        {
            var bay = isOnward ? at : next;
            if (bay < start + run.BayCount)
            {
                return Name(line, isOnward ? run.To : run.From);
            }

            start += run.BayCount;
        }

        return Name(line, to);
    }

    private static IEnumerable<(string Name, FencePoint At)> Points(FenceLine line) =>
        [
            .. line.Corners.Select((corner, i) => (Invariant($"point {i + 1}"), corner)),
            .. line.GatePosts is var (from, to)
                ? new[] { ("gate post 1", from), ("gate post 2", to) }
                : Array.Empty<(string, FencePoint)>(),
        ];

    private static IReadOnlyList<string> PointRow(
        string name,
        FencePoint at,
        IReadOnlyList<(string Name, SitePlace Place)> pegs
    ) =>
        [
            name,
            GroundSheets.Metres(at.EastM),
            GroundSheets.Metres(at.NorthM),
            GroundSheets.Metres(at.LevelM, 2),
            .. pegs.Select(peg =>
                GroundSheets.Metres(double.Hypot(at.EastM - peg.Place.EastM, at.NorthM - peg.Place.NorthM))
            ),
        ];

    private static IReadOnlyList<string> RunRow(FenceLine line, FenceRun run) =>
        [
            Name(line, run.From),
            Name(line, run.To),
            GroundSheets.Metres(run.PlanM),
            GroundSheets.Metres(run.RiseM, 2),
            GroundSheets.Metres(run.SlopeM),
            Bays(run),
            run.IsStepped ? Invariant($"steps of {run.StepM:0.00}") : "along ground",
        ];

    /// <summary>Bays of a straight: '4 x 1.924', or end bays and those between them.</summary>
    public static string Bays(FenceRun run) =>
        run.EndBayM is { } endM
            ? Invariant(
                $"{endM:0.000} + {(run.BayCount > 3 ? Invariant($"{run.BayCount - 2} x ") : "")}{run.BaysM[1]:0.000} + {endM:0.000}"
            )
            : Invariant($"{run.BayCount} x {run.BayM:0.000}");

    /// <summary>Name of a point of the line or of a gate post.</summary>
    public static string Name(FenceLine line, FencePoint at) =>
        Points(line).FirstOrDefault(each => each.At == at).Name
        ?? Invariant(
            $"strainer {line.Posts.Where(post => post.Kind == FencePostKind.Strainer).ToList().FindIndex(post => post.Foot == at) + 1} of the line"
        );

    private static IReadOnlyList<string> TubeRow(FenceForm form, Parts.PartGroup part)
    {
        var hole =
            part.Role == FenceSteel.StrutRole ? form.StrutHole
            : part.Role == FenceSteel.PlainRole ? form.PlainHole
            : form.StrainedHole;
        return
        [
            part.Mark,
            part.Role,
            part.Section.Name,
            Invariant($"{Parts.Part.WholeMm(part.Shape.LongPointMm):0}"),
            Invariant($"{part.Count}"),
            part.Role == FenceSteel.RailRole
                ? "none"
                : Invariant($"{hole.LengthM * 1000:0} x {hole.WidthM * 1000:0} x {hole.DepthM * 1000:0}"),
        ];
    }

    private static IEnumerable<string> Notes(StationFence fence)
    {
        var line = fence.Line;
        yield return Invariant(
            $"Fence {fence.Says}, {line.Form.HeightM:0.0} m high: {line.BayCount} bays, {line.Posts.Count} posts, {line.StrutCount} struts, {line.Rails.Count} rails, {line.MeshM:0.0} m of mesh, {line.WireM:0} m of line wire on {line.Form.WireCount} lines, {line.StretcherCount} stretcher bars, {line.ConcreteM3:0.00} m3 of concrete."
        );
        yield return "East and north from the middle of the front rack's low edge; levels above the ground under its low left corner. Posts of a straight stand on a string between its ends, one bay apart. Tolerances: line 50 mm, plumb 1 in 100.";
        if (line.Rails.Count > 0)
        {
            yield return Invariant(
                $"A bay too short for a strut has a rail {line.Form.StrutReachM * 1000:0} above the ground instead: the posts at its ends hold each other."
            );
        }

        yield return Invariant(
            $"Struts lie in the line of the fence, their heads {line.Form.StrutReachM * 1000:0} above the ground (45 deg where it is level); middle of a strut's hole {line.Form.StrutHoleAtM * 1000:0} from its post along the ground. Struts and rails are welded on; brush the welds and coat them with zinc-rich paint."
        );
        yield return "Let the concrete of strained posts stand 3 days before wire is tightened. Tie the mesh every 450 mm to the wires, every 150 mm at top and bottom. Bond gate posts and a post every 50 m to the earth of the station.";
        if (line.Runs.Any(run => run.IsStepped))
        {
            yield return "Stepped straights: the mesh hangs level from post to post; close the wedge under it with stones.";
        }
    }
}
