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
                [FencePicture.Side(fence.Line, SideScale), .. Tables(fence, pegs)],
                [.. Notes(fence)],
                wideM * 1000 / 380
            )
            .Concat(fence.Steel.Groups.Where(part => part.Role == FenceSteel.StrutRole).Take(1).SelectMany(StrutHead));
    }

    private static IEnumerable<SheetDraft> StrutHead(Parts.PartGroup strut) =>
        SheetDraft.Fixed(
            "fence-strut",
            "template of the fence struts' heads",
            "1:1",
            CutTemplate.Round(
                $"{strut.Mark} {strut.Section.Name}, 45 deg on its post",
                FenceSteel.StrutDiameterMm,
                FenceSteel.StrutBehindMm
            ),
            [CutTemplate.Caution, "Wrap it round the strut, upper line at the long point, seam on the short side."]
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
                ["from", "to", "on plan", "rise", "along ground", "bays", "bay", "mesh"],
                [.. line.Runs.Select(run => RunRow(line, run))],
                tallMm
            ),
            .. SheetTexts.Table(
                "Tubes, holes in mm along x across x deep",
                ["mark", "what", "tube", "length mm", "nr", "hole"],
                [.. fence.Steel.Groups.Select(part => TubeRow(line.Form, part))],
                tallMm
            ),
        ];
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
            Invariant($"{run.BayCount}"),
            GroundSheets.Metres(run.BayM),
            run.IsStepped ? Invariant($"steps of {run.StepM:0.00}") : "along ground",
        ];

    private static string Name(FenceLine line, FencePoint at) => Points(line).First(each => each.At == at).Name;

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
            Invariant($"{hole.LengthM * 1000:0} x {hole.WidthM * 1000:0} x {hole.DepthM * 1000:0}"),
        ];
    }

    private static IEnumerable<string> Notes(StationFence fence)
    {
        var line = fence.Line;
        yield return Invariant(
            $"Fence {fence.Says}, {line.Form.HeightM:0.0} m high: {line.BayCount} bays, {line.Posts.Count} posts, {line.StrutCount} struts, {line.MeshM:0.0} m of mesh, {line.WireM:0} m of line wire on {line.Form.WireCount} lines, {line.StretcherCount} stretcher bars, {line.ConcreteM3:0.00} m3 of concrete."
        );
        yield return "East and north from the middle of the front rack's low edge; levels above the ground under its low left corner. Posts of a straight stand on a string between its ends, one bay apart. Tolerances: line 50 mm, plumb 1 in 100.";
        yield return "Struts lie in the line of the fence at 45 deg. Let the concrete of strained posts stand 3 days before wire is tightened. Tie the mesh every 450 mm to the wires, every 150 mm at top and bottom. Bond gate posts and a post every 50 m to the earth of the station.";
        if (line.Runs.Any(run => run.IsStepped))
        {
            yield return "Stepped straights: the mesh hangs level from post to post; close the wedge under it with stones.";
        }
    }
}
