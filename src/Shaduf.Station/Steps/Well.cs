using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What the borehole gives, and where the pump hangs. Depths are below ground at the wellhead.</summary>
/// <param name="RestDryM">Depth to the water in the morning, at the end of the dry season [m].</param>
/// <param name="SeasonM">Part of it that the station's own pumping of the season takes [m].</param>
/// <param name="YieldM3PerH">Largest flow that may be drawn [m³/h].</param>
/// <param name="PumpingLevelM">Depth to the water at that flow at the end of a pumping day of the dry season [m].</param>
/// <param name="LowestLevelM">Depth below which the water may not fall while the pump runs [m].</param>
/// <param name="PumpSettingM">Depth of the pump's intake [m].</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record Well(
    double RestDryM,
    double SeasonM,
    double YieldM3PerH,
    double PumpingLevelM,
    double LowestLevelM,
    double PumpSettingM,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>Free depth kept below the intake [m]; common practice 3 to 5 m, from memory.</summary>
    public const double SumpM = 3;

    /// <summary>Water kept above the intake when the pump card asks for less [m]; from memory.</summary>
    public const double LeastSubmergenceM = 2;

    /// <summary>Room for the motor between intake and screen [m]; judgement, no source.</summary>
    public const double MotorRoomM = 1.5;

    // Below it the levels, not the flow, are what must be looked at.
    private const double LeastYieldM3PerH = 0.05;

    /// <summary>Settles levels, yield and pump setting for the driest month.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="demand">The demand, whose season of pumping lowers the level.</param>
    /// <returns>The well.</returns>
    public static Well Of(Brief brief, Survey survey, DemandYear demand)
    {
        var seasonM = survey.Tested.Line is { } line
            ? DailyPumping.ResidualM(
                line.SlopeSPerM2,
                demand.M3PerDay.Max(),
                TestedWell.PumpingH,
                (int)Math.Round(survey["dry-days"])
            )
            : 0;

        // Deeper than the bottom there is no water: a finding says so.
        var restDryM = Math.Min(
            survey.RestLevelM + survey["seasonal-fall"] + seasonM,
            Math.Max(survey.DepthM, survey.RestLevelM + survey["seasonal-fall"])
        );
        var deepestM = survey.DepthM - SumpM;
        var lowestM = LowestLevel(brief.Source, deepestM);
        var (yieldM3PerH, byLevel) = Yield(survey, lowestM - restDryM);
        var pumpingLevelM = restDryM + survey.Drawdown.DrawdownM(yieldM3PerH / 3600);
        var settingM = brief.Source.PumpSettingM ?? Setting(brief.Source, pumpingLevelM, deepestM);
        return new(
            restDryM,
            seasonM,
            yieldM3PerH,
            pumpingLevelM,
            lowestM,
            settingM,
            [.. NotesOf(brief.Source, settingM, byLevel ? (yieldM3PerH, lowestM) : null)]
        );
    }

    /// <summary>Depth to the water at the end of a pumping day of the dry season [m] at a flow.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="flowM3PerH">Flow [m³/h], 0 to 500.</param>
    /// <returns>Depth [m].</returns>
    public double LevelM(Survey survey, double flowM3PerH) => RestDryM + survey.Drawdown.DrawdownM(flowM3PerH / 3600);

    /// <summary>Depth of the probe that stops the pump [m].</summary>
    public double StopProbeM => PumpSettingM - 1;

    /// <summary>Depth of the probe that lets it start again [m]: above the other, and under the water at rest.</summary>
    /// <param name="survey">The survey.</param>
    /// <returns>Depth [m].</returns>
    /// <source>5 m or half the drawdown above the stop, below the rest level of the dry season; judgement, no source</source>
    public double StartProbeM(Survey survey)
    {
        var halfM = survey.Drawdown.DrawdownM(YieldM3PerH / 3600) / 2;
        return Math.Min(StopProbeM, Math.Max(StopProbeM - Math.Max(5, halfM), RestDryM + 0.5));
    }

    // The intake's own water, and the top of the uppermost screen: air in a screen clogs it.
    private static double LowestLevel(SourceBrief source, double deepestM)
    {
        var byIntakeM = (source.PumpSettingM ?? deepestM) - LeastSubmergenceM;
        return source.Screens.Count > 0 ? Math.Min(byIntakeM, source.Screens[0].TopM) : byIntakeM;
    }

    private static (double M3PerH, bool ByLevel) Yield(Survey survey, double availableM)
    {
        var byShare = SustainableYield.FlowM3PerS(survey.TestedYieldM3PerH / 3600, survey["yield-share"]) * 3600;
        var byLevel = availableM > 0 ? survey.Drawdown.FlowAtM3PerS(availableM) * 3600 : 0;
        return byLevel >= LeastYieldM3PerH && byLevel < byShare ? (byLevel, true) : (byShare, false);
    }

    // Above the screen when the water stays there, else as deep as the water asks for.
    private static double Setting(SourceBrief source, double pumpingLevelM, double deepestM)
    {
        var wishedM = Math.Ceiling(pumpingLevelM + LeastSubmergenceM + 1);
        var aboveScreenM = source.Screens.Count > 0 ? source.Screens[0].TopM - MotorRoomM : double.MaxValue;
        var higherM =
            wishedM > aboveScreenM && aboveScreenM >= pumpingLevelM + LeastSubmergenceM ? aboveScreenM : wishedM;
        return Math.Max(Math.Min(higherM, deepestM), 1);
    }

    private static IEnumerable<ChoiceNote> NotesOf(
        SourceBrief source,
        double settingM,
        (double M3PerH, double LevelM)? byLevel
    )
    {
        if (source.PumpSettingM is null)
        {
            yield return new(
                "depth of the pump's intake",
                Invariant($"{settingM:0.#} m"),
                Invariant(
                    $"the water level at the largest allowed flow in the dry season, {LeastSubmergenceM} m of water and 1 m in hand, above the screen where the water stays there, and {SumpM} m above the bottom at least"
                )
            );
        }

        if (byLevel is { } limit)
        {
            yield return new(
                "largest flow that may be drawn",
                Invariant($"{limit.M3PerH:0.00} m3/h"),
                Invariant(
                    $"the share of the tested rate would draw the level below {limit.LevelM:0.0} m, where the pump's water or the screen ends: the level binds"
                )
            );
        }
    }
}
