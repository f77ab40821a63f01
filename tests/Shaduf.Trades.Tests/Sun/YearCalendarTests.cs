using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class YearCalendarTests
{
    [Fact]
    public void Every_hour_lies_where_the_calendar_has_it()
    {
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            var begins = new DateTime(YearCalendar.Year, 1, 1, 0, 0, 0, DateTimeKind.Unspecified).AddHours(hour);
            Assert.Equal(begins.Month - 1, YearCalendar.MonthOf(hour));
            Assert.Equal(begins.DayOfYear - 1, YearCalendar.DayOf(hour));
        }
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(YearCalendar.HourCount)]
    public void Refuses_an_hour_outside_the_year(int hour)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => YearCalendar.MonthOf(hour));
        Assert.Throws<ArgumentOutOfRangeException>(() => YearCalendar.DayOf(hour));
    }
}
