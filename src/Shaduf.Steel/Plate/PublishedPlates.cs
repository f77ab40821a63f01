using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Which shipped kernel computes each quantity of the published rows of plates, bolts and anchors.</summary>
internal static class PublishedPlates
{
    internal static IReadOnlyList<PublishedCheck> All { get; } = [.. Bolts, .. Plates, .. Anchors];

    private static IEnumerable<PublishedCheck> Bolts =>
        [
            new("steel/bolt", "tension", row => Bolt.TensionN(Size(row), Class(row)) / 1e3),
            new("steel/bolt", "shear", row => row["planeCount"] * Bolt.ShearN(Size(row), Class(row)) / 1e3),
            new(
                "steel/bolt",
                "bearing",
                row => Bolt.BearingN(Size(row), Class(row), Grade(row), row["plateMm"], row["edgeMm"]) / 1e3
            ),
        ];

    private static IEnumerable<PublishedCheck> Plates =>
        [
            new(
                "steel/base-plate",
                "bolt-square",
                row => BasePlate.BoltTensionN(row["spacingMm"], 0, row["momentNMm"], 0) / 1e3
            ),
            new(
                "steel/base-plate",
                "bolt-diagonal",
                row =>
                    BasePlate.BoltTensionN(
                        row["spacingMm"],
                        0,
                        row["momentNMm"] / Math.Sqrt(2),
                        row["momentNMm"] / Math.Sqrt(2)
                    ) / 1e3
            ),
            new(
                "steel/base-plate",
                "bolt-uplift",
                row => BasePlate.BoltTensionN(row["spacingMm"], -row["upliftN"], 0, 0) / 1e3
            ),
            new("steel/base-plate", "spread", SpreadMm),
            new("steel/base-plate", "pressed", PressedMm2),
            new("steel/base-plate", "pressed-force", row => PressedMm2(row) * Bearing(row) / 1e3),
            new(
                "steel/base-plate",
                "thickness",
                row => BasePlate.ThicknessMm(Grade(row), row["tensionN"], row["leverMm"], row["breadthMm"])
            ),
            new(
                "steel/base-plate",
                "breadth",
                row => BasePlate.BendingBreadthMm(row["leverMm"], row["washerMm"], row["shareMm"])
            ),
        ];

    private static IEnumerable<PublishedCheck> Anchors =>
        [
            new("steel/cast-in-anchor", "cone", ConeKN),
            new(
                "steel/cast-in-anchor",
                "cone-group",
                row => ConeKN(row) * CastInAnchor.GroupFactor(row["coneMm2"], row["depthMm"], row["edgeMm"])
            ),
            new(
                "steel/cast-in-anchor",
                "steel-tension",
                row => CastInAnchor.SteelTensionN(Size(row), Class(row)) / 1e3
            ),
            new("steel/cast-in-anchor", "steel-shear", row => CastInAnchor.SteelShearN(Size(row), Class(row)) / 1e3),
            new(
                "steel/cast-in-anchor",
                "pull-out",
                row => CastInAnchor.PullOutN(row["cylinderNPerMm2"], row["headMm2"]) / 1e3
            ),
            new(
                "steel/embedded-tube",
                "pressure",
                row => EmbeddedTube.PressureNPerMm2(row["widthMm"], row["depthMm"], row["shearN"], row["momentNMm"])
            ),
            new(
                "steel/embedded-tube",
                "depth",
                row =>
                    EmbeddedTube.RequiredDepthMm(
                        row["widthMm"],
                        row["shearN"],
                        row["momentNMm"],
                        row["strengthNPerMm2"]
                    )
            ),
        ];

    private static BoltSize Size(PublishedCase row) =>
        BoltSize.All.Single(size => size.DiameterMm == row["diameterMm"]);

    // Classes 4.6, 5.6, 8.8 and 10.9 are written as 0 to 3.
    private static BoltGrade Class(PublishedCase row) => BoltGrade.All[(int)row["class"]];

    private static SteelGrade Grade(PublishedCase row) =>
        SteelGrade.Of("S235") with
        {
            YieldNPerMm2 = row["yieldNPerMm2"],
        };

    private static double Bearing(PublishedCase row) => BasePlate.BearingNPerMm2(row["cylinderNPerMm2"]);

    private static double SpreadMm(PublishedCase row) => BasePlate.SpreadMm(Grade(row), row["plateMm"], Bearing(row));

    private static double PressedMm2(PublishedCase row) =>
        BasePlate.PressedMm2(row["sideMm"], row["wallMm"], row["plateSideMm"], SpreadMm(row));

    private static double ConeKN(PublishedCase row) => CastInAnchor.ConeN(row["cylinderNPerMm2"], row["depthMm"]) / 1e3;
}
