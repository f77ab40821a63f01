using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class PlaneShadeTests
{
    private static readonly YearSun Sun = new(new(-1.3, 36.8, 1600, 3));

    [Fact]
    public void Free_on_all_sides_nothing_is_lost() =>
        Assert.Same(PlaneShade.None, PlaneShade.Of(Sun, new(10, 0), Horizon.Free, null));

    [Fact]
    public void The_morning_sun_comes_over_the_hill_when_it_has_climbed_its_height()
    {
        // 21 March: the sun climbs nearly straight up in the east, 15 deg an hour; it rises at 06:38.
        var shade = PlaneShade.Of(Sun, new(0, 0), new([new(0, 0), new(88, 14), new(92, 14), new(180, 0)]), null);
        const int midnight = 79 * 24;
        Assert.Equal(0, shade.BeamPastHorizonShare[midnight + 6]);
        Assert.InRange(shade.BeamPastHorizonShare[midnight + 7], 0.3, 0.7);
        Assert.Equal(1, shade.BeamPastHorizonShare[midnight + 9]);
        Assert.Equal(1, shade.BeamPastHorizonShare[midnight + 17]);
        Assert.All(shade.BeamPastNearShare, share => Assert.Equal(1, share));
    }

    [Fact]
    public void A_wall_to_the_north_takes_the_june_noon_south_of_the_equator_and_leaves_december()
    {
        var plane = new PlaneFacing(10, 0);
        var sun = new YearSun(new(-25, 30, 0, 2));
        var near = new NearShade(
            plane,
            [
                [new(0, 0, 0)],
            ],
            [new(new(-50, 5, 0), new(100, 0, 0), new(0, 0, 5), 0)]
        );
        var shade = PlaneShade.Of(sun, plane, Horizon.Free, near);
        Assert.Equal(0, shade.BeamPastNearShare[(171 * 24) + 11]);
        Assert.Equal(1, shade.BeamPastNearShare[(355 * 24) + 11]);
        Assert.InRange(shade.SkyPastNearShare, 0.7, 0.95);
    }
}
