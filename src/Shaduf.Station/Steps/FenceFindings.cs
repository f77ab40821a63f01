using Shaduf.Ground;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of the fence.</summary>
internal static class FenceFindings
{
    private const string Judged = "common practice, no source";
    private const double LevelGateM = 0.1;

    /// <summary>Whether it goes round the racks, can be built on its ground and has a gate.</summary>
    /// <param name="fence">The fence.</param>
    public static IEnumerable<Finding> Of(StationFence fence)
    {
        yield return Free(fence);
        yield return Slope(fence.Line);
        yield return Gate(fence.Line);
    }

    private static Finding Free(StationFence fence) =>
        new(
            "guard/fence-line",
            fence.FreeM <= 0 ? FindingStatus.Stop
                : fence.FreeM < StationFence.LeastFreeM - 1e-9 ? FindingStatus.Look
                : FindingStatus.Holds,
            fence.FreeM switch
            {
                < 0 => "racks, masts or light columns stand outside the fence: move its points in guard.fenceLine",
                0 => "the fence runs through racks: move its points in guard.fenceLine",
                _ => "free ground between the fence and what stands inside, to walk and to work",
            },
            fence.FreeM,
            StationFence.LeastFreeM,
            "m",
            Judged
        );

    private static Finding Slope(FenceLine line)
    {
        var steepestDeg = line.Runs.Max(run => run.SlopeDeg);
        return new(
            "guard/fence-slope",
            steepestDeg > FenceRun.SteepestDeg ? FindingStatus.Stop
                : steepestDeg > FenceRun.SteepestRakeDeg ? FindingStatus.Look
                : FindingStatus.Holds,
            steepestDeg > FenceRun.SteepestDeg
                    ? "so steep a slope carries no fence posts: lead the line round it, or check the levels"
                : steepestDeg > FenceRun.SteepestRakeDeg
                    ? "the mesh goes down in level steps there, bay by bay, with longer posts; close the wedges under it with stones"
                : "the mesh follows the ground",
            steepestDeg,
            FenceRun.SteepestRakeDeg,
            "deg",
            Judged
        );
    }

    private static Finding Gate(FenceLine line)
    {
        if (line.GatePosts is not var (from, to))
        {
            return new(
                "guard/fence-gate",
                FindingStatus.Stop,
                "no side of the fence is long enough for a gate of the asked width: widen the fence or narrow guard.gate.width",
                null,
                null,
                "",
                "geometry"
            );
        }

        var riseM = Math.Abs(to.LevelM - from.LevelM);
        return new(
            "guard/fence-gate",
            riseM > LevelGateM ? FindingStatus.Look : FindingStatus.Holds,
            riseM > LevelGateM
                ? "the ground rises from one gate post to the other: level it before the gate is hung, or move the gate"
                : "the ground under the gate is level enough for its leaves",
            riseM,
            LevelGateM,
            "m",
            Judged
        );
    }
}
