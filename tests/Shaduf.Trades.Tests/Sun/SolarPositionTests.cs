using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class SolarPositionTests
{
    private static readonly SiteAir Air = new(1010, 10);

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
