using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How a day's irradiation on the horizontal spreads over its hours.</summary>
public static class DailyProfile
{
    /// <summary>An hour's share of the day, as published; over a day it adds up to 0.99, not to 1.</summary>
    /// <param name="hourAngleDeg">Hour angle at the middle of the hour [deg], -180 to 180, between sunrise and sunset.</param>
    /// <param name="sunsetHourAngleDeg">Hour angle at sunset [deg], 1 to 180.</param>
    /// <returns>Share of the day's irradiation for each hour [1/h].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>
    /// Collares-Pereira, Rabl, Solar Energy 22, 1979; Duffie, Beckman, Solar Engineering of Thermal Processes, equation
    /// 2.13.2
    /// </source>
    public static double CollaresPereiraRablShare(double hourAngleDeg, double sunsetHourAngleDeg)
    {
        Within.Require(sunsetHourAngleDeg, 1, 180, "deg");
        Within.Require(hourAngleDeg, -sunsetHourAngleDeg, sunsetHourAngleDeg, "deg");
        var (a, b) = Coefficients(sunsetHourAngleDeg);
        var height = Angle.Cos(hourAngleDeg) - Angle.Cos(sunsetHourAngleDeg);
        return Math.PI / 24 * (a + (b * Angle.Cos(hourAngleDeg))) * height / Area(sunsetHourAngleDeg);
    }

    /// <summary>What the published shares add up to over the day (their integral from sunrise to sunset).</summary>
    /// <param name="sunsetHourAngleDeg">Hour angle at sunset [deg], 1 to 180.</param>
    /// <returns>The sum, near 0.99.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range.</exception>
    /// <source>Integral of Collares-Pereira and Rabl's formula, worked out here</source>
    public static double CollaresPereiraRablSumShare(double sunsetHourAngleDeg)
    {
        Within.Require(sunsetHourAngleDeg, 1, 180, "deg");
        var (a, b) = Coefficients(sunsetHourAngleDeg);
        var lens = Angle.ToRad(sunsetHourAngleDeg) - (Angle.Sin(sunsetHourAngleDeg) * Angle.Cos(sunsetHourAngleDeg));
        return a + (b * lens / (2 * Area(sunsetHourAngleDeg)));
    }

    /// <summary>An hour's share of the day, put right so that the shares of a day add up to 1.</summary>
    /// <param name="hourAngleDeg">Hour angle at the middle of the hour [deg], -180 to 180, between sunrise and sunset.</param>
    /// <param name="sunsetHourAngleDeg">Hour angle at sunset [deg], 1 to 180.</param>
    /// <returns>Share of the day's irradiation for each hour [1/h].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Collares-Pereira, Rabl, Solar Energy 22, 1979, divided by its own sum over the day</source>
    public static double NormalisedShare(double hourAngleDeg, double sunsetHourAngleDeg) =>
        CollaresPereiraRablShare(hourAngleDeg, sunsetHourAngleDeg) / CollaresPereiraRablSumShare(sunsetHourAngleDeg);

    private static (double A, double B) Coefficients(double sunsetHourAngleDeg)
    {
        var sine = Angle.Sin(sunsetHourAngleDeg - 60);
        return (0.409 + (0.5016 * sine), 0.6609 - (0.4767 * sine));
    }

    private static double Area(double sunsetHourAngleDeg) =>
        Angle.Sin(sunsetHourAngleDeg) - (Angle.ToRad(sunsetHourAngleDeg) * Angle.Cos(sunsetHourAngleDeg));
}
