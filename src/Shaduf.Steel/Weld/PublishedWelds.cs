using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Which shipped kernel computes each quantity of the published rows of welds and tube joints.</summary>
internal static class PublishedWelds
{
    internal static IReadOnlyList<PublishedCheck> All { get; } = [.. Fillets, .. Groups];

    private static IEnumerable<PublishedCheck> Fillets =>
        [
            new("steel/fillet-weld", "throat-normal", row => Throat(row).NormalNPerMm2),
            new("steel/fillet-weld", "throat-across", row => Throat(row).AcrossNPerMm2),
            new("steel/fillet-weld", "throat-equivalent", row => Throat(row).EquivalentNPerMm2),
            new(
                "steel/fillet-weld",
                "throat-share",
                row => FilletWeld.Directional(Throat(row), Grade(row)).UtilisationShare
            ),
            new("steel/fillet-weld", "strength", row => FilletWeld.StrengthNPerMm2(Grade(row))),
            new("steel/fillet-weld", "resistance", row => FilletWeld.ResistanceNPerMm(Grade(row), row["throatMm"])),
            new(
                "steel/fillet-weld",
                "full-strength",
                row => FilletWeld.FullStrengthThroatMm(Grade(row), row["wallMm"])
            ),
            new("steel/fillet-weld", "effective", row => FilletWeld.EffectiveMm(row["runMm"], row["throatMm"])),
        ];

    private static IEnumerable<PublishedCheck> Groups =>
        [
            new("steel/line-weld", "along", row => Pair(row).ForceNPerMm(Forces(row))),
            new(
                "steel/line-weld",
                "along-share",
                row => Pair(row).Utilisation(Forces(row), Grade(row), row["throatMm"]).UtilisationShare
            ),
            new("steel/tube-weld", "length", row => Around(row).LengthMm),
            new("steel/tube-weld", "inertia", row => Around(row).InertiaYMm3),
            new("steel/tube-weld", "force", row => Around(row).ForceNPerMm(Forces(row))),
            new(
                "steel/lap-weld",
                "flow",
                row =>
                    LapWeld.FlowNPerMm(
                        MemberSection.OfChannel(Channel(row), row["rootRadiusMm"]),
                        row["shearYN"],
                        row["shearZN"]
                    )
            ),
            new(
                "steel/lap-weld",
                "back-flow",
                row =>
                    LapWeld.BackFlowNPerMm(
                        MemberSection.OfDoubleChannel(Channel(row), row["rootRadiusMm"]),
                        row["shearYN"]
                    )
            ),
            new("steel/tube-joint", "axial", row => Joint(row).AxialN / 1e3),
            new("steel/tube-joint", "in-plane", row => Joint(row).InPlaneNMm / 1e6),
        ];

    private static ThroatStress Throat(PublishedCase row) =>
        FilletWeld.OnThroat(row["normalNPerMm2"], row["acrossNPerMm2"], row["alongNPerMm2"]);

    private static SteelGrade Grade(PublishedCase row) =>
        SteelGrade.Of("S235") with
        {
            YieldNPerMm2 = row.Inputs.GetValueOrDefault("yieldNPerMm2", 235),
            UltimateNPerMm2 = row["ultimateNPerMm2"],
            WeldCorrelationFactor = row["weldFactor"],
        };

    private static MemberForces Forces(PublishedCase row) =>
        new(
            0,
            row.Inputs.GetValueOrDefault("tensionN"),
            row.Inputs.GetValueOrDefault("shearYN"),
            row.Inputs.GetValueOrDefault("shearZN"),
            row.Inputs.GetValueOrDefault("torsionNMm"),
            row.Inputs.GetValueOrDefault("bendingYNMm"),
            row.Inputs.GetValueOrDefault("bendingZNMm")
        );

    private static WeldGroup Pair(PublishedCase row) => LineWeld.Pair(row["runMm"], row["apartMm"]);

    private static WeldGroup Around(PublishedCase row) =>
        TubeWeld.Group(MemberSection.OfSquare(row["sideMm"], row["wallMm"]));

    private static SlideInChannel Channel(PublishedCase row) =>
        SlideInChannel.Of(row["legMm"], row["thicknessMm"], row["moduleThicknessMm"], row["clearanceMm"]);

    private static TubeJointStrength Joint(PublishedCase row) =>
        TubeJoint.Of(
            MemberSection.OfSquare(row["chordMm"], row["chordWallMm"]),
            MemberSection.OfSquare(row["branchMm"], row["branchWallMm"]),
            SteelGrade.Of("S235") with
            {
                YieldNPerMm2 = row["yieldNPerMm2"],
            },
            90,
            0
        );
}
