using System.Collections.Immutable;
using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class PlaneYearTests
{
    private static readonly Place Site = MonthlyMeansYearTests.Example().Place;
    private static readonly WeatherYear Year = MonthlyMeansYear.Generate(
        Site,
        MonthlyMeansYearTests.Example().Climate,
        3
    );
    private static readonly SkyYear Ready = SkyYear.Of(Year, PerezSet.AllSites1990);

    [Fact]
    public void No_hour_of_any_plane_is_negative_or_brighter_than_the_sun() =>
        Gen.Select(Gen.OneOf(Gen.Double[0, 90], Gen.Const(90.0)), Gen.Double[0, 360], Gen.Double[0, 1])
            .Sample(
                (tiltDeg, azimuthDeg, albedoShare) =>
                {
                    var light = Lay(new(tiltDeg, azimuthDeg), albedoShare, PlaneShade.None);
                    return light.OpenWPerM2.All(w => w is >= 0 and < 1500)
                        && light.EffectiveWPerM2.Zip(light.PlaneWPerM2).All(pair => pair.First <= pair.Second + 1e-9)
                        && light.ReflectedWPerM2.All(w => w is >= -1e-9 and < 1500);
                },
                iter: 50
            );

    [Fact]
    public void A_level_plane_gets_the_years_global_irradiation() =>
        Assert.Equal(1, Lay(new(0, 0), 0.2, PlaneShade.None).OpenWPerM2.Sum() / Year.GlobalWPerM2.Sum(), 1e-3);

    [Fact]
    public void Each_hour_is_that_of_the_moment()
    {
        var plane = new PlaneFacing(15, 0);
        var open = Lay(plane, 0.2, PlaneShade.None).OpenWPerM2;
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            var moment = Transposition.Perez(
                new(
                    Year.GlobalWPerM2[hour],
                    Year.DirectNormalWPerM2[hour],
                    Year.DiffuseWPerM2[hour],
                    Year.ExtraterrestrialNormalWPerM2[hour]
                ),
                new(Year.SunZenithDeg[hour], Year.SunAzimuthDeg[hour]),
                plane,
                0.2,
                PerezSet.AllSites1990
            );
            Assert.Equal(moment.TotalWPerM2, open[hour], 1e-9);
        }
    }

    [Fact]
    public void What_is_lost_and_what_is_kept_make_up_the_open_light()
    {
        var plane = new PlaneFacing(25, 30);
        var near = new NearShade(
            plane,
            [
                [new(0, 0, 1)],
            ],
            [new(new(-5, 5, 0), new(10, 0, 0), new(0, 0, 4), 0.2)]
        );
        var shade = PlaneShade.Of(new(Site), plane, new([new(0, 15), new(180, 2)]), near);
        var light = Lay(plane, 0.2, shade);
        var (horizon, nearby) = (light.HorizonLostWPerM2.Sum(), light.NearLostWPerM2.Sum());
        Assert.True(horizon > 0.001 * light.OpenWPerM2.Sum() && nearby > 0.001 * light.OpenWPerM2.Sum());
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            var kept = light.OpenWPerM2[hour] - light.HorizonLostWPerM2[hour] - light.NearLostWPerM2[hour];
            Assert.Equal(kept, light.PlaneWPerM2[hour], 1e-9);
            Assert.Equal(kept - light.ReflectedWPerM2[hour], light.EffectiveWPerM2[hour], 1e-9);
            Assert.Equal(
                light.BeamWPerM2[hour] + light.SkyWPerM2[hour] + light.GroundWPerM2[hour],
                light.EffectiveWPerM2[hour],
                1e-9
            );
            Assert.True(light.HorizonLostWPerM2[hour] >= 0 && light.NearLostWPerM2[hour] >= 0);
        }
    }

    [Fact]
    public void A_year_that_is_not_whole_is_refused()
    {
        var half = Year with { GlobalWPerM2 = ImmutableArray.Create(new double[4380]) };
        Assert.Throws<ArgumentOutOfRangeException>(() => SkyYear.Of(half, PerezSet.AllSites1990));
        Assert.Throws<ArgumentOutOfRangeException>(() => CellTemperature.YearDegC(Year, [.. new double[24]], 45));
    }

    [Fact]
    public void Cells_are_as_warm_as_the_air_at_night_and_warmer_by_day()
    {
        var plane = Lay(new(15, 0), 0.2, PlaneShade.None).PlaneWPerM2;
        var cellDegC = CellTemperature.YearDegC(Year, plane, 45);
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            Assert.Equal(Year.AirDegC[hour] + (plane[hour] * 25 / 800), cellDegC[hour], 1e-9);
        }
    }

    private static PlaneYear Lay(PlaneFacing facing, double albedoShare, PlaneShade shade) =>
        PlaneYear.Of(Ready, new(facing, albedoShare, Glass.Usual, shade));
}
