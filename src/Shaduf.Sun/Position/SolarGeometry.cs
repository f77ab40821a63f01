using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Text-book relations between day, hour, place and sun, for daily work and hand checks.</summary>
public static class SolarGeometry
{
    /// <summary>Declination by Cooper; up to 0.5 deg off.</summary>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    /// <returns>Declination [deg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The day is outside its range.</exception>
    /// <source>Cooper 1969, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.6.1a</source>
    public static double DeclinationCooperDeg(int dayOfYear)
    {
        Within.RequireCount(dayOfYear, 1, 366);
        return 23.45 * Angle.Sin(360.0 * (284 + dayOfYear) / 365);
    }

    /// <summary>Declination by Spencer; within 0.035 deg.</summary>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    /// <returns>Declination [deg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The day is outside its range.</exception>
    /// <source>Spencer 1971, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.6.1b</source>
    public static double DeclinationSpencerDeg(int dayOfYear)
    {
        var b = DayAngleDeg(dayOfYear);
        return Angle.ToDeg(
            0.006918
                - (0.399912 * Angle.Cos(b))
                + (0.070257 * Angle.Sin(b))
                - (0.006758 * Angle.Cos(2 * b))
                + (0.000907 * Angle.Sin(2 * b))
                - (0.002697 * Angle.Cos(3 * b))
                + (0.00148 * Angle.Sin(3 * b))
        );
    }

    /// <summary>Equation of time: sundial less clock, in the printing of Duffie and Beckman.</summary>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    /// <returns>Equation of time [min].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The day is outside its range.</exception>
    /// <source>Spencer 1971, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.5.3</source>
    public static double EquationOfTimeMin(int dayOfYear)
    {
        var b = DayAngleDeg(dayOfYear);
        return 229.2
            * (
                0.000075
                + (0.001868 * Angle.Cos(b))
                - (0.032077 * Angle.Sin(b))
                - (0.014615 * Angle.Cos(2 * b))
                - (0.04089 * Angle.Sin(2 * b))
            );
    }

    /// <summary>
    /// Solar time: 12 when the sun crosses the meridian. Before 0 it is the evening of the day before, after 24 the morning
    /// of the day after.
    /// </summary>
    /// <param name="clockH">Local standard time [h], 0 to 24.</param>
    /// <param name="place">The site; its longitude and its offset from UTC count.</param>
    /// <param name="equationOfTimeMin">Equation of time [min], -20 to 20.</param>
    /// <returns>Solar time [h].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.5.2, with longitude east positive</source>
    public static double SolarTimeH(double clockH, Place place, double equationOfTimeMin)
    {
        Within.Require(clockH, 0, 24, "h");
        Within.Require(equationOfTimeMin, -20, 20, "min");
        var fromMeridianDeg = Angle.HalfTurn(place.LongitudeDeg - (15 * place.UtcOffsetH));
        return clockH + (((4 * fromMeridianDeg) + equationOfTimeMin) / 60);
    }

    /// <summary>Hour angle at sunset: 180 when the sun does not set, 0 when it does not rise.</summary>
    /// <param name="latitudeDeg">Latitude [deg], -90 to 90.</param>
    /// <param name="declinationDeg">Declination [deg], -23.5 to 23.5.</param>
    /// <returns>Hour angle at sunset [deg], 0 to 180; the day lasts a 7.5th of it in hours.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.6.10</source>
    public static double SunsetHourAngleDeg(double latitudeDeg, double declinationDeg)
    {
        RequirePlaceAndSun(latitudeDeg, declinationDeg);
        return Angle.ArcCos(-Angle.Tan(latitudeDeg) * Angle.Tan(declinationDeg));
    }

