using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Suction head at a surface pump's inlet in one month.</summary>
/// <param name="Month">Month, 0 to 11.</param>
/// <param name="LiftM">Height of the pump over the water [m].</param>
/// <param name="LossM">Head lost in the suction pipe [m].</param>
/// <param name="WaterDegC">Water [°C].</param>
/// <param name="AvailableM">Net positive suction head that the place offers [m].</param>
/// <param name="NeededM">What must be there [m].</param>
public sealed record SuctionMonth(
    int Month,
    double LiftM,
    double LossM,
    double WaterDegC,
    double AvailableM,
    double NeededM
)
{
    /// <summary>What there is over what must be there [m]; below 0 the pump cavitates.</summary>
    public double SpareM => AvailableM - NeededM;
}

/// <summary>Open water, with a surface pump on the bank or on a raft.</summary>
/// <param name="Survey">What is settled of it.</param>
/// <param name="StrainerM">Level of the strainer, above sea; on a raft at the lowest water [m].</param>
/// <param name="RestDryM">Depth to the lowest water below the ground where the main begins [m].</param>
/// <param name="YieldM3PerH">Largest flow that may be taken in any month [m³/h].</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record Intake(
    IntakeSurvey Survey,
    double StrainerM,
    double RestDryM,
    double YieldM3PerH,
    IReadOnlyList<ChoiceNote> Notes
) : Source(RestDryM, YieldM3PerH, Notes)
{
    /// <summary>Strainer over the bottom, so that it draws no mud [m]; common practice, no source.</summary>
    public const double OverBedM = 0.3;

    // No deeper than this under the lowest water: a strainer is cleaned by hand. Judgement, no source.
    private const double DeepestM = 1.0;

    // Air lifts water 10.3 m at the sea.
    private const double MostTellingM = 50;

    // Water in a dry year: lower by as much again as the dry season takes, by half a metre at least; judgement, no source.
    private const double LeastDryM = 0.5;

    /// <summary>Fittings of a suction pipe when the brief lists none; common practice, no source.</summary>
    internal static IReadOnlyList<FittingBrief> UsualFittings { get; } =
    [new("foot valve hinged", 1), new("elbow 90", 1)];

    /// <inheritdoc/>
    public override string Head => "pump's place";

    /// <inheritdoc/>
    public override double BottomM => Survey.GroundM - Survey.BedM;

    /// <inheritdoc/>
    public override StepDrawdown? Drawdown => null;

    /// <inheritdoc/>
    public override SourceLimits Limits => Survey.Limits;

    /// <summary>Settles where strainer and pump stand.</summary>
    /// <param name="survey">What is settled of the water.</param>
    /// <returns>The intake.</returns>
    public static Intake Of(IntakeSurvey survey)
    {
        var strainerM = Math.Max(survey.BedM + OverBedM, survey.LowestM - DeepestM);
        return new(
            survey,
            strainerM,
            survey.GroundM - survey.LowestM,
            survey.Limits.HourM3.Max(),
            [.. NotesOf(survey, strainerM)]
        );
    }

    /// <summary>The suction head in a month for a pump and its pipe.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="pipe">Its suction pipe.</param>
    /// <param name="month">Month, 0 to 11.</param>
    /// <param name="flowM3PerH">Flow [m³/h].</param>
    /// <returns>What there is and what must be there.</returns>
    public SuctionMonth At(PumpCard pump, Suction pipe, int month, double flowM3PerH)
    {
        var (liftM, degC) = (Survey.LiftM(month), Survey.WaterDegC(month));

        // What lies beyond these is far beyond what any pump draws: it cavitates all the same.
        var lossM = Math.Min(MostTellingM, pipe.LossM(flowM3PerH, WaterState.At(degC)));
        var requiredM = Math.Min(MostTellingM, pump.BesideWater.Npsh.RequiredM(flowM3PerH / 3600));
        return new(
            month,
            liftM,
            lossM,
            degC,
            SuctionHead.AvailableM(Survey.LevelM(month), degC, liftM, lossM),
            SuctionHead.NeededM(requiredM)
        );
    }

    /// <summary>The month in which the pump has least to spare.</summary>
    /// <param name="pump">The pump.</param>
    /// <param name="pipe">Its suction pipe.</param>
    /// <param name="flowM3PerH">Flow [m³/h].</param>
    /// <returns>The month.</returns>
    public SuctionMonth Worst(PumpCard pump, Suction pipe, double flowM3PerH) =>
        Enumerable.Range(0, 12).Select(month => At(pump, pipe, month, flowM3PerH)).MinBy(each => each.SpareM)!;

    /// <summary>Water over the strainer when the water is lowest [m].</summary>
    public double CoverM => Survey.LowestM - Survey.DrierM - StrainerM;

    /// <inheritdoc/>
    public override bool Takes(PumpCard pump) => pump.Body is SurfaceBody;

    /// <inheritdoc/>
    internal override (string Kind, string Says)? Refuses(PumpCard pump, Survey survey) => null;

    /// <inheritdoc/>
    internal override string? Forbids(Hydraulics hydraulics, double flowM3PerH)
    {
        var worst = Worst(hydraulics.Pump, (Suction)hydraulics.Lift.Foot, flowM3PerH);
        return worst.SpareM >= 0
            ? null
            : Invariant(
                $"it cavitates at {flowM3PerH:0.0} m3/h: the place offers {worst.AvailableM:0.0} m of suction head in {YearCalendarNames.Months[worst.Month]} and it needs {worst.NeededM:0.0} m, so it would have to stand {-worst.SpareM:0.0} m lower"
            );
    }

    /// <inheritdoc/>
    internal override BindingLimit? Exhausted(DemandYear demand)
    {
        var month = Enumerable.Range(0, 12).MaxBy(each => demand.M3PerDay[each] - Limits.DayM3[each]);
        var (askedM3, mayM3) = (demand.M3PerDay[month], Limits.DayM3[month]);
        return askedM3 > mayM3
            ? new(
                "licence",
                Invariant(
                    $"no more than {mayM3:0.#} m3 a day may be taken in {YearCalendarNames.Months[month]}, and {askedM3:0.#} m3 are asked for"
                ),
                askedM3,
                mayM3,
                "m3/d"
            )
            : null;
    }

    /// <inheritdoc/>
    internal override IReadOnlyList<SourcePipe> Pipes(
        SizingGround ground,
        PumpCard pump,
        double flowM3PerH,
        double shutOffM
    )
    {
        var suction = Survey.Brief.Suction;
        if (suction.Pipe is { } name)
        {
            return [PipeOf(ground.Shelf.Find<PipeCard>(name)!)];
        }

        var all = Station.Pipes.Cards(ground, PipeUse.Suction).OrderBy(pipe => pipe.BoreMm).ToList();
        var mostM3PerH = Math.Min(pump.Curve.LargestFlowM3PerS * 3600, YieldM3PerH);
        var fit = all.Where(pipe => Lift.SpeedMPerS(pipe, mostM3PerH) <= Suction.FastestMPerS).Take(2).ToList();
        return [.. (fit.Count > 0 ? fit : [all[^1]]).Select(PipeOf)];
    }

    /// <inheritdoc/>
    internal override MotorNeed NeedOf(PumpCard pump, PumpTable table, Survey survey) => MotorNeed.InAir(pump.Motor);

    /// <inheritdoc/>
    internal override SourceBuild Build(SizingGround ground, Sizing sizing, Electrics electrics) =>
        IntakeBuild.Of(this, sizing);

    /// <inheritdoc/>
    internal override DryYear Drier(PumpCard pump, SourcePipe pipe, Survey survey)
    {
        var lowerM = Math.Max(LeastDryM, Survey.Brief.NormalM - Survey.LowestM);
        var dry = this with { RestDryM = RestDryM + lowerM, Survey = Survey with { DrierM = lowerM } };
        var suction = (Suction)pipe;
        bool Draws(double flowM3PerH) =>
            dry.Worst(pump, suction, flowM3PerH).SpareM >= 0
            && dry.CoverM >= StrainerCover.LeastM(flowM3PerH / 3600, suction.Card.OuterMm / 1000);

        return new(
            Invariant($"the {Survey.Brief.Name} {lowerM:0.#} m lower than at the end of a common dry season"),
            dry,
            LargestM3PerH(Math.Min(YieldM3PerH, pump.Curve.LargestFlowM3PerS * 3600), Draws)
        );
    }

    /// <inheritdoc/>
    internal override IEnumerable<Line> Show(double flowM3PerS) => [];

    private Suction PipeOf(PipeCard card)
    {
        var given = Survey.Brief.Suction.Fittings;
        return new(
            card,
            Survey.SuctionM,
            Survey.HoseM,
            (given.Count > 0 ? given : UsualFittings).Sum(fitting =>
                fitting.Count * FittingLoss.Coefficient(fitting.Kind, card.BoreMm / 1000)
            )
        );
    }

    private static IEnumerable<ChoiceNote> NotesOf(IntakeSurvey survey, double strainerM)
    {
        if (survey.Brief.Stand is null)
        {
            yield return new(
                "where the pump stands",
                survey.Stand == PumpStand.Bank ? "on the bank" : "on a raft",
                Invariant(
                    $"on the bank where it stands {IntakeSurvey.OverFloodM} m over the highest flood and no more than {IntakeSurvey.HighestLiftM(survey.LowestM):0.0} m over the lowest water, else on a raft"
                )
            );
        }

        if (survey is { Stand: PumpStand.Bank, Brief.PumpM: null })
        {
            yield return new(
                "level of the pump's shaft",
                Invariant($"{survey.PumpM:0.00} m"),
                Invariant($"{IntakeSurvey.OverFloodM} m over the highest flood where a plinth of 1 m reaches that")
            );
        }

        yield return new(
            "level of the strainer",
            Invariant($"{strainerM:0.00} m"),
            Invariant($"{OverBedM} m over the bottom, {DeepestM} m under the lowest water at most")
        );
    }
}
