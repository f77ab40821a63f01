using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Weld metal in a fillet with equal legs.</summary>
public static class FilletWeld
{
    /// <summary>Density of the weld metal of carbon steel [kg/m3].</summary>
    /// <source>Density of steel; welding handbooks use 7.85 g/cm3 or 0.283 lb/in3</source>
    public const double DensityKgPerM3 = 7850;

    /// <summary>Weld metal laid in one metre: the triangle between the legs, and what stands over it.</summary>
    /// <param name="legMm">Leg z [mm], 2 to 30; a gap under the fillet adds to the leg.</param>
    /// <param name="overrunShare">Convexity and overrun over the bare triangle, 0 to 1; 0.20 for planning.</param>
    /// <returns>Weld metal [kg/m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Area of a triangle; overrun 0.20 from published tables of fillet weights, which stand 1.20 to 1.21 over the bare triangle</source>
    public static double DepositKgPerM(double legMm, double overrunShare)
    {
        Within.Require(legMm, 2, 30, "mm");
        Within.Require(overrunShare, 0, 1, "");
        return 0.5 * legMm * legMm * 1e-6 * DensityKgPerM3 * (1 + overrunShare);
    }
}
