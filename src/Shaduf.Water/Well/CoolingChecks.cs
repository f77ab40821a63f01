using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>The part of <see cref="PublishedChecks"/> that concerns the flow past a motor.</summary>
internal static class CoolingChecks
{
    internal static IEnumerable<PublishedCheck> All() =>
        [
            new(
                "water/cooling-flow",
                "flow",
                row =>
                    60_000 * CoolingFlow.PastMotorM3PerS(row["boreMm"] / 1000, row["motorMm"] / 1000, row["speedMPerS"])
            ),
            new(
                "water/cooling-flow",
                "shroud needed",
                row =>
                    row["flowLPerMin"] / 60_000
                    < CoolingFlow.PastMotorM3PerS(
                        row["boreMm"] / 1000,
                        row["motorMm"] / 1000,
                        CoolingFlow.LeastMPerS(row["motorMm"] / 1000, 7.5)
                    )
                        ? 1
                        : 0
            ),
        ];
}
