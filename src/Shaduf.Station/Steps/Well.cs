using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What the borehole gives, and where the pump hangs. Depths are below ground at the wellhead.</summary>
/// <param name="Survey">What is settled of it.</param>
/// <param name="RestDryM">Depth to the water in the morning, at the end of the dry season [m].</param>
/// <param name="SeasonM">Part of it that the station's own pumping of the season takes [m].</param>
/// <param name="YieldM3PerH">Largest flow that may be drawn [m³/h].</param>
/// <param name="PumpingLevelM">Depth to the water at that flow at the end of a pumping day of the dry season [m].</param>
/// <param name="LowestLevelM">Depth below which the water may not fall while the pump runs [m].</param>
/// <param name="PumpSettingM">Depth of the pump's intake [m].</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record Well(
    WellSurvey Survey,
    double RestDryM,
    double SeasonM,
    double YieldM3PerH,
    double PumpingLevelM,
    double LowestLevelM,
    double PumpSettingM,
    IReadOnlyList<ChoiceNote> Notes
) : Source(RestDryM, YieldM3PerH, Notes)
{
    /// <summary>Free depth kept below the intake [m]; common practice 3 to 5 m, from memory.</summary>
    public const double SumpM = 3;

    /// <summary>Water kept above the intake when the pump card asks for less [m]; from memory.</summary>
    public const double LeastSubmergenceM = 2;

    /// <summary>Room for the motor between intake and screen [m]; judgement, no source.</summary>
    public const double MotorRoomM = 1.5;

    // Below it the levels, not the flow, are what must be looked at.
    private const double LeastYieldM3PerH = 0.05;

    // Water in a dry year: lower by as much again as the seasonal fall, by 2 m at least; judgement, no source.
    private const double LeastDryM = 2;

    // Room for a plumb borehole, 10 to 15 mm; from memory.
    internal const double LeastCasingRoomMm = 10;

    /// <inheritdoc/>
    public override string Head => "wellhead";

    /// <inheritdoc/>
    public override double BottomM => Survey.DepthM;

    /// <inheritdoc/>
    public override StepDrawdown Drawdown => Survey.Tested.Day;

    /// <summary>Settles levels, yield and pump setting for the driest month.</summary>
    /// <param name="source">What is settled of the borehole.</param>
    /// <param name="survey">Settled figures.</param>
    /// <param name="demand">The demand, whose season of pumping lowers the level.</param>
    /// <returns>The well.</returns>
    public static Well Of(WellSurvey source, Survey survey, DemandYear demand)
    {
        var brief = source.Brief;
        var seasonM = source.Tested.Line is { } line
            ? DailyPumping.ResidualM(
                line.SlopeSPerM2,
                demand.M3PerDay.Max(),
                TestedWell.PumpingH,
                (int)Math.Round(survey["dry-days"])
            )
            : 0;

        // Deeper than the bottom there is no water: a finding says so.
        var restDryM = Math.Min(
            source.RestLevelM + survey["seasonal-fall"] + seasonM,
            Math.Max(source.DepthM, source.RestLevelM + survey["seasonal-fall"])
        );
        var deepestM = source.DepthM - SumpM;
        var lowestM = LowestLevel(brief, deepestM);
        var (yieldM3PerH, byLevel) = Yield(source.Tested, survey["yield-share"], lowestM - restDryM);
        var pumpingLevelM = restDryM + source.Tested.Day.DrawdownM(yieldM3PerH / 3600);
        var settingM = brief.PumpSettingM ?? Setting(brief, pumpingLevelM, deepestM);
        return new(
            source,
            restDryM,
            seasonM,
            yieldM3PerH,
            pumpingLevelM,
            lowestM,
            settingM,
            [.. NotesOf(brief, settingM, byLevel ? (yieldM3PerH, lowestM) : null)]
        );
    }

    /// <summary>Depth of the probe that stops the pump [m].</summary>
    public double StopProbeM => PumpSettingM - 1;

    /// <summary>Depth of the probe that lets it start again [m]: above the other, and under the water at rest.</summary>
    /// <source>5 m or half the drawdown above the stop, below the rest level of the dry season; judgement, no source</source>
    public double StartProbeM
    {
        get
        {
            var halfM = Drawdown.DrawdownM(YieldM3PerH / 3600) / 2;
            return Math.Min(StopProbeM, Math.Max(StopProbeM - Math.Max(5, halfM), RestDryM + 0.5));
        }
    }

    /// <inheritdoc/>
    public override bool Takes(PumpCard pump) => pump.Body is SubmersibleBody;

    /// <inheritdoc/>
    internal override (string Kind, string Says)? Refuses(PumpCard pump, Survey survey) =>
        survey["casing"] - pump.InWater.DiameterMm >= LeastCasingRoomMm
            ? null
            : (
                "casing",
                Invariant(
                    $"{pump.InWater.DiameterMm:0} mm do not pass the {survey["casing"]:0} mm casing with {LeastCasingRoomMm:0} mm to spare"
                )
            );

    /// <inheritdoc/>
    internal override string? Forbids(Hydraulics hydraulics, double flowM3PerH) => null;

    /// <inheritdoc/>
    internal override BindingLimit? Exhausted(DemandYear demand) =>
        SeasonM > 0 && RestDryM >= BottomM
            ? new(
                "yield",
                Invariant(
                    $"a season of pumping so much drains the source; at its yield of {YieldM3PerH:0.##} m3/h it gives {YieldM3PerH * TestedWell.PumpingH:0} m3 on a day of {TestedWell.PumpingH:0} h"
                ),
                demand.M3PerDay.Max(),
                YieldM3PerH * TestedWell.PumpingH,
                "m3/d"
            )
            : null;

    /// <inheritdoc/>
    internal override IReadOnlyList<SourcePipe> Pipes(
        SizingGround ground,
        PumpCard pump,
        double flowM3PerH,
        double shutOffM
    ) => Riser.For(ground, this, pump, flowM3PerH, shutOffM);

    /// <inheritdoc/>
    internal override MotorNeed NeedOf(PumpCard pump, PumpTable table, Survey survey) =>
        MotorNeed.InWater(pump.Motor, Cooling.Of(survey["casing"], pump, table).NeededM3PerS(survey["casing"], pump));

    /// <inheritdoc/>
    internal override SourceBuild Build(SizingGround ground, Sizing sizing, Electrics electrics) =>
        WellBuild.Of(ground, this, sizing, electrics);

    /// <inheritdoc/>
    internal override DryYear Drier(PumpCard pump, SourcePipe pipe, Survey survey)
    {
        var lowerM = Math.Max(LeastDryM, survey["seasonal-fall"]);
        var dry = this with { RestDryM = RestDryM + lowerM };
        var coverM = Math.Max(pump.InWater.SubmergenceM, LeastSubmergenceM);
        return new(
            Invariant($"water in the ground {lowerM:0.#} m lower than at the end of a common dry season"),
            dry,
            LargestM3PerH(YieldM3PerH, flowM3PerH => dry.LevelM(flowM3PerH) <= PumpSettingM - coverM)
        );
    }

    /// <inheritdoc/>
    internal override IEnumerable<Line> Show(double flowM3PerS) =>
        [
            new(
                "s",
                "B Q + C Q²",
                Invariant(
                    $"B {Drawdown.AquiferSPerM2:0} s/m2, C {Drawdown.WellS2PerM5:0} s2/m5, Q {flowM3PerS * 1000:0.000} L/s"
                ),
                Drawdown.DrawdownM(flowM3PerS),
                "m",
                "water/step-drawdown",
                "Jacob 1947"
            ),
        ];

    // The intake's own water, and the top of the uppermost screen: air in a screen clogs it.
    private static double LowestLevel(BoreholeBrief source, double deepestM)
    {
        var byIntakeM = (source.PumpSettingM ?? deepestM) - LeastSubmergenceM;
        return source.Screens.Count > 0 ? Math.Min(byIntakeM, source.Screens[0].TopM) : byIntakeM;
    }

    private static (double M3PerH, bool ByLevel) Yield(TestedWell tested, double share, double availableM)
    {
        var byShare = SustainableYield.FlowM3PerS(tested.YieldM3PerH / 3600, share) * 3600;
        var byLevel = availableM > 0 ? tested.Day.FlowAtM3PerS(availableM) * 3600 : 0;
        return byLevel >= LeastYieldM3PerH && byLevel < byShare ? (byLevel, true) : (byShare, false);
    }

    // Above the screen when the water stays there, else as deep as the water asks for.
    private static double Setting(BoreholeBrief source, double pumpingLevelM, double deepestM)
    {
        var wishedM = Math.Ceiling(pumpingLevelM + LeastSubmergenceM + 1);
        var aboveScreenM = source.Screens.Count > 0 ? source.Screens[0].TopM - MotorRoomM : double.MaxValue;
        var higherM =
            wishedM > aboveScreenM && aboveScreenM >= pumpingLevelM + LeastSubmergenceM ? aboveScreenM : wishedM;
        return Math.Max(Math.Min(higherM, deepestM), 1);
    }

    private static IEnumerable<ChoiceNote> NotesOf(
        BoreholeBrief source,
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
