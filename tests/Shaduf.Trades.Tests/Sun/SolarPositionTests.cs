using System.Globalization;
using CsCheck;
using Shaduf.Sun;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Sun;

public sealed class SolarPositionTests
{
    private static readonly SiteAir Air = new(1010, 10);

    [Fact]
    public void The_full_algorithm_agrees_with_the_oracle_to_its_stated_accuracy()
    {
        const double statedDeg = 0.0003;
        foreach (var row in Oracle.Rows("sun_position.csv"))
        {
            var sun = SolarPosition.Nrel(
                JulianDays(row),
                row.Number("delta_t_s"),
                new(row.Number("lat_deg"), row.Number("lon_deg"), row.Number("elev_m"), 0),
                new(row.Number("pressure_pa") / 100, row.Number("temp_c"))
            );
            Assert.True(ApartDeg(Vector(sun.True), OracleVector(row)) < statedDeg / 10, row["id"]);
            Assert.Equal(row.Number("zenith_deg"), sun.True.ZenithDeg, statedDeg / 10);
            Assert.Equal(row.Number("apparent_zenith_deg"), sun.ApparentZenithDeg, statedDeg / 10);
            Assert.Equal(row.Number("equation_of_time_min"), sun.EquationOfTimeMin, 1e-4);
            Assert.Equal(row.Number("sun_distance_au"), sun.DistanceRatio, 1e-8);
        }
    }

    [Fact]
    public void Psa_plus_is_within_two_hundredths_of_a_degree_of_the_oracle()
    {
        foreach (var row in Oracle.Rows("sun_position.csv"))
        {
            var sun = SolarPosition.PsaPlus(JulianDays(row), row.Number("lat_deg"), row.Number("lon_deg"));
            Assert.True(ApartDeg(Vector(sun), OracleVector(row)) < 0.02, row["id"]);
        }
    }

    [Fact]
    public void Psa_plus_is_within_a_hundredth_of_a_degree_of_the_full_algorithm_in_its_years()
    {
        // The largest, as the methods page states it.
        var apartDeg = Enumerable
            .Range(0, 6000)
            .Max(i =>
            {
                var (day, latitudeDeg, longitudeDeg) = (
                    2447892.5 + (i * 4.3213),
                    (i * 37.7 % 180) - 90,
                    (i * 101.3 % 360) - 180
                );
                var nrel = SolarPosition.Nrel(day, 69, new(latitudeDeg, longitudeDeg, 0, 0), Air);
                return ApartDeg(Vector(nrel.True), Vector(SolarPosition.PsaPlus(day, latitudeDeg, longitudeDeg)));
            });
        Assert.InRange(apartDeg, 0.0085, 0.0086);
    }

    [Fact]
    public void The_years_sun_is_within_a_hundredth_of_a_degree_of_the_full_algorithm()
    {
        // Four instants a day, every day of the calendar year, from pole to pole. The methods page states the largest.
        var start = JulianDay.DaysAtUtc(YearCalendar.Year, 1, 1, 0);
        var apartDeg = new[] { -90.0, -66.6, -35, -2, 0, 14, 51.5, 70, 90 }
            .SelectMany(latitudeDeg =>
                new[] { -170.0, 0, 36.8, 179 }.Select(longitudeDeg => (latitudeDeg, longitudeDeg))
            )
            .Max(site =>
            {
                var offsetH = Math.Round(site.longitudeDeg / 15);
                var place = new Place(site.latitudeDeg, site.longitudeDeg, 0, offsetH);
                var sun = new YearSun(place);
                return Enumerable
                    .Range(0, 365 * 4)
                    .Select(i => i * 6.0)
                    .Max(yearH =>
                        ApartDeg(
                            Vector(SolarPosition.Nrel(start + ((yearH - offsetH) / 24), 69, place, Air).True),
                            Vector(sun.DirectionAt(yearH).Angles)
                        )
                    );
            });
        Assert.InRange(apartDeg, 0.0064, 0.0065);
    }

    [Fact]
    public void The_full_algorithm_is_a_direction_everywhere_and_always() =>
        Gen.Select(
                Gen.Double[2305447.5, 2524593.5],
                Gen.OneOf(Gen.Double[-90, 90], Gen.Const(90.0), Gen.Const(-90.0)),
                Gen.Double[-180, 180]
            )
            .Sample(
                (julianDays, latitudeDeg, longitudeDeg) =>
                {
                    var sun = SolarPosition.Nrel(julianDays, 69, new(latitudeDeg, longitudeDeg, 0, 0), Air);
                    return sun.True is { ZenithDeg: >= 0 and <= 180, AzimuthDeg: >= 0 and <= 360 }
                        && double.IsFinite(sun.RefractionDeg);
                },
                iter: 500
            );

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

    private static double JulianDays(CsvRow row)
    {
        var time = DateTimeOffset.Parse(row["time_utc"], CultureInfo.InvariantCulture).UtcDateTime;
        return JulianDay.DaysAtUtc(time.Year, time.Month, time.Day, time.TimeOfDay.TotalHours);
    }

    private static (double East, double North, double Up) OracleVector(CsvRow row) =>
        (row.Number("sun_east"), row.Number("sun_north"), row.Number("sun_up"));

    private static double ApartDeg(
        (double East, double North, double Up) one,
        (double East, double North, double Up) other
    )
    {
        var (de, dn, du) = (one.East - other.East, one.North - other.North, one.Up - other.Up);
        return 2 * Math.Asin(Math.Sqrt((de * de) + (dn * dn) + (du * du)) / 2) * 180 / Math.PI;
    }

    private static (double East, double North, double Up) Vector(SunAngles sun)
    {
        var (zenith, azimuth) = (sun.ZenithDeg * Math.PI / 180, sun.AzimuthDeg * Math.PI / 180);
        return (Math.Sin(zenith) * Math.Sin(azimuth), Math.Sin(zenith) * Math.Cos(azimuth), Math.Cos(zenith));
    }
}
