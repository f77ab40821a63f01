using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How the published figures on weather years are computed.</summary>
internal static class YearChecks
{
    /// <summary>One check for every quantity named in the published files on weather years.</summary>
    public static IEnumerable<PublishedCheck> All { get; } =
    [
        .. PublishedChecks.Of(
            "sun/hourly-clearness",
            ("mean", row => HourlyClearness.MeanRatio(row["dayRatio"], row["elevationDeg"])),
            ("deviation", row => HourlyClearness.DeviationRatio(row["dayRatio"], row["elevationDeg"])),
            ("memory", row => HourlyClearness.MemoryCoefficient(row["dayRatio"])),
            ("highest", row => HourlyClearness.HighestRatio(row["solarTimeH"]))
        ),
        .. PublishedChecks.Of(
            "sun/clearness-distribution",
            ("steepness", row => ClearnessDistribution.SteepnessCoefficient(row["monthMeanRatio"])),
            ("highest-day", row => ClearnessDistribution.HighestDayRatio(row["monthMeanRatio"])),
            ("share-below", row => ClearnessDistribution.BendtShare(row["dayRatio"], row["monthMeanRatio"])),
            ("chance-gap", row => ClearnessDistribution.ChanceGapShare((int)row["dayCount"]))
        ),
        .. PublishedChecks.Of(
            "sun/estimated-clearness",
            ("daylight", row => EstimatedClearness.DaylightH(row["latitudeDeg"], (int)row["dayOfYear"])),
            (
                "from-sunshine",
                row => row["aboveMJPerM2"] * EstimatedClearness.AngstromRatio(row["sunshineH"] / row["daylightH"])
            ),
            ("clear-sky", row => row["aboveMJPerM2"] * EstimatedClearness.ClearSkyRatio(row["elevationM"])),
            (
                "from-range",
                row =>
                    row["aboveMJPerM2"]
                    * EstimatedClearness.HargreavesRatio(row["highDegC"] - row["lowDegC"], row["rangeCoefficient"])
            )
        ),
        .. PublishedChecks.Of(
            "sun/record-limits",
            ("highest-global", row => RecordLimits.HighestGlobalWPerM2(row["zenithDeg"], row["normalWPerM2"])),
            ("highest-diffuse", row => RecordLimits.HighestDiffuseWPerM2(row["zenithDeg"], row["normalWPerM2"])),
            ("closure", row => RecordLimits.ClosureShare(row["zenithDeg"]))
        ),
        .. PublishedChecks.Of(
            "sun/clock-shift",
            (
                "transit",
                row =>
                    ClockShift.TransitH(
                        new(LatitudeDeg: 0, row["longitudeDeg"], ElevationM: 0, row["utcOffsetH"]),
                        (int)row["dayOfYear"]
                    )
            )
        ),
    ];
}
