using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>What the base of a footing holds against being pushed along.</summary>
public static class Sliding
{
    /// <summary>Factor on the resistance where loads carry theirs.</summary>
    /// <source>EN 1997-1:2004, table A.5, set R2 (design approach 2)</source>
    public const double ResistanceFactor = 1.1;

    /// <summary>Concrete cast on ground that drains.</summary>
    /// <param name="forceKN">Force straight down [kN], 0 to 10000.</param>
    /// <param name="frictionDeg">Angle of friction between base and ground; that of the ground for concrete cast on it [deg], 0 to 45.</param>
    /// <returns>Resistance [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1997-1:2004, equation 6.3a</source>
    public static double DrainedKN(double forceKN, double frictionDeg)
    {
        Within.Require(forceKN, 0, 10_000, "kN");
        Within.Require(frictionDeg, 0, 45, "deg");
        return forceKN * Math.Tan(frictionDeg * Math.PI / 180);
    }

    /// <summary>Concrete cast on clay that has no time to drain; never more than 0.4 of the force, for air or water may get below.</summary>
    /// <param name="forceKN">Force straight down [kN], 0 to 10000.</param>
    /// <param name="areaM2">Area that presses [m2], 0 to 900.</param>
    /// <param name="cohesionKPa">Undrained strength [kPa], 0 to 500.</param>
    /// <returns>Resistance [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1997-1:2004, equations 6.4a and 6.5</source>
    public static double UndrainedKN(double forceKN, double areaM2, double cohesionKPa)
    {
        Within.Require(forceKN, 0, 10_000, "kN");
        Within.Require(areaM2, 0, 900, "m2");
        Within.Require(cohesionKPa, 0, 500, "kPa");
        return Math.Min(areaM2 * cohesionKPa, 0.4 * forceKN);
    }

    /// <summary>Untested ground: its presumed friction, or its presumed cohesion up to half of the force. Loads without partial factors.</summary>
    /// <param name="forceKN">Force straight down [kN], 0 to 10000.</param>
    /// <param name="areaM2">Area that presses [m2], 0 to 900.</param>
    /// <param name="soil">The class of soil.</param>
    /// <returns>Resistance [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>IBC 2018, table 1806.2; half of the dead load for clay, 1806.3.2, from memory</source>
    public static double PresumedKN(double forceKN, double areaM2, SoilClass soil)
    {
        Within.Require(forceKN, 0, 10_000, "kN");
        Within.Require(areaM2, 0, 900, "m2");
        return soil.FrictionCoefficient > 0
            ? soil.FrictionCoefficient * forceKN
            : Math.Min(areaM2 * soil.CohesionKPa, forceKN / 2);
    }
}
