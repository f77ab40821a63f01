using System.Globalization;
using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class SolarPositionTests
{
    [Fact]
    public void Psa_plus_is_within_two_hundredths_of_a_degree_of_the_full_algorithm()
    {
        foreach (var row in Oracle.Rows("sun_position.csv"))
        {
            var time = DateTimeOffset.Parse(row["time_utc"], CultureInfo.InvariantCulture).UtcDateTime;
            var julianDays = JulianDay.DaysAtUtc(time.Year, time.Month, time.Day, time.TimeOfDay.TotalHours);
            var sun = SolarPosition.PsaPlus(julianDays, row.Number("lat_deg"), row.Number("lon_deg"));
            var (east, north, up) = Vector(sun);
            var (de, dn, du) = (
                east - row.Number("sun_east"),
                north - row.Number("sun_north"),
                up - row.Number("sun_up")
            );
            var chord = Math.Sqrt((de * de) + (dn * dn) + (du * du));
            var apartDeg = 2 * Math.Asin(chord / 2) * 180 / Math.PI;
            Assert.True(apartDeg < 0.02, $"{row["id"]}: {apartDeg} deg apart");
        }
    }

    [Fact]
    public void Is_a_direction_everywhere_and_always() =>
        Gen.Select(Gen.Double[2447892.5, 2473825.5], Gen.Double[-90, 90], Gen.Double[-180, 180])
            .Sample(
                (julianDays, latitudeDeg, longitudeDeg) =>
                {
                    var sun = SolarPosition.PsaPlus(julianDays, latitudeDeg, longitudeDeg);
                    return sun.ZenithDeg is >= 0 and <= 180 && sun.AzimuthDeg is >= 0 and <= 360;
                }
            );

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(2447892)]
    [InlineData(2473826)]
    public void Refuses_a_day_beyond_its_years(double julianDays) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SolarPosition.PsaPlus(julianDays, 0, 0));

    private static (double East, double North, double Up) Vector(SunAngles sun)
    {
        var (zenith, azimuth) = (sun.ZenithDeg * Math.PI / 180, sun.AzimuthDeg * Math.PI / 180);
        return (Math.Sin(zenith) * Math.Sin(azimuth), Math.Sin(zenith) * Math.Cos(azimuth), Math.Cos(zenith));
    }
}
