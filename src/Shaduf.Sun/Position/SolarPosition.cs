using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Where the sun stands, seen from the site; true angles, without refraction.</summary>
/// <param name="ZenithDeg">Angle from the vertical to the sun's centre [deg]; above 90 the sun is down.</param>
/// <param name="AzimuthDeg">Clockwise from true north [deg], 0 to 360.</param>
public readonly record struct SunAngles(double ZenithDeg, double AzimuthDeg);

/// <summary>The sun's place among the stars, turned to a meridian.</summary>
/// <param name="DeclinationDeg">Declination [deg], north positive.</param>
/// <param name="HourAngleDeg">Hour angle [deg], -180 to 180, afternoon positive.</param>
internal readonly record struct SunCoordinates(double DeclinationDeg, double HourAngleDeg);

/// <summary>Position of the sun at an instant.</summary>
public static class SolarPosition
{
    // Radius of the earth over the distance of the sun.
    internal const double ParallaxRad = 6371.01 / 149_597_890;

    /// <summary>
    /// The sun by the PSA+ algorithm, with parallax, without refraction. Within 0.01 deg of the full NREL algorithm
    /// from 1990 to 2060.
    /// </summary>
    /// <param name="julianDays">Julian day, UT [d], 2447892.5 to 2473825.5 (1990 to 2060).</param>
    /// <param name="latitudeDeg">Latitude [deg], -90 to 90.</param>
    /// <param name="longitudeDeg">Longitude [deg], -180 to 180.</param>
    /// <returns>True zenith and azimuth [deg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>
    /// Blanco, Milidonis, Bonanos, Solar Energy 212, 2020 (coefficients); Blanco-Muriel et al., Solar Energy 70(5), 2001
    /// </source>
    public static SunAngles PsaPlus(double julianDays, double latitudeDeg, double longitudeDeg)
    {
        Within.Require(latitudeDeg, -90, 90, "deg");
        var sun = PsaPlusCoordinates(julianDays, longitudeDeg);
        var fromCentre = SolarGeometry.Sun(latitudeDeg, sun.DeclinationDeg, sun.HourAngleDeg);
        var parallaxDeg = Angle.ToDeg(ParallaxRad) * Angle.Sin(fromCentre.ZenithDeg);
        return fromCentre with { ZenithDeg = fromCentre.ZenithDeg + parallaxDeg };
    }

    /// <summary>Declination and hour angle by the PSA+ algorithm.</summary>
    /// <param name="julianDays">Julian day, UT [d], 2447892.5 to 2473825.5.</param>
    /// <param name="longitudeDeg">Longitude [deg], -180 to 180.</param>
    internal static SunCoordinates PsaPlusCoordinates(double julianDays, double longitudeDeg)
    {
        Within.Require(julianDays, 2447892.5, 2473825.5, "d");
        Within.Require(longitudeDeg, -180, 180, "deg");
        var n = julianDays - 2451545.0;
        var midnight = julianDays + 0.5;
        var utHour = 24 * (midnight - Math.Floor(midnight));

        // Ecliptic longitude and obliquity [rad].
        var omega = 2.267127827 - (9.300339267e-4 * n);
        var meanLongitude = 4.895036035 + (1.720279602e-2 * n);
        var anomaly = 6.239468336 + (1.720200135e-2 * n);
        var longitude =
            meanLongitude
            + (3.338320972e-2 * Math.Sin(anomaly))
            + (3.497596876e-4 * Math.Sin(2 * anomaly))
            - 1.544353226e-4
            - (8.689729360e-6 * Math.Sin(omega));
        var obliquity = 4.090904909e-1 - (6.213605399e-9 * n) + (4.418094944e-5 * Math.Cos(omega));

        var ascension = Math.Atan2(Math.Cos(obliquity) * Math.Sin(longitude), Math.Cos(longitude));
        var declination = Math.Asin(Math.Sin(obliquity) * Math.Sin(longitude));
        var greenwichHour = 6.697096103 + (6.570984737e-2 * n) + utHour;
        var hourAngleDeg = (15 * greenwichHour) + longitudeDeg - Angle.ToDeg(ascension);
        return new(Angle.ToDeg(declination), Angle.HalfTurn(hourAngleDeg));
    }
}
