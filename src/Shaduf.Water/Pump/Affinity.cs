using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>
/// How one point of a rotodynamic pump's curve moves when the speed changes. It joins points of similar flow, not
/// operating points: a static head does not shrink with the speed. Trusted from about half speed to 1.2.
/// </summary>
public static class Affinity
{
    /// <summary>Flow at another speed.</summary>
    /// <param name="flowM3PerS">Flow at the speed of the curve [m3/s], 0 to 10.</param>
    /// <param name="speedRatio">New speed over the speed of the curve, 0.1 to 1.5.</param>
    /// <returns>Flow [m3/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>affinity laws, Q ~ n; Crane Technical Paper 410</source>
    public static double FlowM3PerS(double flowM3PerS, double speedRatio)
    {
        Within.Require(flowM3PerS, 0, 10, "m3/s");
        return flowM3PerS * Checked(speedRatio);
    }

    /// <summary>Head at another speed.</summary>
    /// <param name="headM">Head at the speed of the curve [m], 0 to 10000.</param>
    /// <param name="speedRatio">New speed over the speed of the curve, 0.1 to 1.5.</param>
    /// <returns>Head [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>affinity laws, H ~ n2; Crane Technical Paper 410</source>
    public static double HeadM(double headM, double speedRatio)
    {
        Within.Require(headM, 0, 10_000, "m");
        return headM * Math.Pow(Checked(speedRatio), 2);
    }

    /// <summary>Shaft power at another speed.</summary>
    /// <param name="powerW">Shaft power at the speed of the curve [W], 0 to 1e7.</param>
    /// <param name="speedRatio">New speed over the speed of the curve, 0.1 to 1.5.</param>
    /// <returns>Shaft power [W].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>affinity laws, P ~ n3; Crane Technical Paper 410</source>
    public static double PowerW(double powerW, double speedRatio)
    {
        Within.Require(powerW, 0, 1e7, "W");
        return powerW * Math.Pow(Checked(speedRatio), 3);
    }

    /// <summary>Efficiency at another speed of the point that is best at the speed of the curve.</summary>
    /// <param name="efficiencyShare">Efficiency at the speed of the curve [share], 0.1 to 0.99.</param>
    /// <param name="speedRatio">New speed over the speed of the curve, 0.5 to 1.5.</param>
    /// <returns>Efficiency [share].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Sarbu and Borza 1998: 1 - (1 - eta)(1/r)^0.1; from memory</source>
    public static double EfficiencyShare(double efficiencyShare, double speedRatio)
    {
        Within.Require(efficiencyShare, 0.1, 0.99, "");
        Within.Require(speedRatio, 0.5, 1.5, "of the curve's speed");
        return 1 - ((1 - efficiencyShare) * Math.Pow(speedRatio, -0.1));
    }

    /// <summary>Efficiency at the speed of the curve of a point measured at another speed.</summary>
    /// <param name="efficiencyShare">Efficiency measured [share], 0.05 to 0.99.</param>
    /// <param name="speedRatio">Speed of the measurement over the speed of the curve, 0.5 to 1.5.</param>
    /// <returns>Efficiency [share].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Sarbu and Borza 1998, turned round; from memory</source>
    public static double RatedEfficiencyShare(double efficiencyShare, double speedRatio)
    {
        Within.Require(efficiencyShare, 0.05, 0.99, "");
        Within.Require(speedRatio, 0.5, 1.5, "of the curve's speed");
        return 1 - ((1 - efficiencyShare) * Math.Pow(speedRatio, 0.1));
    }

    private static double Checked(double speedRatio)
    {
        Within.Require(speedRatio, 0.1, 1.5, "of the curve's speed");
        return speedRatio;
    }
}
