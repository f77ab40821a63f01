using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Where a pump at one speed and the system it lifts against agree.</summary>
/// <param name="SpeedRatio">Speed over the curve's own.</param>
/// <param name="FlowM3PerS">Flow [m3/s]; 0 when the head at no flow does not exceed the static head.</param>
/// <param name="HeadM">Total dynamic head of the system at this flow [m].</param>
/// <param name="ResidualM">Head of the pump less that of the system [m]; with no flow, how much the pump falls short.</param>
/// <param name="Rounds">Rounds of the search.</param>
/// <param name="BeyondCurve">Whether the flow lies beyond the end of the maker's curve.</param>
public sealed record OperatingPoint(
    double SpeedRatio,
    double FlowM3PerS,
    double HeadM,
    double ResidualM,
    int Rounds,
    bool BeyondCurve
)
{
    private const double HeadToleranceM = 1e-9;

    /// <summary>Finds the flow at which pump and system have the same head.</summary>
    /// <param name="curve">The pump.</param>
    /// <param name="lift">The system.</param>
    /// <param name="speedRatio">Speed over the curve's own, 0.1 to 1.5.</param>
    /// <returns>The point, its heads within 1e-9 m of each other when there is flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The speed or a part of the system is outside its range, or NaN.</exception>
    /// <exception cref="ArithmeticException">The search did not settle.</exception>
    /// <source>crossing of pump and system curve; regula falsi in the Illinois form, Dowell and Jarratt 1971</source>
    public static OperatingPoint Solve(IPumpCurve curve, LiftSystem lift, double speedRatio)
    {
        double SurplusM(double flowM3PerS) => curve.HeadM(flowM3PerS, speedRatio) - lift.HeadM(flowM3PerS);

        var atRestM = SurplusM(0);
        if (atRestM <= HeadToleranceM)
        {
            return new(speedRatio, 0, lift.HeadM(0), atRestM, 0, false);
        }

        var crossing = Crossing.Of(SurplusM, (0, atRestM), curve.NoHeadFlowM3PerS * speedRatio, HeadToleranceM);
        return new(
            speedRatio,
            crossing.X,
            lift.HeadM(crossing.X),
            crossing.Residual,
            crossing.Rounds,
            curve.IsBeyond(crossing.X, lift.HeadM(crossing.X), speedRatio)
        );
    }

    /// <summary>Speed at which the pump just holds the static head; water comes only above it.</summary>
    /// <param name="curve">The pump.</param>
    /// <param name="lift">The system.</param>
    /// <returns>Speed over the curve's own; may lie above what pump or drive can do.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A part of the system is outside its range, or NaN.</exception>
    /// <source>r_min = sqrt(H_static/H0), affinity law of the head at no flow; k H_static/Q0 for a helical rotor</source>
    public static double LeastSpeedRatio(IPumpCurve curve, LiftSystem lift) => curve.SpeedRatio(0, lift.HeadM(0));
}
