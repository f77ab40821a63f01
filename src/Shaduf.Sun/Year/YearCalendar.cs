using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>The calendar of every year run: 2023, no leap day; hours count from 0, the first ends at 01:00 of 1 January.</summary>
public static class YearCalendar
{
    /// <summary>The year whose sun is used.</summary>
    public const int Year = 2023;

    /// <summary>Hours in the year.</summary>
    public const int HourCount = 8760;

    /// <summary>Days of the months, January first.</summary>
    public static IReadOnlyList<int> DaysInMonth { get; } = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    /// <summary>Day of the year, from 0, on which each month begins, January first.</summary>
    public static IReadOnlyList<int> FirstDays { get; } =
    [.. Enumerable.Range(0, 12).Select(month => DaysInMonth.Take(month).Sum())];

    private static readonly int[] MonthOfDay =
    [
        .. Enumerable.Range(0, 12).SelectMany(month => Enumerable.Repeat(month, DaysInMonth[month])),
    ];

    /// <summary>The month in which an hour lies.</summary>
    /// <param name="hour">Hour of the year, 0 to 8759.</param>
    /// <returns>Month, 0 (January) to 11.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hour is outside its range.</exception>
    /// <source>Gregorian calendar (ISO 8601:2004), a year without a leap day</source>
    public static int MonthOf(int hour) => MonthOfDay[DayOf(hour)];

    /// <summary>The day in which an hour lies.</summary>
    /// <param name="hour">Hour of the year, 0 to 8759.</param>
    /// <returns>Day of the year, 0 to 364.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hour is outside its range.</exception>
    /// <source>24 hours to each day: local standard time, no summer time</source>
    public static int DayOf(int hour)
    {
        Within.RequireCount(hour, 0, HourCount - 1);
        return hour / 24;
    }
}
