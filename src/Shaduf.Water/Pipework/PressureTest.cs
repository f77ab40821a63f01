using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Pressure test of a laid pipe with water.</summary>
public static class PressureTest
{
    private const double WaterKPa = 2.1e6;

    /// <summary>Test pressure at the lowest point when the surge was estimated, not calculated in full.</summary>
    /// <param name="designBar">Largest pressure in use, surge included [bar], 0 to 1000.</param>
    /// <returns>Test pressure [bar].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>EN 805:2000, system test pressure: the lesser of 1.5 MDP and MDP + 5 bar; from notes that quote it</source>
    public static double TestBar(double designBar)
    {
        Within.Require(designBar, 0, 1000, "bar");
        return Math.Min(1.5 * designBar, designBar + 5);
    }

    /// <summary>Water pumped into a full pipe to raise its pressure.</summary>
    /// <param name="volumeL">Water in the pipe [L], 0 to 1e8.</param>
    /// <param name="riseKPa">Rise of the pressure [kPa], 0 to 150000.</param>
    /// <param name="boreOverWallRatio">Bore over wall, 0.1 to 5000.</param>
    /// <param name="modulusKPa">Modulus of the wall [kPa], 1e5 to 1e9: polyethylene 8e5, PVC 3e6, steel 2.1e8.</param>
    /// <returns>Water [L].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>elastic water in an elastic pipe: V dp (1/E_w + D/(e E_R)); the form of EN 805, from memory</source>
    public static double AddedL(double volumeL, double riseKPa, double boreOverWallRatio, double modulusKPa)
    {
        Within.Require(volumeL, 0, 1e8, "L");
        Within.Require(riseKPa, 0, 150_000, "kPa");
        Within.Require(boreOverWallRatio, 0.1, 5000, "(bore/wall)");
        Within.Require(modulusKPa, 1e5, 1e9, "kPa");
        return volumeL * riseKPa * ((1 / WaterKPa) + (boreOverWallRatio / modulusKPa));
    }

    /// <summary>Most water that may come out when the pressure is let down: more, and there is air in the pipe.</summary>
    /// <param name="volumeL">Water in the pipe [L], 0 to 1e8.</param>
    /// <param name="dropKPa">Pressure let down [kPa], 0 to 150000.</param>
    /// <param name="boreOverWallRatio">Bore over wall, 0.1 to 5000.</param>
    /// <param name="modulusKPa">Modulus of the wall [kPa], 1e5 to 1e9.</param>
    /// <returns>Water [L].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>EN 805, Annex A.27 form with the allowance of 1.2, from memory</source>
    public static double MostReleasedL(double volumeL, double dropKPa, double boreOverWallRatio, double modulusKPa) =>
        1.2 * AddedL(volumeL, dropKPa, boreOverWallRatio, modulusKPa);
}
