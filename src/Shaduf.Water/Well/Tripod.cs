using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Three legs over a borehole with the hoist hung in the middle.</summary>
public static class Tripod
{
    /// <summary>Force along a leg.</summary>
    /// <param name="loadKN">Load in the head [kN], 0 to 100000; a rope led down over a block doubles it, a chain hoist does not.</param>
    /// <param name="leanDeg">Lean of a leg from upright [deg], 15 to 30.</param>
    /// <returns>Force [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>W/(3 cos beta); statics</source>
    public static double LegKN(double loadKN, double leanDeg)
    {
        Within.Require(loadKN, 0, 100_000, "kN");
        Within.Require(leanDeg, 15, 30, "deg");
        return loadKN / (3 * Math.Cos(leanDeg * Math.PI / 180));
    }

    /// <summary>Force with which a foot wants to slide out: tie the feet to one another.</summary>
    /// <param name="loadKN">Load in the head [kN], 0 to 100000.</param>
    /// <param name="leanDeg">Lean of a leg from upright [deg], 15 to 30.</param>
    /// <returns>Force [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>W tan beta/3; statics</source>
    public static double ThrustKN(double loadKN, double leanDeg)
    {
        Within.Require(loadKN, 0, 100_000, "kN");
        Within.Require(leanDeg, 15, 30, "deg");
        return loadKN * Math.Tan(leanDeg * Math.PI / 180) / 3;
    }

    /// <summary>Load at which a pin-ended pipe bows out; a leg may carry a third of it.</summary>
    /// <param name="outerMm">Outside diameter [mm], 10 to 1000.</param>
    /// <param name="boreMm">Inside diameter [mm], 5 to the outside diameter.</param>
    /// <param name="modulusGPa">Elastic modulus [GPa], 0.05 to 250.</param>
    /// <param name="lengthM">Length [m], 0.5 to 20.</param>
    /// <returns>Load [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Euler, pi2 E I/L2</source>
    public static double BucklingKN(double outerMm, double boreMm, double modulusGPa, double lengthM)
    {
        Within.Require(outerMm, 10, 1000, "mm");
        Within.Require(boreMm, 5, outerMm, "mm");
        Within.Require(modulusGPa, 0.05, 250, "GPa");
        Within.Require(lengthM, 0.5, 20, "m");
        var inertiaMm4 = Math.PI / 64 * (Math.Pow(outerMm, 4) - Math.Pow(boreMm, 4));
        return Math.PI * Math.PI * modulusGPa * inertiaMm4 / Math.Pow(lengthM * 1000, 2);
    }
}
