using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Head loss by the old empirical rule, for comparison with other people's sheets.</summary>
public static class HazenWilliams
{
    /// <summary>
    /// Head lost by friction. For turbulent water near 15 degC at about 1 to 3 m/s in bores above 50 mm; in small
    /// plastic pipe at low velocity it promises 7 to 16 % too little: size by <see cref="DarcyWeisbach"/>.
    /// </summary>
    /// <param name="boreM">Inside diameter [m], 0.005 to 2.</param>
    /// <param name="lengthM">Length [m], 0 to 100000.</param>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="smoothnessCoefficient">Hazen-Williams C, 40 to 160.</param>
    /// <returns>Head lost [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Williams and Hazen 1905, SI form h = 10.67 L Q^1.852/(C^1.852 D^4.8704)</source>
    public static double LossM(double boreM, double lengthM, double flowM3PerS, double smoothnessCoefficient)
    {
        Within.Require(boreM, 0.005, 2, "m");
        Within.Require(lengthM, 0, 100_000, "m");
        Within.Require(flowM3PerS, 0, 10, "m3/s");
        Within.Require(smoothnessCoefficient, 40, 160, "(C)");
        return 10.67 * lengthM * Math.Pow(flowM3PerS / smoothnessCoefficient, 1.852) / Math.Pow(boreM, 4.8704);
    }
}
