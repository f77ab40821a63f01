using Shaduf.Money;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What is built beside open water: strainer, suction pipe, pump on its plinth or raft.</summary>
/// <param name="Intake">The water and the pump's place.</param>
/// <param name="Pipe">The suction pipe.</param>
/// <param name="FlowM3PerH">Largest flow of the year [m³/h].</param>
/// <param name="Worst">The month in which the pump has least suction head to spare.</param>
/// <param name="LeastCoverM">Water that must stand over the strainer [m].</param>
/// <param name="Plinth">Concrete under the pump on the bank.</param>
public sealed record IntakeBuild(
    Intake Intake,
    Suction Pipe,
    double FlowM3PerH,
    SuctionMonth Worst,
    double LeastCoverM,
    ApronBuild Plinth
) : SourceBuild
{
    /// <summary>Works out what is built.</summary>
    /// <param name="intake">The water and the pump's place.</param>
    /// <param name="sizing">The choice.</param>
    /// <returns>What is built.</returns>
    public static IntakeBuild Of(Intake intake, Sizing sizing)
    {
        var (pipe, flowM3PerH) = ((Suction)sizing.Choice.Lift.Foot, sizing.Table.FullFlowM3PerH);
        return new(
            intake,
            pipe,
            flowM3PerH,
            intake.Worst(sizing.Choice.Pump, pipe, flowM3PerH),
            StrainerCover.LeastM(flowM3PerH / 3600, pipe.Card.OuterMm / 1000),
            ApronBuild.Plinth
        );
    }

    /// <summary>Level at which the float switch stops the pump, above sea [m].</summary>
    public double StopM => Intake.StrainerM + LeastCoverM;

    /// <summary>Suction head month by month at the largest flow.</summary>
    /// <param name="pump">The pump.</param>
    /// <returns>January first.</returns>
    public IReadOnlyList<SuctionMonth> Months(PumpCard pump) =>
        [.. Enumerable.Range(0, 12).Select(month => Intake.At(pump, Pipe, month, FlowM3PerH))];

    /// <inheritdoc/>
    public override IEnumerable<Finding> Findings(Design design) => IntakeFindings.Of(design, this);

    /// <inheritdoc/>
    public override string SettingLabour => "intake";

    /// <inheritdoc/>
    public override IEnumerable<QuantityLine> Lines(Choice choice) => IntakeTakeoff.Of(choice, this);

    /// <inheritdoc/>
    public override IEnumerable<WorkingSheet> Show(Choice choice)
    {
        const string method = "water/suction-head";
        var water = WaterState.At(Worst.WaterDegC);
        var levelM = Intake.Survey.LevelM(Worst.Month);
        double HeadM(double pressurePa) => pressurePa / (water.DensityKgPerM3 * Gravity.MPerS2);
        yield return new(
            Invariant($"Suction head of the pump at {FlowM3PerH:0.00} m3/h in {YearCalendarNames.Months[Worst.Month]}"),
            [
                new(
                    "H_air",
                    "p_air / (rho g)",
                    Invariant($"water at {levelM:0.#} m above sea"),
                    HeadM(AirMoisture.PressureKPa(levelM) * 1000),
                    "m",
                    method,
                    "FAO-56 eq. 7"
                ),
                new(
                    "H_v",
                    "p_v / (rho g)",
                    Invariant($"water of {Worst.WaterDegC:0.#} degC"),
                    HeadM(water.VapourPressurePa),
                    "m",
                    "water/water-state",
                    ""
                ),
                new("z_s", "pump - water", "", Worst.LiftM, "m", "station/intake", "survey"),
                new(
                    "h_f",
                    "f (L/D) v²/(2g) + K v²/(2g)",
                    Invariant(
                        $"{Pipe.Card.Name}: L {Pipe.SuctionM:0.#} m, D {Pipe.Card.BoreMm:0.#} mm, K {Pipe.FittingsCoefficient:0.00}"
                    ),
                    Worst.LossM,
                    "m",
                    "water/darcy-weisbach",
                    "Darcy-Weisbach with Colebrook-White"
                ),
                new("NPSH_a", "H_air - H_v - z_s - h_f", "", Worst.AvailableM, "m", method, "Crane TP-410"),
                new(
                    "NPSH_r",
                    "points of the data sheet",
                    choice.Pump.Name,
                    choice.Pump.BesideWater.Npsh.RequiredM(FlowM3PerH / 3600),
                    "m",
                    "water/npsh-curve",
                    "pump card"
                ),
                new(
                    "needed",
                    "the larger of NPSH_r + 0.5 and 1.3 NPSH_r",
                    "",
                    Worst.NeededM,
                    "m",
                    method,
                    "common practice, no source"
                ),
            ]
        );
    }
}
