using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>What measured irradiance can be: beyond it the instrument, the clock or the file is wrong.</summary>
public static class RecordLimits
{
    /// <summary>Light in the night that an instrument may show [W/m2], common practice, no source.</summary>
    public const double NightWPerM2 = 10;

    /// <summary>How far below zero an instrument may drift [W/m2], by the same tests.</summary>
    public const double DriftWPerM2 = -4;

    /// <summary>Global irradiance above which the sum of its parts is tested [W/m2].</summary>
    public const double ClosureFromWPerM2 = 50;

    /// <summary>Highest global irradiance that is physically possible.</summary>
    /// <param name="zenithDeg">Zenith angle of the sun [deg], 0 to 180.</param>
    /// <param name="normalWPerM2">Extraterrestrial irradiance normal to the sun [W/m2], 0 to 1440.</param>
    /// <returns>Limit [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Long, Dutton, BSRN Global Network recommended QC tests, version 2, 2002 (from memory)</source>
    public static double HighestGlobalWPerM2(double zenithDeg, double normalWPerM2) =>
        (1.5 * Slanted(zenithDeg, normalWPerM2)) + 100;

    /// <summary>Highest diffuse irradiance that is physically possible.</summary>
    /// <param name="zenithDeg">Zenith angle of the sun [deg], 0 to 180.</param>
    /// <param name="normalWPerM2">Extraterrestrial irradiance normal to the sun [W/m2], 0 to 1440.</param>
    /// <returns>Limit [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Long, Dutton, BSRN Global Network recommended QC tests, version 2, 2002 (from memory)</source>
    public static double HighestDiffuseWPerM2(double zenithDeg, double normalWPerM2) =>
        (0.95 * Slanted(zenithDeg, normalWPerM2)) + 50;

    /// <summary>How far global irradiance may lie from the sum of direct and diffuse, as a share of the sum.</summary>
    /// <param name="zenithDeg">Zenith angle of the sun [deg], 0 to 180.</param>
    /// <returns>Share of the sum.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    /// <source>Long, Dutton, BSRN Global Network recommended QC tests, version 2, 2002 (from memory)</source>
    public static double ClosureShare(double zenithDeg)
    {
        Within.Require(zenithDeg, 0, 180, "deg");
        return zenithDeg < 75 ? 0.08 : 0.15;
    }

    private static double Slanted(double zenithDeg, double normalWPerM2)
    {
        Within.Require(zenithDeg, 0, 180, "deg");
        Within.Require(normalWPerM2, 0, 1440, "W/m2");
        return normalWPerM2 * Math.Pow(Math.Max(0, Angle.Cos(zenithDeg)), 1.2);
    }
}
