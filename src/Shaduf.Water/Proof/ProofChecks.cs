using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Water;

/// <summary>How the published figures of tests on site are computed.</summary>
internal static class ProofChecks
{
    public static IEnumerable<PublishedCheck> All() =>
        [
            new("water/pump-grade", "flow-arm", row => Grade(row).FlowHighShare * row["flowM3PerH"]),
            new("water/pump-grade", "head-arm", row => Grade(row).HeadHighShare * row["headM"]),
            new(
                "water/filled-vessel",
                "uncertainty",
                row => FilledVessel.UncertainShare(row["volumeL"], row["offVolumeL"], row["timeS"], row["offTimeS"])
            ),
            new("water/filled-vessel", "flow", row => FilledVessel.FlowM3PerH(row["volumeL"], row["timeS"])),
            new("water/chlorine-dose", "column", row => ChlorineDose.ColumnL(row["boreMm"], row["columnM"])),
            new(
                "water/chlorine-dose",
                "product",
                row => ChlorineDose.ProductG(row["volumeL"], row["doseMgPerL"], row["chlorineShare"])
            ),
        ];

    private static PumpGrade Grade(PublishedCase row) =>
        PumpGrade.Of(Invariant($"{row["gradeYear"]:0}-{row["gradeClass"]:0}"));
}
