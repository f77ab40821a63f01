using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>How far out of plumb a frame is taken to stand, and what sway moments grow to by its own weight.</summary>
public static class SwayImperfection
{
    /// <summary>Lean of all columns.</summary>
    /// <param name="heightM">Height of the frame [m], 0.5 to 50.</param>
    /// <param name="columnCount">Columns in the row that leans, 1 to 100.</param>
    /// <returns>φ = α_h α_m/200 [rad]; φ times the vertical load acts sideways at the head.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1993-1-1:2005, 5.3.2(3): α_h = 2/√h from 2/3 to 1, α_m = √(0.5 (1 + 1/m))</source>
    public static double LeanRad(double heightM, int columnCount)
    {
        Within.Require(heightM, 0.5, 50, "m");
        Within.RequireCount(columnCount, 1, 100);
        var byHeight = Math.Clamp(2 / Math.Sqrt(heightM), 2.0 / 3, 1);
        return byHeight * Math.Sqrt(0.5 * (1 + (1.0 / columnCount))) / 200;
    }

    /// <summary>What first-order sway moments are multiplied by: 1 from a critical factor of 10 on.</summary>
    /// <param name="criticalFactor">Critical load factor of the frame α_cr, at least 3; below the frame must be changed.</param>
    /// <returns>1/(1 - 1/α_cr).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 3, or NaN.</exception>
    /// <source>EN 1993-1-1:2005, 5.2.1(3) and 5.2.2(5)</source>
    public static double AmplifyingFactor(double criticalFactor)
    {
        Within.Require(criticalFactor, 3, double.PositiveInfinity, "");
        return criticalFactor >= 10 ? 1 : 1 / (1 - (1 / criticalFactor));
    }
}
