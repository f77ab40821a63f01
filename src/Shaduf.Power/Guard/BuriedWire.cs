using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Bare wire laid level in uniform soil, straight or as a ring; a strip counts as a wire of half its width.</summary>
public static class BuriedWire
{
    /// <summary>Resistance of a straight wire to remote earth.</summary>
    /// <param name="resistivityOhmM">Soil resistivity [Ω·m], 1 to 100000.</param>
    /// <param name="lengthM">Length [m], 1 to 1000.</param>
    /// <param name="diameterM">Diameter [m], 0.002 to 0.1.</param>
    /// <param name="depthM">Depth [m], 0.1 to 5, and less than a sixth of the length.</param>
    /// <returns>Resistance [Ω].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Dwight, Calculation of Resistances to Ground, 1936, written for the whole length and the depth (from memory).</source>
    public static double StraightOhm(double resistivityOhmM, double lengthM, double diameterM, double depthM)
    {
        Within.Require(resistivityOhmM, 1, 100_000, "Ω·m");
        Within.Require(lengthM, 1, 1000, "m");
        Within.Require(diameterM, 0.002, 0.1, "m");
        Within.Require(depthM, 0.1, Math.Min(5, lengthM / 6), "m");
        var share = depthM / lengthM;
        return resistivityOhmM
            / (2 * Math.PI * lengthM)
            * (
                Math.Log(4 * lengthM / diameterM)
                + Math.Log(1 / share)
                - 2
                + (2 * share)
                - (share * share)
                + (Math.Pow(share, 4) / 2)
            );
    }

    /// <summary>Resistance of a ring to remote earth.</summary>
    /// <param name="resistivityOhmM">Soil resistivity [Ω·m], 1 to 100000.</param>
    /// <param name="ringM">Diameter of the ring [m], 2 to 500; of a rectangle: of the circle of equal area, which is a little to the safe side.</param>
    /// <param name="diameterM">Diameter of the wire [m], 0.002 to 0.1.</param>
    /// <param name="depthM">Depth [m], 0.1 to 5, and less than half the ring.</param>
    /// <returns>Resistance [Ω].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Dwight, Calculation of Resistances to Ground, 1936, ring (from memory).</source>
    public static double RingOhm(double resistivityOhmM, double ringM, double diameterM, double depthM)
    {
        Within.Require(resistivityOhmM, 1, 100_000, "Ω·m");
        Within.Require(ringM, 2, 500, "m");
        Within.Require(diameterM, 0.002, 0.1, "m");
        Within.Require(depthM, 0.1, Math.Min(5, ringM / 2), "m");
        return resistivityOhmM
            / (2 * Math.PI * Math.PI * ringM)
            * (Math.Log(8 * ringM / diameterM) + Math.Log(2 * ringM / depthM));
    }
}