    /// <summary>Zenith angle and azimuth of the sun, without parallax and refraction.</summary>
    /// <param name="latitudeDeg">Latitude [deg], -90 to 90.</param>
    /// <param name="declinationDeg">Declination [deg], -23.5 to 23.5.</param>
    /// <param name="hourAngleDeg">Hour angle [deg], -180 to 180, afternoon positive.</param>
    /// <returns>Zenith and azimuth [deg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Duffie, Beckman, Solar Engineering of Thermal Processes, equations 1.6.5 and 1.6.6</source>
    public static SunAngles Sun(double latitudeDeg, double declinationDeg, double hourAngleDeg)
    {
        RequirePlaceAndSun(latitudeDeg, declinationDeg);
        Within.Require(hourAngleDeg, -180, 180, "deg");
        var (sinLatitude, cosLatitude) = (Angle.Sin(latitudeDeg), Angle.Cos(latitudeDeg));
        var (sinDeclination, cosDeclination) = (Angle.Sin(declinationDeg), Angle.Cos(declinationDeg));
        var cosHour = Angle.Cos(hourAngleDeg);
        var up = (sinLatitude * sinDeclination) + (cosLatitude * cosDeclination * cosHour);
        var east = -cosDeclination * Angle.Sin(hourAngleDeg);
        var north = (sinDeclination * cosLatitude) - (cosDeclination * sinLatitude * cosHour);
        return new(Angle.ArcCos(up), Angle.Turn(Angle.ToDeg(Math.Atan2(east, north))));
    }

    /// <summary>Angle between the sun and a plane's normal, from the hour angle.</summary>
    /// <param name="latitudeDeg">Latitude [deg], -90 to 90.</param>
    /// <param name="declinationDeg">Declination [deg], -23.5 to 23.5.</param>
    /// <param name="hourAngleDeg">Hour angle [deg], -180 to 180, afternoon positive.</param>
    /// <param name="plane">The plane.</param>
    /// <returns>Angle of incidence [deg], 0 to 180; above 90 the sun is behind the plane.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.6.2</source>
    public static double IncidenceDeg(double latitudeDeg, double declinationDeg, double hourAngleDeg, PlaneFacing plane)
    {
        RequirePlaceAndSun(latitudeDeg, declinationDeg);
        Within.Require(hourAngleDeg, -180, 180, "deg");
        plane.Require();
        var (sinLatitude, cosLatitude) = (Angle.Sin(latitudeDeg), Angle.Cos(latitudeDeg));
        var (sinDeclination, cosDeclination) = (Angle.Sin(declinationDeg), Angle.Cos(declinationDeg));
        var (sinTilt, cosTilt) = (Angle.Sin(plane.TiltDeg), Angle.Cos(plane.TiltDeg));
        var fromSouthDeg = plane.AzimuthDeg - 180;
        var cosHour = Angle.Cos(hourAngleDeg);
        return Angle.ArcCos(
            (sinDeclination * sinLatitude * cosTilt)
                - (sinDeclination * cosLatitude * sinTilt * Angle.Cos(fromSouthDeg))
                + (cosDeclination * cosLatitude * cosTilt * cosHour)
                + (cosDeclination * sinLatitude * sinTilt * Angle.Cos(fromSouthDeg) * cosHour)
                + (cosDeclination * sinTilt * Angle.Sin(fromSouthDeg) * Angle.Sin(hourAngleDeg))
        );
    }

    /// <summary>Ratio of beam on a plane to beam on the horizontal; for a sun at least 3 deg up.</summary>
    /// <param name="latitudeDeg">Latitude [deg], -90 to 90.</param>
    /// <param name="declinationDeg">Declination [deg], -23.5 to 23.5.</param>
    /// <param name="hourAngleDeg">Hour angle [deg], -180 to 180, afternoon positive.</param>
    /// <param name="plane">The plane.</param>
    /// <returns>The ratio, 0 when the sun is behind the plane.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or the zenith angle is above 87 deg, where the ratio means nothing.
    /// </exception>
    /// <source>Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.8.1</source>
    public static double BeamRatio(double latitudeDeg, double declinationDeg, double hourAngleDeg, PlaneFacing plane)
    {
        var zenithDeg = Sun(latitudeDeg, declinationDeg, hourAngleDeg).ZenithDeg;
        Within.Require(zenithDeg, 0, 87, "deg");
        var incidenceDeg = IncidenceDeg(latitudeDeg, declinationDeg, hourAngleDeg, plane);
        return Math.Max(0, Angle.Cos(incidenceDeg)) / Angle.Cos(zenithDeg);
    }

    /// <summary>Spencer's day angle: the year as a turn [deg].</summary>
    internal static double DayAngleDeg(int dayOfYear)
    {
        Within.RequireCount(dayOfYear, 1, 366);
        return 360.0 * (dayOfYear - 1) / 365;
    }

    private static void RequirePlaceAndSun(double latitudeDeg, double declinationDeg)
    {
        Within.Require(latitudeDeg, -90, 90, "deg");
        Within.Require(declinationDeg, -23.5, 23.5, "deg");
    }
}
