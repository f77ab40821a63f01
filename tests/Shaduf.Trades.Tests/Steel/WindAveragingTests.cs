using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class WindAveragingTests
{
    [Fact]
    public void A_gust_stands_for_a_slower_mean_and_a_rarer_wind_for_a_slower_one() =>
        Gen.Select(Gen.Double[1, 90], Gen.Double[1, 3600], Gen.Double[2, 5000])
            .Sample(
                (speed, time, years) =>
                    WindAveraging.BasicMPerS(speed, time, years)
                    <= WindAveraging.BasicMPerS(speed, Math.Min(3600, time * 1.5), years / 1.2 < 2 ? 2 : years / 1.2)
            );

    [Fact]
    public void A_ten_minute_mean_of_fifty_years_is_itself() =>
        Gen.Double[0, 90].Sample(speed => Math.Abs(WindAveraging.BasicMPerS(speed, 600, 50) - speed) < 1e-9);

    /// <summary>Gust of 3 s over the mean of ten minutes, about 1.43 (Durst, from memory).</summary>
    [Fact]
    public void A_gust_of_three_seconds_is_as_often_quoted() =>
        Assert.Equal(1.43, WindAveraging.HourRatio(3) / WindAveraging.HourRatio(600), 0.005);

    [Fact]
    public void Snow_slides_from_a_steep_plane()
    {
        Assert.Equal(0.8, RoofSnow.OnPlanKNPerM2(1, 30), 12);
        Assert.Equal(0.4, RoofSnow.OnPlanKNPerM2(1, 45), 12);
        Assert.Equal(0, RoofSnow.OnPlanKNPerM2(1, 60), 12);
        Assert.Throws<ArgumentOutOfRangeException>(() => RoofSnow.OnPlanKNPerM2(-1, 10));
    }

    [Fact]
    public void Round_corners_take_at_most_half_of_the_push_off_a_tube() =>
        Gen.Select(Gen.Double[20, 300], Gen.Double[1, 10])
            .Sample((side, wall) => MemberDrag.SquareTubeCoefficient(side, wall) is >= 1.05 and < 2.1);
}
