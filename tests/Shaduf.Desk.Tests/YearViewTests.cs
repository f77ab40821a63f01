using CsCheck;

namespace Shaduf.Desk.Tests;

public sealed class YearViewTests
{
    private static readonly double[] s_hours = [.. Enumerable.Range(0, 8760).Select(hour => (double)hour)];

    [Fact]
    public void A_touch_leads_from_the_year_to_a_month_to_a_day_and_back()
    {
        var day = YearView.Year.Into(1)!.Into(27)!;
        Assert.Equal("28 Feb, hour by hour", day.Says);
        Assert.Equal(24, day.Labels.Count);
        Assert.Equal(((31 + 27) * 24) + 5, day.Of(s_hours)[5]);
        Assert.Null(day.Into(3));
        Assert.Equal("Feb, day by day", day.Out!.Says);
        Assert.Equal(28, day.Out.Labels.Count);
        Assert.Same(YearView.Year, day.Out.Out);
        Assert.Null(YearView.Year.Out);
        Assert.Equal("1 Mar, hour by hour", day.Moved(1).Says);
        Assert.Equal("31 Dec, hour by hour", new YearView(0, 0).Moved(-1).Says);
    }

    [Fact]
    public void Days_are_sums_of_their_hours_and_months_means_of_their_days()
    {
        var day = new YearView(4, 9);
        Assert.Equal(day.Of(s_hours).Sum(), day.Out!.Of(s_hours)[9]);
        Assert.Equal(day.Out.Of(s_hours).Average(), YearView.Year.Of(s_hours)[4], 1e-9);
        Assert.Equal(day.Of(s_hours).Min(), day.Out.Of(s_hours, isSum: false)[9]);
    }

    [Fact]
    public void A_step_forward_and_one_back_come_to_the_same_day() =>
        Gen.Select(Gen.Int[0, 11], Gen.Int[0, 27])
            .Sample(
                (month, day) => Assert.Equal(new YearView(month, day), new YearView(month, day).Moved(1).Moved(-1))
            );
}
