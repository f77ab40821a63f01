using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Push of the wind on a body with a rectangular plan, sharp at its corners.</summary>
public static class BlockDrag
{
    // Figure 7.23, straight between the points on a log axis: depth over breadth, c_f,0.
    private static readonly (double Ratio, double Coefficient)[] s_byDepth =
    [
        (0.1, 2.0),
        (0.2, 2.0),
        (0.6, 2.35),
        (0.7, 2.4),
        (1, 2.1),
        (2, 1.65),
        (5, 1.0),
        (10, 0.9),
        (50, 0.9),
    ];

    // Figure 7.36 for a solid body: slenderness λ, ψ_λ.
    private static readonly (double Ratio, double Coefficient)[] s_byEnds = [(1, 0.60), (10, 0.698), (70, 0.918)];

    /// <summary>Coefficient on breadth times height.</summary>
    /// <param name="depthM">Side along the wind d [m], 0.1 to 30.</param>
    /// <param name="breadthM">Side across the wind b [m], 0.1 to 30.</param>
    /// <param name="heightM">Height l [m], 0.1 to 15.</param>
    /// <returns>c_f = c_f,0 ψ_λ.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, 7.6 and 7.13, figures 7.23 and 7.36; λ = 2 l/b, the larger of both sides over the smaller, the safe side</source>
    public static double Coefficient(double depthM, double breadthM, double heightM)
    {
        Within.Require(heightM, 0.1, 15, "m");
        var slender = 2 * Math.Max(heightM, breadthM) / Math.Min(heightM, breadthM);
        return LongCoefficient(depthM, breadthM) * Between(s_byEnds, slender);
    }

    /// <summary>Coefficient of a body without ends.</summary>
    /// <param name="depthM">Side along the wind d [m], 0.1 to 30.</param>
    /// <param name="breadthM">Side across the wind b [m], 0.1 to 30.</param>
    /// <returns>c_f,0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, 7.6, figure 7.23</source>
    public static double LongCoefficient(double depthM, double breadthM)
    {
        Within.Require(depthM, 0.1, 30, "m");
        Within.Require(breadthM, 0.1, 30, "m");
        return Between(s_byDepth, depthM / breadthM);
    }

    // Beyond the ends of the figure its last value stands.
    private static double Between((double Ratio, double Coefficient)[] figure, double ratio)
    {
        var after = Array.FindIndex(figure, point => point.Ratio >= ratio);
        if (after <= 0)
        {
            return after == 0 ? figure[0].Coefficient : figure[^1].Coefficient;
        }

        var (from, to) = (figure[after - 1], figure[after]);
        var share = Math.Log(ratio / from.Ratio) / Math.Log(to.Ratio / from.Ratio);
        return from.Coefficient + (share * (to.Coefficient - from.Coefficient));
    }
}
