using System.Collections.Immutable;
using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class PlaneYearTests
{
    private static readonly WeatherYear Year = MonthlyMeansYear.Generate(
        MonthlyMeansYearTests.Example().Place,
        MonthlyMeansYearTests.Example().Climate,
        3
    );

    [Fact]
    public void No_hour_of_any_plane_is_negative_or_brighter_than_the_sun() =>
        Gen.Select(Gen.Double[0, 90], Gen.Double[0, 360], Gen.Double[0, 1])
            .Sample(
                (tiltDeg, azimuthDeg, albedoShare) =>
                    PlaneYear
                        .HayDaviesWPerM2(Year, new(tiltDeg, azimuthDeg), albedoShare)
                        .All(w => w is >= 0 and < 1500),
                iter: 50
            );

    [Fact]
    public void A_level_plane_gets_the_years_global_irradiation() =>
        Assert.Equal(1, PlaneYear.HayDaviesWPerM2(Year, new(0, 0), 0.2).Sum() / Year.GlobalWPerM2.Sum(), 1e-4);

    [Fact]
    public void Each_hour_is_that_of_the_moment()
    {
        var plane = new PlaneFacing(15, 0);
        var year = PlaneYear.HayDaviesWPerM2(Year, plane, 0.2);
        const int hour = (40 * 24) + 9;
        var moment = Transposition.HayDavies(
            new(
                Year.GlobalWPerM2[hour],
                Year.DirectNormalWPerM2[hour],
                Year.DiffuseWPerM2[hour],
                Year.ExtraterrestrialNormalWPerM2[hour]
            ),
            new(Year.SunZenithDeg[hour], Year.SunAzimuthDeg[hour]),
            plane,
            0.2
        );
        Assert.Equal(moment.TotalWPerM2, year[hour]);
        Assert.True(year[hour] > 100);
    }

    [Fact]
    public void Cells_are_as_warm_as_the_air_at_night_and_warmer_by_day()
    {
        var plane = PlaneYear.HayDaviesWPerM2(Year, new(15, 0), 0.2);
        var cellDegC = CellTemperature.YearDegC(Year, plane, 45);
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            Assert.Equal(Year.AirDegC[hour] + (plane[hour] * 25 / 800), cellDegC[hour], 1e-9);
        }
    }

    [Fact]
    public void A_year_that_is_not_whole_is_refused()
    {
        var half = Year with { GlobalWPerM2 = ImmutableArray.Create(new double[4380]) };
        Assert.Throws<ArgumentOutOfRangeException>(() => PlaneYear.HayDaviesWPerM2(half, new(15, 0), 0.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => CellTemperature.YearDegC(Year, [.. new double[24]], 45));
    }
}
