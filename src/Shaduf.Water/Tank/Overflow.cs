using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Flow that an upright overflow pipe carries off before the water reaches the rim.</summary>
public static class Overflow
{
    /// <summary>Flow over the lip of the pipe as a round weir, or into its mouth as an orifice, whichever is less.</summary>
    /// <param name="boreM">Inside diameter of the pipe [m], 0.01 to 1.</param>
    /// <param name="headM">Water above its lip [m], 0 to 1.</param>
    /// <returns>Flow [m3/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Q = min(1.7 pi D h^1.5, 0.6 (pi/4) D2 sqrt(2 g h)); weir and orifice coefficients from memory</source>
    public static double FlowM3PerS(double boreM, double headM)
    {
        Within.Require(boreM, 0.01, 1, "m");
        Within.Require(headM, 0, 1, "m");
        return Math.Min(
            1.7 * Math.PI * boreM * Math.Pow(headM, 1.5),
            0.6 * Math.PI / 4 * boreM * boreM * Math.Sqrt(2 * Gravity.MPerS2 * headM)
        );
    }
}
