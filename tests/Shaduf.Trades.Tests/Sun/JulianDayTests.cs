using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class JulianDayTests
{
    // The reckoning of .NET's own calendar: days from 1 January of year 1, which is Julian day 1721425.5.
    [Fact]
    public void Counts_the_days_as_the_calendar_does() =>
        Gen.Date[new(1600, 1, 1), new(2200, 12, 31)]
            .Sample(date =>
                JulianDay.DaysAtUtc(date.Year, date.Month, date.Day, 6) == (date - DateTime.MinValue).Days + 1721425.75
            );

    [Fact]
    public void A_day_ends_where_the_next_begins() =>
        Assert.Equal(JulianDay.DaysAtUtc(2024, 3, 1, 0), JulianDay.DaysAtUtc(2024, 2, 29, 24));

    [Theory]
    [InlineData(1599, 1, 1, 0)]
    [InlineData(2201, 1, 1, 0)]
    [InlineData(2023, 0, 1, 0)]
    [InlineData(2023, 13, 1, 0)]
    [InlineData(2023, 2, 29, 0)]
    [InlineData(1900, 2, 29, 0)]
    [InlineData(2023, 1, 1, 24.1)]
    [InlineData(2023, 1, 1, double.NaN)]
    public void Refuses_what_is_no_date(int year, int month, int day, double utcH) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => JulianDay.DaysAtUtc(year, month, day, utcH));
}
