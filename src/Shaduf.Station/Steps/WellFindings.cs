using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of the source.</summary>
internal static class WellFindings
{
    // Judgement, no source: beyond it the borehole, not the aquifer, holds the water back.
    private const double MostWellLossShare = 0.5;

    // Room for a plumb borehole, 10 to 15 mm; from memory.
    internal const double LeastCasingRoomMm = 10;

    /// <summary>Findings of the source for the pump chosen.</summary>
    /// <param name="well">The well.</param>
    /// <param name="survey">Settled figures.</param>
    /// <param name="pump">The pump.</param>
    /// <param name="largestFlowM3PerH">Largest flow of the year [m³/h].</param>
    /// <param name="cooling">Cooling of the motor.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(
        Well well,
        Survey survey,
        PumpCard pump,
        double largestFlowM3PerH,
        Cooling cooling
    ) =>
        [
            Finding.AtMost(
                "source/yield",
                largestFlowM3PerH,
                well.YieldM3PerH * (1 + 1e-6),
                "m3/h",
                Invariant(
                    $"the largest flow of the year stays within {survey["yield-share"] * 100:0} % of the tested rate"
                ),
                "share of the constant rate for long use: national practice, from memory"
            ),
            .. Depths(well, survey, pump, largestFlowM3PerH),
            cooling.Finding(),
            .. StepTest(survey, largestFlowM3PerH),
        ];

    private static IEnumerable<Finding> Depths(Well well, Survey survey, PumpCard pump, double largestFlowM3PerH)
    {
        yield return Finding.AtLeast(
            "source/pump-setting",
            well.PumpSettingM - well.LevelM(survey, largestFlowM3PerH),
            Math.Max(pump.SubmergenceM, Well.LeastSubmergenceM),
            "m",
            "water above the intake at the largest flow at the end of the dry season",
            "pump card, and at least 2 m (from memory)"
        );
        yield return Finding.AtLeast(
            "source/sump",
            survey.DepthM - well.PumpSettingM,
            Well.SumpM,
            "m",
            "free depth below the intake for sand and silt",
            "common practice 3 to 5 m, from memory"
        );
        yield return Finding.AtLeast(
            "source/pump-fit",
            survey["casing"] - pump.DiameterMm,
            LeastCasingRoomMm,
            "mm",
            "the pump with its cable guard passes the casing",
            "10 to 15 mm for a plumb borehole, from memory"
        );
    }

    private static IEnumerable<Finding> StepTest(Survey survey, double largestFlowM3PerH)
    {
        var (flow, drawdown) = (largestFlowM3PerH / 3600, survey.Drawdown);
        if (flow > drawdown.LargestFlowM3PerS * (1 + 1e-6))
        {
            yield return new(
                "source/beyond-test",
                FindingStatus.Look,
                "the largest flow of the year lies beyond the largest flow tested: the drawdown there is a guess",
                largestFlowM3PerH,
                drawdown.LargestFlowM3PerS * 3600,
                "m3/h",
                "step test"
            );
        }

        if (drawdown.Basis == DrawdownBasis.RegressionRefused)
        {
            yield return new(
                "source/step-test",
                FindingStatus.Look,
                "the steps do not follow aquifer and well loss together (the borehole may still have been clearing): the largest drawdown per flow is taken for all flows",
                null,
                null,
                "",
                "Jacob 1947, Hantush-Bierschenk"
            );
        }

        if (drawdown.Basis == DrawdownBasis.Steps && flow > 0)
        {
            var lostShare = drawdown.WellS2PerM5 * flow * flow / drawdown.DrawdownM(flow);
            yield return new(
                "source/well-loss",
                lostShare <= MostWellLossShare ? FindingStatus.Holds : FindingStatus.Look,
                lostShare <= MostWellLossShare
                    ? "share of the drawdown that is lost in screen and casing at the largest flow"
                    : "most of the drawdown is lost in screen and casing: have the borehole cleaned or ask the driller",
                lostShare * 100,
                MostWellLossShare * 100,
                "%",
                "C Q2 / (B Q + C Q2), Jacob 1947; the limit is judgement, no source (Walton's classes are for wells of high yield)"
            );
        }
    }
}
