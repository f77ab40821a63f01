using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How much air the sun's light goes through, against a sun straight above at sea level.</summary>
public static class AirMass
{
    /// <summary>Pressure at sea level in the standard atmosphere [Pa].</summary>
    public const double SeaLevelPa = 101_325;

    /// <summary>Relative air mass by Kasten and Young.</summary>
    /// <param name="zenithDeg">Zenith angle, apparent where known [deg], 0 to 90.</param>
    /// <returns>Air mass, 1 to 38.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    /// <source>Kasten, Young, Applied Optics 28, 1989</source>
    public static double KastenYoungRatio(double zenithDeg)
    {
        Within.Require(zenithDeg, 0, 90, "deg");
        return 1 / (Angle.Cos(zenithDeg) + (0.50572 * Math.Pow(96.07995 - zenithDeg, -1.6364)));
    }

    /// <summary>Relative air mass by Kasten's first formula, on which the DISC split was fitted.</summary>
    /// <param name="zenithDeg">Zenith angle, apparent where known [deg], 0 to 90.</param>
    /// <returns>Air mass, 1 to 37.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    /// <source>Kasten 1966, in Maxwell, SERI/TR-215-3087, 1987</source>
    public static double KastenRatio(double zenithDeg)
    {
        Within.Require(zenithDeg, 0, 90, "deg");
        return 1 / (Angle.Cos(zenithDeg) + (0.15 * Math.Pow(93.885 - zenithDeg, -1.253)));
    }

    /// <summary>Air pressure by the height of the site, in the standard atmosphere.</summary>
    /// <param name="elevationM">Height above sea level [m], -450 to 6000.</param>
    /// <returns>Pressure [Pa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is outside its range.</exception>
    /// <source>ISO 2533:1975, standard atmosphere, as fitted in open-source libraries</source>
    public static double PressurePa(double elevationM)
    {
        Within.Require(elevationM, -450, 6000, "m");
        return 100 * Math.Pow((44331.514 - elevationM) / 11880.516, 1 / 0.1902632);
    }
}
