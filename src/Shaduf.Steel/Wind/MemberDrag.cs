using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Push of the wind on a bar that stands across it.</summary>
public static class MemberDrag
{
    /// <summary>Coefficient of a square tube, wind square to a side, on its side times length.</summary>
    /// <param name="sideMm">Side [mm], 10 to 500.</param>
    /// <param name="wallMm">Wall; the corners are rounded to twice the wall [mm], 1 to 20.</param>
    /// <returns>c_f; the end of the bar is not counted in its favour.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, 7.6, figures 7.23 and 7.24: 2.1, less for rounded corners, half at most; ψ_λ = 1</source>
    public static double SquareTubeCoefficient(double sideMm, double wallMm)
    {
        Within.Require(sideMm, 10, 500, "mm");
        Within.Require(wallMm, 1, 20, "mm");
        return 2.1 * Math.Max(0.5, 1 - (2.5 * (2 * wallMm) / sideMm));
    }
}
