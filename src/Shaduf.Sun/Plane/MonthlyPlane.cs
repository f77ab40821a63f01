using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>
/// A month's mean irradiation on a plane that faces the equator, from monthly means alone: a check by hand of what an
/// hourly year gives.
/// </summary>
public static class MonthlyPlane
{
    /// <summary>Beam of the month on the plane over beam on the horizontal.</summary>
    /// <param name="latitudeDeg">Latitude [deg], -66 to 66.</param>
    /// <param name="declinationDeg">Declination of the month's average day [deg], -23.5 to 23.5.</param>
    /// <param name="tiltDeg">Slope towards the equator [deg], 0 to 90.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or the day is so short (sunset before an hour angle of 5 deg) that the ratio means
    /// nothing.
    /// </exception>
    /// <source>
    /// Liu, Jordan 1962, Klein 1977, in Duffie, Beckman, Solar Engineering of Thermal Processes, equations 2.19.3 and 2.19.4
    /// </source>
    public static double BeamRatio(double latitudeDeg, double declinationDeg, double tiltDeg)
    {
        Within.Require(latitudeDeg, -66, 66, "deg");
        Within.Require(tiltDeg, 0, 90, "deg");
        var sunsetDeg = SolarGeometry.SunsetHourAngleDeg(latitudeDeg, declinationDeg);
        Within.Require(sunsetDeg, 5, 180, "deg");

        // The plane sees the sun as level ground does where the latitude is less by the slope.
        var planeLatitudeDeg = latitudeDeg >= 0 ? latitudeDeg - tiltDeg : latitudeDeg + tiltDeg;
        var planeSunsetDeg = Math.Min(sunsetDeg, SolarGeometry.SunsetHourAngleDeg(planeLatitudeDeg, declinationDeg));
        return Day(planeLatitudeDeg, declinationDeg, planeSunsetDeg) / Day(latitudeDeg, declinationDeg, sunsetDeg);
    }

    /// <summary>Irradiation of the month's mean day on the plane.</summary>
    /// <param name="horizontalMJPerM2">Global irradiation on the horizontal [MJ/m2], 0 to 50.</param>
    /// <param name="diffuseShare">Share of diffuse in it, 0 to 1.</param>
    /// <param name="beamRatio">Beam on the plane over beam on the horizontal, 0 to 20.</param>
    /// <param name="tiltDeg">Slope [deg], 0 to 90.</param>
    /// <param name="albedoShare">Share that the ground throws back, 0 to 1.</param>
    /// <returns>Irradiation [MJ/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Liu, Jordan, Klein, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation 2.19.1</source>
    public static double MJPerM2(
        double horizontalMJPerM2,
        double diffuseShare,
        double beamRatio,
        double tiltDeg,
        double albedoShare
    )
    {
        Within.Require(horizontalMJPerM2, 0, 50, "MJ/m2");
        Within.Require(diffuseShare, 0, 1, "");
        Within.Require(beamRatio, 0, 20, "");
        Within.Require(tiltDeg, 0, 90, "deg");
        Within.Require(albedoShare, 0, 1, "");
        var skyShare = (1 + Angle.Cos(tiltDeg)) / 2;
        return horizontalMJPerM2
            * (((1 - diffuseShare) * beamRatio) + (diffuseShare * skyShare) + (albedoShare * (1 - skyShare)));
    }

    private static double Day(double latitudeDeg, double declinationDeg, double sunsetDeg) =>
        (Angle.Cos(latitudeDeg) * Angle.Cos(declinationDeg) * Angle.Sin(sunsetDeg))
        + (Angle.ToRad(sunsetDeg) * Angle.Sin(latitudeDeg) * Angle.Sin(declinationDeg));
}
