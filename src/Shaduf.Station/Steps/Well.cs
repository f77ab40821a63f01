using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What the borehole gives, and where the pump hangs. Depths are below ground at the wellhead.</summary>
/// <param name="RestDryM">Depth to the water at rest at the end of the dry season [m].</param>
/// <param name="YieldM3PerH">Largest flow that may be drawn [m³/h].</param>
/// <param name="PumpingLevelM">Depth to the water at that flow at the end of the dry season [m].</param>
/// <param name="PumpSettingM">Depth of the pump's intake [m].</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record Well(
    double RestDryM,
    double YieldM3PerH,
    double PumpingLevelM,
    double PumpSettingM,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>Free depth kept below the intake [m]; common practice 3 to 5 m, from memory.</summary>
    public const double SumpM = 3;

    /// <summary>Water kept above the intake when the pump card asks for less [m]; from memory.</summary>
    public const double LeastSubmergenceM = 2;

    private const double MostWellLossShare = 0.5;

    /// <summary>Settles levels, yield and pump setting for the driest month.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <returns>The well.</returns>
    public static Well Of(Brief brief, Survey survey)
    {
        var restDryM = survey.RestLevelM + survey["seasonal-fall"];
        var yieldM3PerH = SustainableYield.FlowM3PerS(survey.TestedYieldM3PerH / 3600, survey["yield-share"]) * 3600;
        var pumpingLevelM = restDryM + survey.Drawdown.DrawdownM(yieldM3PerH / 3600);
        var deepestM = survey.DepthM - SumpM;
        var wishedM = Math.Ceiling(pumpingLevelM + LeastSubmergenceM + 1);
        var settingM = brief.Source.PumpSettingM ?? Math.Max(Math.Min(wishedM, deepestM), 1);
        return new(restDryM, yieldM3PerH, pumpingLevelM, settingM, [.. NotesOf(brief, settingM)]);
    }

    /// <summary>Depth to the water at the end of the dry season [m] at a flow.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="flowM3PerH">Flow [m³/h], 0 to 500.</param>
    /// <returns>Depth [m].</returns>
    public double LevelM(Survey survey, double flowM3PerH) => RestDryM + survey.Drawdown.DrawdownM(flowM3PerH / 3600);

    /// <summary>Findings of the source for the pump chosen.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="pump">The pump.</param>
    /// <param name="largestFlowM3PerH">Largest flow of the year [m³/h].</param>
    /// <param name="leastFlowM3PerH">Least flow of the working range [m³/h].</param>
    /// <returns>The findings.</returns>
    public IEnumerable<Finding> Findings(Survey survey, PumpCard pump, double largestFlowM3PerH, double leastFlowM3PerH)
    {
        var submergenceM = Math.Max(pump.SubmergenceM, LeastSubmergenceM);
        yield return Finding.AtMost(
            "source/yield",
            largestFlowM3PerH,
            YieldM3PerH * (1 + 1e-6),
            "m3/h",
            Invariant(
                $"the largest flow of the year stays within {survey["yield-share"] * 100:0} % of the tested rate"
            ),
            "share of the constant rate for long use: national practice, from memory"
        );
        yield return Finding.AtLeast(
            "source/pump-setting",
            PumpSettingM - LevelM(survey, largestFlowM3PerH),
            submergenceM,
            "m",
            "water above the intake at the largest flow at the end of the dry season",
            "pump card, and at least 2 m (from memory)"
        );
        yield return Finding.AtLeast(
            "source/sump",
            survey.DepthM - PumpSettingM,
            SumpM,
            "m",
            "free depth below the intake for sand and silt",
            "common practice 3 to 5 m, from memory"
        );
        yield return Finding.AtLeast(
            "source/pump-fit",
            survey["casing"] - pump.DiameterMm,
            10,
            "mm",
            "the pump with its cable guard passes the casing",
            "10 to 15 mm for a plumb borehole, from memory"
        );
        yield return Cooling(survey, pump, leastFlowM3PerH);
        if (largestFlowM3PerH / 3600 > survey.Drawdown.LargestFlowM3PerS * (1 + 1e-6))
        {
            yield return new(
                "source/beyond-test",
                FindingStatus.Look,
                "the largest flow of the year lies beyond the largest flow tested: the drawdown there is a guess",
                largestFlowM3PerH,
                survey.Drawdown.LargestFlowM3PerS * 3600,
                "m3/h",
                "step test"
            );
        }

        if (survey.Drawdown.Basis == DrawdownBasis.Steps && largestFlowM3PerH > 0)
        {
            var flow = largestFlowM3PerH / 3600;
            var lostShare = survey.Drawdown.WellS2PerM5 * flow * flow / survey.Drawdown.DrawdownM(flow);
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

    private static Finding Cooling(Survey survey, PumpCard pump, double leastFlowM3PerH)
    {
        var casingM = survey["casing"] / 1000;
        var speed =
            casingM > pump.Motor.DiameterM
                ? MotorCooling.VelocityMPerS(leastFlowM3PerH / 3600, casingM, pump.Motor.DiameterM)
                : 0;
        var holds = speed >= pump.LowestCoolingMPerS;
        return new(
            "source/cooling",
            holds ? FindingStatus.Holds : FindingStatus.Look,
            holds
                ? "water past the motor at the least flow cools it"
                : "too little water passes the motor at the least flow: fit a cooling shroud",
            speed,
            pump.LowestCoolingMPerS,
            "m/s",
            "pump card"
        );
    }

    private static IEnumerable<ChoiceNote> NotesOf(Brief brief, double settingM)
    {
        if (brief.Source.PumpSettingM is null)
        {
            yield return new(
                "depth of the pump's intake",
                Invariant($"{settingM:0.#} m"),
                Invariant(
                    $"the water level at the largest allowed flow in the dry season, {LeastSubmergenceM} m of water and 1 m in hand, and {SumpM} m above the bottom at least"
                )
            );
        }
    }
}
