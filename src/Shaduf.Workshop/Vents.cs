using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Holes that a closed tube needs before it goes into the zinc bath: closed in, air or water would burst it.</summary>
public static class Vents
{
    /// <summary>Least diameter of each hole at an end of a closed tube, vent and drain apart.</summary>
    /// <param name="innerMm2">Inner area of the tube [mm2], 50 to 200000.</param>
    /// <param name="holeCount">Holes of both ends together, 2 to 8.</param>
    /// <returns>Diameter [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>A quarter of the inner area in all and 10 mm at least: from memory; ask the galvaniser</source>
    public static double HoleMm(double innerMm2, int holeCount)
    {
        Within.Require(innerMm2, 50, 200_000, "mm2");
        Within.RequireCount(holeCount, 2, 8);
        return Math.Max(10, Math.Sqrt(0.25 * innerMm2 / holeCount * 4 / Math.PI));
    }
}
