using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Push of the wind on a lattice tower, on the solid area of one face; front and rear face are in it.</summary>
public static class TowerDrag
{
    /// <summary>Coefficient of a square tower of flat or square bars, wind on a face.</summary>
    /// <param name="solidityShare">Solid area of one face over its outline φ, 0 to 1.</param>
    /// <returns>c_t = 4.0 φ² - 5.9 φ + 4.0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>ASCE 7, trussed towers (from memory); may be replaced by EN 1991-1-4:2005, figure 7.34</source>
    public static double SquareCoefficient(double solidityShare)
    {
        Within.Require(solidityShare, 0, 1, "");
        return (4.0 * solidityShare * solidityShare) - (5.9 * solidityShare) + 4.0;
    }

    /// <summary>Factor for wind on the diagonal of a square tower.</summary>
    /// <param name="solidityShare">Solid area of one face over its outline φ, 0 to 1.</param>
    /// <returns>1 + 0.75 φ, 1.2 at most.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>ASCE 7, trussed towers (from memory)</source>
    public static double DiagonalFactor(double solidityShare)
    {
        Within.Require(solidityShare, 0, 1, "");
        return Math.Min(1.2, 1 + (0.75 * solidityShare));
    }
}
