using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Sunshine above the atmosphere: the yardstick of clearness.</summary>
public static class ExtraterrestrialIrradiance
{
    /// <summary>Solar constant in present use [W/m2]; older books have 1353 and 1367.</summary>
    /// <source>Kopp, Lean, Geophysical Research Letters 38, 2011 (from memory)</source>
    public const double SolarConstantWPerM2 = 1361;

    /// <summary>Irradiance normal to the sun, by Spencer's series.</summary>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    /// <param name="solarConstantWPerM2">Solar constant [W/m2], 1340 to 1380.</param>
    /// <returns>Irradiance [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Spencer 1971, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.4.1b</source>
    public static double NormalSpencerWPerM2(int dayOfYear, double solarConstantWPerM2)
    {
        Within.Require(solarConstantWPerM2, 1340, 1380, "W/m2");
        var b = SolarGeometry.DayAngleDeg(dayOfYear);
        return solarConstantWPerM2
            * (
                1.000110
                + (0.034221 * Angle.Cos(b))
                + (0.001280 * Angle.Sin(b))
                + (0.000719 * Angle.Cos(2 * b))
                + (0.000077 * Angle.Sin(2 * b))
            );
    }

    /// <summary>Irradiance normal to the sun, by a single cosine.</summary>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    /// <param name="solarConstantWPerM2">Solar constant [W/m2], 1340 to 1380.</param>
    /// <returns>Irradiance [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.4.1a</source>
    public static double NormalCosineWPerM2(int dayOfYear, double solarConstantWPerM2)
    {
        Within.RequireCount(dayOfYear, 1, 366);
        Within.Require(solarConstantWPerM2, 1340, 1380, "W/m2");
        return solarConstantWPerM2 * (1 + (0.033 * Angle.Cos(360.0 * dayOfYear / 365)));
    }

    /// <summary>Irradiation of a day on the horizontal; zero in polar night.</summary>
    /// <param name="normalWPerM2">Irradiance normal to the sun [W/m2], 1280 to 1440.</param>
    /// <param name="latitudeDeg">Latitude [deg], -90 to 90.</param>
    /// <param name="declinationDeg">Declination [deg], -23.5 to 23.5.</param>
    /// <returns>Irradiation [MJ/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.10.3</source>
    public static double DailyHorizontalMJPerM2(double normalWPerM2, double latitudeDeg, double declinationDeg)
    {
        var sunsetDeg = SolarGeometry.SunsetHourAngleDeg(latitudeDeg, declinationDeg);
        return HourHorizontalMJPerM2(normalWPerM2, latitudeDeg, declinationDeg, -sunsetDeg, sunsetDeg);
    }

    /// <summary>Irradiation on the horizontal between two hour angles of one day, both between sunrise and sunset.</summary>
    /// <param name="normalWPerM2">Irradiance normal to the sun [W/m2], 1280 to 1440.</param>
    /// <param name="latitudeDeg">Latitude [deg], -90 to 90.</param>
    /// <param name="declinationDeg">Declination [deg], -23.5 to 23.5.</param>
    /// <param name="startHourAngleDeg">Hour angle at the start [deg], -180 to 180, between sunrise and sunset.</param>
    /// <param name="endHourAngleDeg">Hour angle at the end [deg], -180 to 180, between start and sunset.</param>
    /// <returns>Irradiation [MJ/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.10.4</source>
    public static double HourHorizontalMJPerM2(
        double normalWPerM2,
        double latitudeDeg,
        double declinationDeg,
        double startHourAngleDeg,
        double endHourAngleDeg
    )
    {
        Within.Require(normalWPerM2, 1280, 1440, "W/m2");
        var sunsetDeg = SolarGeometry.SunsetHourAngleDeg(latitudeDeg, declinationDeg);
        Within.Require(startHourAngleDeg, -sunsetDeg, sunsetDeg, "deg");
        Within.Require(endHourAngleDeg, startHourAngleDeg, sunsetDeg, "deg");
        var lastsS = (endHourAngleDeg - startHourAngleDeg) * 240;
        return lastsS
            * MeanHorizontalWPerM2(normalWPerM2, latitudeDeg, declinationDeg, startHourAngleDeg, endHourAngleDeg)
            / 1e6;
    }

    // Mean over the time between two hour angles, the sun up all the while; the angles may run on past midnight.
    internal static double MeanHorizontalWPerM2(
        double normalWPerM2,
        double latitudeDeg,
        double declinationDeg,
        double startHourAngleDeg,
        double endHourAngleDeg
    )
    {
        var turnRad = Angle.ToRad(endHourAngleDeg - startHourAngleDeg);
        var swing = turnRad > 0 ? (Angle.Sin(endHourAngleDeg) - Angle.Sin(startHourAngleDeg)) / turnRad : 0;
        return normalWPerM2
            * (
                (Angle.Cos(latitudeDeg) * Angle.Cos(declinationDeg) * swing)
                + (Angle.Sin(latitudeDeg) * Angle.Sin(declinationDeg))
            );
    }
}
