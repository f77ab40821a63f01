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

/// <summary>Air at the site, for refraction.</summary>
/// <param name="PressureHPa">Yearly mean pressure [hPa], 0 to 1100.</param>
/// <param name="AirDegC">Yearly mean temperature [degC], -60 to 60.</param>
public readonly record struct SiteAir(double PressureHPa, double AirDegC);

/// <summary>The sun seen from a site.</summary>
/// <param name="True">Where it stands, seen from the site.</param>
/// <param name="RefractionDeg">How much higher it is seen [deg].</param>
/// <param name="DeclinationDeg">Declination, seen from the site [deg].</param>
/// <param name="HourAngleDeg">Hour angle, seen from the site [deg], afternoon positive.</param>
/// <param name="DistanceRatio">Distance over the mean one.</param>
/// <param name="EquationOfTimeMin">Sundial less clock [min].</param>
public sealed record SunSighting(
    SunAngles True,
    double RefractionDeg,
    double DeclinationDeg,
    double HourAngleDeg,
    double DistanceRatio,
    double EquationOfTimeMin
)
{
    /// <summary>Zenith angle at which it is seen [deg].</summary>
    public double ApparentZenithDeg => True.ZenithDeg - RefractionDeg;
}

/// <summary>Position of the sun at an instant.</summary>
public static class SolarPosition
{
    // Radius of the earth over the distance of the sun.
    internal const double ParallaxRad = 6371.01 / 149_597_890;

    /// <summary>
    /// The sun by the PSA+ algorithm, with parallax, without refraction. Within 0.009 deg of the full NREL algorithm
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

    /// <summary>
    /// The sun by the algorithm of NREL, to 0.0003 deg: the yardstick of the others; some 20 us, too slow for the hours of
    /// many years.
    /// </summary>
    /// <param name="julianDays">Julian day, UT [d], 2305447.5 to 2524593.5 (1600 to 2200).</param>
    /// <param name="deltaTS">Terrestrial time less universal time [s], -20 to 500; 69 in the 2020s.</param>
    /// <param name="place">The site; its latitude, longitude and height count.</param>
    /// <param name="air">Yearly mean pressure and temperature of the air.</param>
    /// <returns>True and apparent angles.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Reda, Andreas, NREL/TP-560-34302, revised 2008 (after Meeus)</source>
    public static SunSighting Nrel(double julianDays, double deltaTS, Place place, SiteAir air)
    {
        place.Require();
        var sun = NrelSun.At(julianDays, deltaTS);
        var hourAngleDeg = sun.HourAngleDeg(place.LongitudeDeg);

        // Parallax: from the centre of the flattened earth to the site.
        var (sinLatitude, cosLatitude) = (Angle.Sin(place.LatitudeDeg), Angle.Cos(place.LatitudeDeg));
        var reducedRad = Math.Atan2(0.99664719 * sinLatitude, cosLatitude);
        var outwards = Math.Cos(reducedRad) + (place.ElevationM / 6378140 * cosLatitude);
        var up = (0.99664719 * Math.Sin(reducedRad)) + (place.ElevationM / 6378140 * sinLatitude);
        var sinParallax = Angle.Sin(8.794 / (3600 * sun.DistanceRatio));
        var towards = Angle.Cos(sun.DeclinationDeg) - (outwards * sinParallax * Angle.Cos(hourAngleDeg));
        var shiftRad = Math.Atan2(-outwards * sinParallax * Angle.Sin(hourAngleDeg), towards);
        var declinationDeg = Angle.ToDeg(
            Math.Atan2((Angle.Sin(sun.DeclinationDeg) - (up * sinParallax)) * Math.Cos(shiftRad), towards)
        );
        var siteHourDeg = Angle.HalfTurn(hourAngleDeg - Angle.ToDeg(shiftRad));
        var angles = SolarGeometry.Sun(place.LatitudeDeg, declinationDeg, siteHourDeg);
        var refractionDeg = Refraction.NrelDeg(90 - angles.ZenithDeg, air.PressureHPa, air.AirDegC);
        return new(angles, refractionDeg, declinationDeg, siteHourDeg, sun.DistanceRatio, sun.EquationOfTimeMin);
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
