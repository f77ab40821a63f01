using Shaduf.Water;
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
