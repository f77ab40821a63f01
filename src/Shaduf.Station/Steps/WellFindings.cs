using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of the borehole or well with the pump in it.</summary>
internal static class WellFindings
{
    // Grout round the casing from the surface; general guide.
    private const double LeastSealM = 3;

    /// <summary>Findings of the source for the pump chosen.</summary>
    /// <param name="design">The design so far.</param>
    /// <param name="build">The equipment of the borehole.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Design design, WellBuild build)
    {
        var (well, survey, source) = (build.Well, design.Survey, build.Well.Survey.Brief);
        var largestFlowM3PerH = design.Sizing.Table.FullFlowM3PerH;
        return
        [
            Finding.AtMost(
                "source/yield",
                largestFlowM3PerH,
                well.YieldM3PerH * (1 + 1e-6),
                "m3/h",
                Invariant(
                    $"the largest flow of the year stays within {survey["yield-share"] * 100:0} % of the tested rate, and the level above {well.LowestLevelM:0.0} m"
                ),
                "share of the constant rate for long use: national practice, from memory"
            ),
            .. Depths(well, survey, design.Choice.Pump, largestFlowM3PerH),
            .. Season(well, survey["seasonal-fall"]),
            .. Probes(well, largestFlowM3PerH),
            .. Screens(source, well, largestFlowM3PerH),
            .. Licence(design, source.LicenceM3PerDay),
            Seal(source),
            build.Cooling.Finding(),
            .. TestFindings.Of(source, well.Survey.Tested, largestFlowM3PerH),
        ];
    }

    private static IEnumerable<Finding> Depths(Well well, Survey survey, PumpCard pump, double largestFlowM3PerH)
    {
        yield return Finding.AtLeast(
            "source/pump-setting",
            well.PumpSettingM - well.LevelM(largestFlowM3PerH),
            Math.Max(pump.InWater.SubmergenceM, Well.LeastSubmergenceM),
            "m",
            "water above the intake at the largest flow at the end of the dry season",
            "pump card, and at least 2 m (from memory)"
        );
        yield return Finding.AtLeast(
            "source/sump",
            well.BottomM - well.PumpSettingM,
            Well.SumpM,
            "m",
            "free depth below the intake for sand and silt",
            "common practice 3 to 5 m, from memory"
        );
        yield return Finding.AtLeast(
            "source/pump-fit",
            survey["casing"] - pump.InWater.DiameterMm,
            Well.LeastCasingRoomMm,
            "mm",
            "the pump with its cable guard passes the casing",
            "10 to 15 mm for a plumb borehole, from memory"
        );
    }

    private static IEnumerable<Finding> Season(Well well, double fallM)
    {
        if (well.SeasonM > 0 && well.RestDryM >= well.BottomM)
        {
            yield return new(
                "source/season",
                FindingStatus.Stop,
                "a season of this pumping drains the source: ask for less water, or find another source",
                well.Survey.RestLevelM + fallM + well.SeasonM,
                well.BottomM,
                "m",
                "superposition of Cooper and Jacob 1946"
            );
        }
    }

    private static IEnumerable<Finding> Probes(Well well, double largestFlowM3PerH)
    {
        var level = well.LevelM(largestFlowM3PerH);
        var holds = level <= well.StopProbeM;
        yield return new(
            "source/dry-run",
            holds ? FindingStatus.Holds : FindingStatus.Look,
            holds
                ? Invariant(
                    $"lowest level while the pump runs, above the probe that stops it; it starts again at {well.StartProbeM:0.0} m"
                )
                : "the level falls below the probe that stops the pump: it will start and stop all day; hang it deeper or draw less",
            level,
            well.StopProbeM,
            "m",
            "stop 1 m above the intake, never less than 0.5 m; judgement, no source"
        );
    }

    private static IEnumerable<Finding> Screens(BoreholeBrief source, Well well, double largestFlowM3PerH)
    {
        if (source.Screens is not [var first, ..])
        {
            yield break;
        }

        var inScreen = source.Screens.Any(screen =>
            well.PumpSettingM + Well.MotorRoomM > screen.TopM && well.PumpSettingM < screen.BottomM
        );
        yield return new(
            "source/screen",
            inScreen ? FindingStatus.Look : FindingStatus.Holds,
            inScreen
                ? "pump or motor hang in a screen: sand is drawn and the motor is not cooled; hang it in plain casing, or fit a shroud"
                : "pump and motor hang in plain casing",
            well.PumpSettingM + Well.MotorRoomM,
            first.TopM,
            "m",
            "1.5 m for the motor below the intake; judgement, no source"
        );
        yield return DryScreen(first, well.LevelM(largestFlowM3PerH));
    }

    private static Finding DryScreen(ScreenBrief first, double level) =>
        new(
            "source/screen-dry",
            level <= first.TopM ? FindingStatus.Holds : FindingStatus.Look,
            level <= first.TopM
                ? "lowest level while the pump runs stays above the screen"
                : "the level falls below the top of the screen: air gets in, and the screen clogs",
            level,
            first.TopM,
            "m",
            "common practice, no source"
        );

    private static IEnumerable<Finding> Licence(Design design, double? licenceM3PerDay)
    {
        if (licenceM3PerDay is not { } licence)
        {
            yield break;
        }

        var most = Enumerable
            .Range(0, 12)
            .Max(month => design.Year.PumpedM3[month] / Sun.YearCalendar.DaysInMonth[month]);
        yield return Finding.AtMost(
            "source/licence",
            most,
            licence,
            "m3/d",
            "water drawn on the mean day of the month in which most is drawn, against the licence",
            "licence of the brief"
        );
    }

    private static Finding Seal(BoreholeBrief source) =>
        source.SealM is { } sealM
            ? new(
                "source/seal",
                sealM >= LeastSealM ? FindingStatus.Holds : FindingStatus.Look,
                sealM >= LeastSealM
                    ? "grouted seal round the casing"
                    : "the grouted seal is short: dirty water may run down the casing",
                sealM,
                LeastSealM,
                "m",
                "general guide, 3 m at least"
            )
            : new(
                "source/seal",
                FindingStatus.Unchecked,
                "nobody knows whether the casing is grouted: ask the driller; without a seal dirty water runs down the casing",
                null,
                LeastSealM,
                "m",
                "general guide, 3 m at least"
            );
}
