using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Which shipped kernel computes each quantity of the published rows of racks and of the holding of modules.</summary>
internal static class PublishedOneLine
{
    internal static IReadOnlyList<PublishedCheck> All { get; } = [.. Moments, .. Movements, .. Holding];

    private static IEnumerable<PublishedCheck> Moments =>
        [
            new("steel/one-line", "centre", row => OneLine.CentreM(row["topEdgeM"], row["slopeM"], row["tiltDeg"])),
            new("steel/one-line", "lever-high", row => HighNm(row, 1)),
            new("steel/one-line", "lever-low", row => LowNm(row, 1)),
            new("steel/one-line", "couple", row => OneLine.PlaneNm(row["forceN"], row["slopeM"]) / 1e3),
            new("steel/one-line", "high", row => HighNm(row, row["forceN"]) / 1e3),
            new("steel/one-line", "low", row => LowNm(row, row["forceN"]) / 1e3),
            new(
                "steel/one-line",
                "modulus",
                row => 1.5 * row["columnShare"] * HighNm(row, row["forceN"]) / row["yieldNPerMm2"]
            ),
            new(
                "steel/one-line",
                "end-column",
                row => OneLine.EndColumnN(row["horizontalN"], row["widthM"], row["betweenM"]) / 1e3
            ),
            new("steel/one-line", "windward", row => OneLine.TwoLines(row["forceN"], row["tiltDeg"]).WindwardN / 1e3),
            new("steel/one-line", "leeward", row => OneLine.TwoLines(row["forceN"], row["tiltDeg"]).LeewardN / 1e3),
        ];

    private static IEnumerable<PublishedCheck> Movements =>
        [
            new(
                "steel/one-line",
                "inertia",
                row =>
                    OneLine.RequiredMm4(
                        row["horizontalN"],
                        row["planeNm"],
                        row["lengthMm"],
                        OneLineFigures.LargestTurnRad
                    ) / 1e4
            ),
            new("steel/one-line", "head", row => Head(row).HeadMm),
            new("steel/one-line", "turn", row => Head(row).TurnRad),
            new(
                "steel/one-line",
                "edge",
                row => new OneLineFigures(row["slopeM"], 0, 0, Head(row), row["lengthMm"], 0).EdgeMm
            ),
            new(
                "steel/one-line",
                "frequency",
                row => OneLine.FirstHz(row["massKg"], row["slopeM"], row["lengthMm"], row["inertiaMm4"])
            ),
            new("steel/one-line", "critical", row => OneLine.CriticalN(row["lengthMm"], row["inertiaMm4"]) / 1e3),
        ];

    private static IEnumerable<PublishedCheck> Holding =>
        [
            new(
                "steel/module-holding",
                "allowed",
                row => ModuleHolding.AllowedNPerM2(row["testNPerM2"], row["safetyFactor"])
            ),
            new(
                "steel/module-holding",
                "edge",
                row => ModuleHolding.EdgeNPerMm(row["pressureNPerM2"], row["betweenMm"])
            ),
            new(
                "steel/module-holding",
                "lip",
                row =>
                    ModuleHolding
                        .Lip(SteelGrade.Of("S235"), row["edgeNPerMm"], row["leverMm"], row["thicknessMm"])
                        .UtilisationShare
            ),
            new(
                "steel/module-holding",
                "clamp",
                row =>
                    ModuleHolding.ClampN(
                        row["pressureNPerM2"],
                        row["areaM2"],
                        (int)row["clampCount"],
                        (int)row["sharedCount"]
                    )
            ),
        ];

    private static double HighNm(PublishedCase row, double forceN) =>
        OneLine.HighSideNm(forceN, row["slopeM"], row["centreM"], row["tiltDeg"]);

    private static double LowNm(PublishedCase row, double forceN) =>
        OneLine.LowSideNm(forceN, row["slopeM"], row["centreM"], row["tiltDeg"]);

    private static HeadMovement Head(PublishedCase row) =>
        OneLine.Head(row["horizontalN"], row["planeNm"], row["lengthMm"], row["inertiaMm4"]);
}
