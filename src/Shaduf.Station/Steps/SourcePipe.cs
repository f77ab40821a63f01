using Shaduf.Water;
using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>The pipe that joins the water to the main.</summary>
/// <param name="Card">The pipe.</param>
/// <param name="LengthM">Its length [m].</param>
public abstract record SourcePipe(PipeCard Card, double LengthM)
{
    /// <summary>What it is, in words.</summary>
    public abstract string Name { get; }

    /// <summary>Its run of pipe, fittings counted.</summary>
    public abstract PipeRun Run { get; }

    /// <summary>Cable along it to the motor, and where that lies.</summary>
    public abstract (double LengthM, string Where) Cable { get; }

    /// <summary>Findings of the pipe.</summary>
    /// <param name="flowM3PerH">Largest flow of the year [m³/h].</param>
    /// <param name="shutOffBar">Pressure of the pump against a shut valve [bar].</param>
    /// <param name="pipeDegC">Temperature for the strength of the pipe [°C].</param>
    /// <returns>The findings.</returns>
    public abstract IEnumerable<Finding> Findings(double flowM3PerH, double shutOffBar, double pipeDegC);

    /// <summary>Whether the pipe bears the pump's pressure against a shut valve.</summary>
    /// <param name="id">Name of the finding.</param>
    /// <param name="shutOffBar">That pressure [bar].</param>
    /// <param name="pipeDegC">Temperature for the strength of the pipe [°C].</param>
    /// <returns>The finding.</returns>
    private protected Finding Pressure(string id, double shutOffBar, double pipeDegC) =>
        Finding.AtMost(
            id,
            shutOffBar,
            Lift.AllowedBar(Card, pipeDegC),
            "bar",
            $"the {Name} against the pump's head at a closed valve",
            "pump card and pipe card"
        );
}

/// <summary>A pipe that hangs in a borehole and carries the pump.</summary>
/// <param name="Card">The pipe.</param>
/// <param name="LengthM">Its length [m].</param>
public sealed record Riser(PipeCard Card, double LengthM) : SourcePipe(Card, LengthM)
{
    /// <summary>Fastest water accepted in a riser [m/s].</summary>
    public const double FastestMPerS = 2.0;

    /// <inheritdoc/>
    public override string Name => "riser";

    /// <inheritdoc/>
    public override PipeRun Run => new(Card.BoreMm / 1000, Card.RoughnessMm / 1000, LengthM, 0);

    /// <inheritdoc/>
    public override (double LengthM, string Where) Cable => (LengthM, "in the well");

    /// <inheritdoc/>
    public override IEnumerable<Finding> Findings(double flowM3PerH, double shutOffBar, double pipeDegC) =>
        [
            Finding.AtMost(
                "lift/riser-speed",
                Lift.SpeedMPerS(Card, flowM3PerH),
                FastestMPerS,
                "m/s",
                "water in the riser at the largest flow",
                "common practice, no source"
            ),
            Pressure("lift/riser-pressure", shutOffBar, pipeDegC),
        ];

    /// <summary>The two narrowest risers that carry the flow, the pump's closed-valve head and what hangs on them; the widest when none does.</summary>
    internal static IReadOnlyList<SourcePipe> For(
        SizingGround ground,
        Well well,
        PumpCard pump,
        double flowM3PerH,
        double shutOffM
    )
    {
        if (ground.Brief.Lift.Riser is { } name)
        {
            return [new Riser(ground.Shelf.Find<PipeCard>(name)!, well.PumpSettingM)];
        }

        var pressureBar = PressureClass.PressureBar(shutOffM, 1000);
        var degC = ground.Survey["pipe-temperature"];
        var all = Station.Pipes.Cards(ground, PipeUse.Riser).OrderBy(pipe => pipe.BoreMm).ToList();
        var fit = all.Where(pipe =>
                Lift.SpeedMPerS(pipe, flowM3PerH) <= FastestMPerS
                && Lift.AllowedBar(pipe, degC) >= pressureBar
                && WellBuild.Carries(pipe, pump.MassKg, ground, well)
            )
            .Take(2)
            .ToList();
        var chosen =
            fit.Count > 0
                ? fit
                :
                [
                    all.OrderByDescending(pipe => Lift.AllowedBar(pipe, degC) >= pressureBar)
                        .ThenByDescending(pipe => pipe.BoreMm)
                        .First(),
                ];
        return [.. chosen.Select(pipe => new Riser(pipe, well.PumpSettingM))];
    }
}

/// <summary>A pipe that a surface pump draws through; from a raft the hose to the bank is of the same pipe.</summary>
/// <param name="Card">The pipe.</param>
/// <param name="SuctionM">From the strainer to the pump [m].</param>
/// <param name="HoseM">From a raft to the bank [m]; 0 on the bank.</param>
/// <param name="FittingsCoefficient">Loss coefficient of foot valve, strainer and bends, on the velocity head.</param>
public sealed record Suction(PipeCard Card, double SuctionM, double HoseM, double FittingsCoefficient)
    : SourcePipe(Card, SuctionM + HoseM)
{
    /// <summary>Fastest water accepted in a suction pipe [m/s].</summary>
    public const double FastestMPerS = 1.0;

    /// <inheritdoc/>
    public override string Name => HoseM > 0 ? "suction pipe and hose" : "suction pipe";

    /// <inheritdoc/>
    public override PipeRun Run => Of(LengthM);

    /// <inheritdoc/>
    public override (double LengthM, string Where) Cable => (HoseM, "along the hose to the raft");

    /// <summary>Head lost between strainer and pump [m].</summary>
    /// <param name="flowM3PerH">Flow [m³/h].</param>
    /// <param name="water">State of the water.</param>
    /// <returns>Head [m].</returns>
    public double LossM(double flowM3PerH, WaterState water) =>
        DarcyWeisbach.Loss(Of(SuctionM), flowM3PerH / 3600, water.KinematicViscosityM2PerS).TotalM;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Findings(double flowM3PerH, double shutOffBar, double pipeDegC)
    {
        var speedMPerS = Lift.SpeedMPerS(Card, flowM3PerH);
        yield return new(
            "lift/suction-speed",
            speedMPerS <= FastestMPerS ? FindingStatus.Holds : FindingStatus.Look,
            "water in the suction pipe at the largest flow; what it costs in suction head is told by source/npsh",
            speedMPerS,
            FastestMPerS,
            "m/s",
            "common practice, no source"
        );
        if (HoseM > 0)
        {
            yield return Pressure("lift/hose-pressure", shutOffBar, pipeDegC);
        }
    }

    private PipeRun Of(double lengthM) =>
        new(Card.BoreMm / 1000, Card.RoughnessMm / 1000, lengthM, FittingsCoefficient);
}
