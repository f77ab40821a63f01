using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>The parts of a total dynamic head.</summary>
/// <param name="FlowM3PerS">Flow [m3/s].</param>
/// <param name="StaticHeadM">Lift from the resting level to the outlet [m].</param>
/// <param name="DrawdownM">Fall of the pumped level [m].</param>
/// <param name="Runs">Loss in each run of pipe, in order.</param>
/// <param name="OutletHeadM">Head asked for at the outlet [m].</param>
public sealed record LiftHead(
    double FlowM3PerS,
    double StaticHeadM,
    double DrawdownM,
    IReadOnlyList<PipeLoss> Runs,
    double OutletHeadM
)
{
    /// <summary>Head lost in the pipes [m].</summary>
    public double PipesM => Runs.Sum(run => run.TotalM);

    /// <summary>Total dynamic head [m].</summary>
    public double TotalM => StaticHeadM + DrawdownM + PipesM + OutletHeadM;
}

/// <summary>All that a pump must lift against.</summary>
/// <param name="StaticHeadM">From the resting water level up to the outlet [m], 0 to 1000.</param>
/// <param name="Well">The well's drawdown; null for open water.</param>
/// <param name="Runs">Runs of pipe one after the other.</param>
/// <param name="OutletHeadM">Head asked for at the outlet [m], 0 to 500.</param>
/// <param name="KinematicViscosityM2PerS">Kinematic viscosity of the water [m2/s].</param>
public sealed record LiftSystem(
    double StaticHeadM,
    StepDrawdown? Well,
    IReadOnlyList<PipeRun> Runs,
    double OutletHeadM,
    double KinematicViscosityM2PerS
)
{
    /// <summary>Density of the water [kg/m3]; 1000, the heaviest that fresh water gets, unless stated.</summary>
    public double DensityKgPerM3 { get; init; } = 1000;

    /// <summary>Total dynamic head at a flow.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <returns>Head [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The flow or a part of the system is outside its range, or NaN.</exception>
    /// <source>static lift + drawdown + pipe losses + outlet head; Bernoulli with losses</source>
    public double HeadM(double flowM3PerS)
    {
        Within.Require(StaticHeadM, 0, 1000, "m");
        Within.Require(OutletHeadM, 0, 500, "m");
        var headM = StaticHeadM + OutletHeadM + (Well?.DrawdownM(flowM3PerS) ?? 0);
        foreach (var run in Runs)
        {
            headM += DarcyWeisbach.Loss(run, flowM3PerS, KinematicViscosityM2PerS).TotalM;
        }

        return headM;
    }

    /// <summary>The same head, part by part.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <returns>The parts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The flow or a part of the system is outside its range, or NaN.</exception>
    /// <source>static lift + drawdown + pipe losses + outlet head; Bernoulli with losses</source>
    public LiftHead Breakdown(double flowM3PerS)
    {
        Within.Require(StaticHeadM, 0, 1000, "m");
        Within.Require(OutletHeadM, 0, 500, "m");
        return new(
            flowM3PerS,
            StaticHeadM,
            Well?.DrawdownM(flowM3PerS) ?? 0,
            [.. Runs.Select(run => DarcyWeisbach.Loss(run, flowM3PerS, KinematicViscosityM2PerS))],
            OutletHeadM
        );
    }
}
