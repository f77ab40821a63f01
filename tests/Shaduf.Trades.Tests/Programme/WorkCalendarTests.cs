using CsCheck;
using Shaduf.Programme;

namespace Shaduf.Trades.Tests.Programme;

public sealed class WorkCalendarTests
{
    private static readonly Gen<DateTime> s_instants = Gen.Int[0, 400 * 48]
        .Select(halfHours => new DateTime(2026, 1, 1).AddMinutes(30 * halfHours));

    private static readonly Gen<TimeSpan> s_work = Gen.Int[0, 400]
        .Select(quarters => TimeSpan.FromMinutes(15 * quarters));

    internal static Gen<WorkCalendar> Calendars { get; } =
        Gen.Select(
            Gen.Int[1, 127],
            Gen.Int[0, 12],
            Gen.Int[1, 12],
            Gen.Int[0, 364].Array[0, 40],
            (days, start, hours, off) =>
                new WorkCalendar(
                    Enum.GetValues<DayOfWeek>().Where(day => (days >> (int)day & 1) == 1),
                    TimeSpan.FromHours(start),
                    TimeSpan.FromHours(hours),
                    off.Select(day => new DateOnly(2026, 1, 1).AddDays(day))
                )
        );

    [Fact]
    public void Work_lasts_as_long_as_it_takes() =>
        Gen.Select(Calendars, s_instants, s_work)
            .Sample((calendar, at, work) => calendar.Between(at, calendar.Add(at, work)) == work);

    [Fact]
    public void Work_that_begins_as_late_as_it_may_ends_in_time_and_none_that_begins_later_does() =>
        Gen.Select(Calendars, s_instants, s_work)
            .Sample(
                (calendar, by, work) =>
                {
                    var begin = calendar.Subtract(by, work);
                    Assert.True(calendar.Add(begin, work) <= by);
                    Assert.True(work == TimeSpan.Zero || calendar.Add(begin.AddMinutes(1), work) > by.AddMinutes(-1));
                    Assert.Equal(work, calendar.Between(begin, by));
                }
            );

    [Fact]
    public void Work_begins_and_ends_within_working_hours() =>
        Gen.Select(Calendars, s_instants)
            .Sample(
                (calendar, at) =>
                {
                    Assert.Equal(
                        TimeSpan.FromMinutes(1),
                        calendar.Between(calendar.Next(at), calendar.Next(at).AddMinutes(1))
                    );
                    Assert.Equal(TimeSpan.Zero, calendar.Between(at, calendar.Next(at)));
                    Assert.Equal(
                        TimeSpan.FromMinutes(1),
                        calendar.Between(calendar.Last(at).AddMinutes(-1), calendar.Last(at))
                    );
                    Assert.Equal(TimeSpan.Zero, calendar.Between(calendar.Last(at), at));
                }
            );

    [Fact]
    public void Always_is_every_hour() =>
        Gen.Select(s_instants, s_work).Sample((at, work) => WorkCalendar.Always.Add(at, work) == at + work);

    [Fact]
    public void A_calendar_without_a_working_day_is_refused()
    {
        var none = Assert.Throws<ProgrammeException>(() => new WorkCalendar([], TimeSpan.Zero, TimeSpan.FromHours(8)));
        Assert.Contains("no working day", none.Message, StringComparison.Ordinal);
        var off = Enumerable.Range(0, 3000).Select(day => new DateOnly(2026, 1, 1).AddDays(day));
        var never = new WorkCalendar([DayOfWeek.Monday], TimeSpan.Zero, TimeSpan.FromHours(8), off);
        Assert.Throws<ProgrammeException>(() => never.Next(new(2026, 2, 1)));
        Assert.Throws<ProgrammeException>(() => never.Last(new(2030, 2, 1)));
    }

    [Fact]
    public void A_day_longer_than_a_day_is_refused() =>
        Assert.Throws<ProgrammeException>(() =>
            new WorkCalendar([DayOfWeek.Monday], TimeSpan.FromHours(20), TimeSpan.FromHours(8))
        );

    [Fact]
    public void Rain_takes_the_same_days_every_time_and_as_many_as_are_told()
    {
        double[] lost = [0, 2, 3.5, 0, 0, 0, 0, 0, 0, 0, 0, 28];
        var dates = RainDays.Of(new(2026, 1, 1), new(2026, 12, 31), lost);
        Assert.Equal(2 + 4 + 28, dates.Count);
        Assert.Equal(dates.Count, dates.Distinct().Count());
        Assert.Equal([new DateOnly(2026, 2, 8), new DateOnly(2026, 2, 22)], dates.Where(date => date.Month == 2));
        Assert.Equal(dates.Skip(1).Take(1), RainDays.Of(new(2026, 2, 9), new(2026, 2, 28), lost));
        Assert.Throws<ArgumentOutOfRangeException>(() => RainDays.Of(default, default, [double.NaN]));
    }

    [Fact]
    public void Less_than_half_a_day_is_planned_as_half_a_day_and_nothing_as_none()
    {
        Assert.Equal(0, Duration.Days(0, 1, 2));
        Assert.Equal(0.5, Duration.Days(0.01, 1, 2));
        Assert.Equal(3, Duration.Days(6, 1, 2));
        Assert.Equal(4, Duration.Days(6, 1, 2, Duration.HardshipFactor));
        Assert.Throws<ArgumentOutOfRangeException>(() => Duration.Days(1, 1, 0));
    }
}
