using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Forces in a riser that hangs from the wellhead with its pump, its water and its cable.</summary>
public static class HangingRiser
{
    private const double ThreadPitchMm = 25.4 / 11;
    private const double ThreadHeightFactor = 0.640327;

    /// <summary>Water that stands in a pipe.</summary>
    /// <param name="boreMm">Inside diameter [mm], 5 to 1000.</param>
    /// <param name="densityKgPerM3">Density of the water [kg/m3], 900 to 1100.</param>
    /// <returns>Mass [kg/m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>rho pi d2/4</source>
    public static double WaterKgPerM(double boreMm, double densityKgPerM3)
    {
        Within.Require(boreMm, 5, 1000, "mm");
        Within.Require(densityKgPerM3, 900, 1100, "kg/m3");
        return densityKgPerM3 * BoreM2(boreMm);
    }

    /// <summary>Pull at the top of the riser while the pump runs.</summary>
    /// <param name="hungKg">All that hangs, water in the riser included, nothing taken off for what floats [kg], 0 to 2000000.</param>
    /// <param name="wellheadBar">Pressure at the wellhead [bar], 0 to 500.</param>
    /// <param name="boreMm">Inside diameter of the riser [mm], 5 to 1000.</param>
    /// <returns>Pull [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>W + p pi d2/4; statics</source>
    public static double PullKN(double hungKg, double wellheadBar, double boreMm)
    {
        Within.Require(hungKg, 0, 2_000_000, "kg");
        Within.Require(wellheadBar, 0, 500, "bar");
        Within.Require(boreMm, 5, 1000, "mm");
        return ((hungKg * Gravity.MPerS2) + (wellheadBar * 1e5 * BoreM2(boreMm))) / 1000;
    }

    /// <summary>Steel that is left in a pipe at the root of its taper thread of eleven to the inch.</summary>
    /// <param name="majorMm">Major diameter of the thread at its gauge plane, a little under the outside diameter [mm], 20 to 200.</param>
    /// <param name="boreMm">Inside diameter [mm], 5 to 190.</param>
    /// <returns>Area [mm2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN, or the thread cuts through the wall.</exception>
    /// <source>pi/4 [(D - 2 x 0.640327 P)2 - d2], thread form of ISO 7-1 (from memory)</source>
    public static double ThreadRootMm2(double majorMm, double boreMm)
    {
        Within.Require(majorMm, 20, 200, "mm");
        var rootMm = majorMm - (2 * ThreadHeightFactor * ThreadPitchMm);
        Within.Require(boreMm, 5, Math.Min(190, rootMm), "mm");
        return Math.PI / 4 * ((rootMm * rootMm) - (boreMm * boreMm));
    }

    /// <summary>Area of a plain pipe's wall.</summary>
    /// <param name="outerMm">Outside diameter [mm], 10 to 1000.</param>
    /// <param name="boreMm">Inside diameter [mm], 5 to the outside diameter.</param>
    /// <returns>Area [mm2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>pi/4 (D2 - d2)</source>
    public static double WallMm2(double outerMm, double boreMm)
    {
        Within.Require(outerMm, 10, 1000, "mm");
        Within.Require(boreMm, 5, outerMm, "mm");
        return Math.PI / 4 * ((outerMm * outerMm) - (boreMm * boreMm));
    }

    /// <summary>How much longer a riser gets under its load.</summary>
    /// <param name="endKN">Pull that acts along its whole length: pump, water, pressure [kN], 0 to 100000.</param>
    /// <param name="spreadKN">Weight spread along it: pipe, cable, rope [kN], 0 to 100000.</param>
    /// <param name="lengthM">Length [m], 0 to 1000.</param>
    /// <param name="wallMm2">Area of the wall [mm2], 10 to 1000000.</param>
    /// <param name="modulusGPa">Elastic modulus [GPa], 0.05 to 250; polyethylene 0.9 at once, 0.2 after years.</param>
    /// <returns>Stretch [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>F L/(E A) + G L/(2 E A); mechanics</source>
    public static double StretchM(double endKN, double spreadKN, double lengthM, double wallMm2, double modulusGPa)
    {
        Within.Require(endKN, 0, 100_000, "kN");
        Within.Require(spreadKN, 0, 100_000, "kN");
        Within.Require(lengthM, 0, 1000, "m");
        Within.Require(wallMm2, 10, 1_000_000, "mm2");
        Within.Require(modulusGPa, 0.05, 250, "GPa");
        return (endKN + (spreadKN / 2)) * lengthM / (modulusGPa * wallMm2);
    }

    /// <summary>Breaking load that a safety rope must have.</summary>
    /// <param name="hungKg">All that hangs [kg], 0 to 2000000.</param>
    /// <param name="endShare">Share of its strength that its end keeps: 0.5 with knots, 0.8 with clips on wire, 0.3 to 1.</param>
    /// <returns>Breaking load [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>5 W/eta; common practice, no source</source>
    public static double RopeKN(double hungKg, double endShare)
    {
        Within.Require(hungKg, 0, 2_000_000, "kg");
        Within.Require(endShare, 0.3, 1, "of its strength");
        return 5 * hungKg * Gravity.MPerS2 / 1000 / endShare;
    }

    /// <summary>Load that the hoist must be made for.</summary>
    /// <param name="hungKg">All that hangs [kg], 0 to 2000000.</param>
    /// <returns>Load [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>1.3 W for the start and for rubbing in the bore; common practice, no source</source>
    public static double HoistKN(double hungKg)
    {
        Within.Require(hungKg, 0, 2_000_000, "kg");
        return 1.3 * hungKg * Gravity.MPerS2 / 1000;
    }

    private static double BoreM2(double boreMm) => Math.PI / 4 * boreMm * boreMm / 1e6;
}
