using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class SolarGeometryTests
{
    [Fact]
    public void Incidence_from_the_hour_angle_equals_incidence_from_the_sun() =>
        Gen.Select(
                Gen.Double[-65, 65],
                Gen.Double[-23.45, 23.45],
                Gen.Double[-180, 180],
                Gen.Double[0, 90],
                Gen.Double[0, 360]
            )
            .Sample(
                (latitudeDeg, declinationDeg, hourAngleDeg, tiltDeg, azimuthDeg) =>
                {
                    var plane = new PlaneFacing(tiltDeg, azimuthDeg);
                    var sun = SolarGeometry.Sun(latitudeDeg, declinationDeg, hourAngleDeg);
                    var fromHour = SolarGeometry.IncidenceDeg(latitudeDeg, declinationDeg, hourAngleDeg, plane);
                    return Math.Abs(fromHour - Transposition.IncidenceDeg(sun, plane)) < 1e-4;
                }
            );

    [Fact]
    public void Sun_stands_on_the_horizon_at_sunset() =>
        Gen.Select(Gen.Double[-66, 66], Gen.Double[-23.45, 23.45])
            .Sample(
                (latitudeDeg, declinationDeg) =>
                {
                    var sunsetDeg = SolarGeometry.SunsetHourAngleDeg(latitudeDeg, declinationDeg);
                    var sun = SolarGeometry.Sun(latitudeDeg, declinationDeg, sunsetDeg);
                    return Math.Abs(sun.ZenithDeg - 90) < 1e-6 && sun.AzimuthDeg > 180;
                }
            );

    [Theory]
    [InlineData(75, 20, 180)]
    [InlineData(75, -20, 0)]
    [InlineData(-75, 20, 0)]
    public void Polar_day_and_night_are_whole(double latitudeDeg, double declinationDeg, double expectedDeg) =>
        Assert.Equal(expectedDeg, SolarGeometry.SunsetHourAngleDeg(latitudeDeg, declinationDeg));

    [Fact]
    public void Hours_add_up_to_the_day_above_the_air()
    {
        var sunsetDeg = SolarGeometry.SunsetHourAngleDeg(35, 10);
        var halfDayMJPerM2 = ExtraterrestrialIrradiance.HourHorizontalMJPerM2(1361, 35, 10, 0, sunsetDeg);
        var dayMJPerM2 = ExtraterrestrialIrradiance.DailyHorizontalMJPerM2(1361, 35, 10);
        Assert.Equal(dayMJPerM2, 2 * halfDayMJPerM2, 1e-9);
        Assert.Equal(0, ExtraterrestrialIrradiance.DailyHorizontalMJPerM2(1361, 80, -20));
    }

    [Fact]
    public void Hours_beyond_sunset_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            ExtraterrestrialIrradiance.HourHorizontalMJPerM2(1361, 0, 0, 75, 105)
        );

    [Fact]
    public void Beam_ratio_is_refused_near_the_horizon() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SolarGeometry.BeamRatio(0, 0, 88, new(30, 180)));

    [Fact]
    public void Solar_time_passes_the_date_line()
    {
        var west = SolarGeometry.SolarTimeH(12, new(2, -157.4, 5, 14), 0);
        Assert.Equal(12 - ((157.4 - 150) * 4 / 60), west, 1e-9);
    }
}
