using Shaduf.Sun;

namespace Shaduf.Station.Tests;

public sealed class FacingSearchTests
{
    private static readonly double[] Even = [.. Enumerable.Repeat(10.0, 12)];

    [Theory]
    [InlineData(-2.1)]
    [InlineData(14)]
    [InlineData(-33)]
    [InlineData(48)]
    public void Finds_what_a_search_through_all_planes_finds(double latitudeDeg)
    {
        var light = LightAt(latitudeDeg, _ => 1);
        var search = new FacingSearch(light, Even);
        var found = search.Best(null, null);
        var worth = Worth(light(found));
        foreach (var azimuthDeg in Enumerable.Range(0, 24).Select(i => 15.0 * i))
        {
            for (var tiltDeg = FacingSearch.LeastTiltDeg; tiltDeg <= FacingSearch.MostTiltDeg; tiltDeg += 5)
            {
                Assert.True(
                    Worth(light(new(tiltDeg, azimuthDeg))) <= worth * (1 + FacingSearch.LeastTurnGainShare) * 1.001,
                    $"{tiltDeg} deg towards {azimuthDeg} deg is better than {found}"
                );
            }
        }
    }

    [Theory]
    [InlineData(35, 180)]
    [InlineData(-35, 0)]
    public void Far_from_the_equator_an_even_demand_asks_for_a_steep_plane_towards_it(
        double latitudeDeg,
        double azimuthDeg
    )
    {
        var found = new FacingSearch(LightAt(latitudeDeg, _ => 1), Even).Best(null, null);
        Assert.Equal(azimuthDeg, found.AzimuthDeg);
        Assert.InRange(found.TiltDeg, 30, FacingSearch.MostTiltDeg);
    }

    [Fact]
    public void The_month_that_asks_most_decides()
    {
        // At 20 degrees south summer is in January: water for the summer's crop wants a flatter plane than for the winter's.
        double[] summer = [50, 50, 10, 10, 10, 10, 10, 10, 10, 10, 10, 50];
        double[] winter = [10, 10, 10, 10, 10, 50, 50, 50, 10, 10, 10, 10];
        var light = LightAt(-20, _ => 1);
        var summerDeg = new FacingSearch(light, summer).Best(null, 0).TiltDeg;
        var winterDeg = new FacingSearch(light, winter).Best(null, 0).TiltDeg;
        Assert.Equal(FacingSearch.LeastTiltDeg, summerDeg);
        Assert.True(winterDeg > 25, $"{winterDeg} deg");
    }

    [Fact]
    public void Afternoons_in_cloud_turn_the_modules_to_the_morning()
    {
        var found = new FacingSearch(LightAt(30, hour => hour % 24 < 12 ? 1 : 0.05), Even).Best(null, null);
        Assert.InRange(found.AzimuthDeg, 100, 175);
    }

    [Fact]
    public void What_the_brief_gives_is_kept()
    {
        var search = new FacingSearch(LightAt(10, _ => 1), Even);
        Assert.Equal(new PlaneFacing(42, 200), search.Best(42, 200));
        Assert.Equal(42, search.Best(42, null).TiltDeg);
        Assert.Equal(200, search.Best(null, 200).AzimuthDeg);
        Assert.Equal([new PlaneFacing(42, 200)], FacingSearch.Around(new(42, 200), 42));
    }

    [Fact]
    public void Neighbours_stay_between_the_flattest_and_the_steepest_tilt()
    {
        Assert.Equal([10.0, 15], FacingSearch.Around(new(10, 180), null).Select(facing => facing.TiltDeg));
        Assert.Equal([17.0, 22, 27], FacingSearch.Around(new(22, 180), null).Select(facing => facing.TiltDeg));
    }

    private static double Worth(PlaneYear light) => FacingSearch.WorstMonth(light, Even).KWhPerM2PerM3;

    // A made-up climate; the share by hour dims beam and diffuse alike.
    private static Func<PlaneFacing, PlaneYear> LightAt(double latitudeDeg, Func<int, double> share)
    {
        var year = MonthlyMeansYear.Generate(
            new(latitudeDeg, 30, 500, 2),
            new(
                [.. Sky.AboveTheAirKWhPerM2Day(latitudeDeg).Select(above => 0.55 * above)],
                [.. Enumerable.Repeat(20.0, 12)]
            ),
            seed: 1
        );
        var dimmed = year with
        {
            GlobalWPerM2 = [.. year.GlobalWPerM2.Select((watts, hour) => watts * share(hour))],
            DirectNormalWPerM2 = [.. year.DirectNormalWPerM2.Select((watts, hour) => watts * share(hour))],
            DiffuseWPerM2 = [.. year.DiffuseWPerM2.Select((watts, hour) => watts * share(hour))],
        };
        var ready = SkyYear.Of(dimmed, PerezSet.AllSites1990);
        return facing => PlaneYear.Of(ready, new(facing, 0.2, Glass.Usual, PlaneShade.None));
    }
}
