using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Julian day: days since noon of 1 January 4713 BC, the time scale of the sun algorithms.</summary>
public static class JulianDay
{
    /// <summary>Julian day of an instant of the Gregorian calendar.</summary>
    /// <param name="year">Year, 1600 to 2200.</param>
    /// <param name="month">Month, 1 to 12.</param>
    /// <param name="day">Day of the month, 1 to 31.</param>
    /// <param name="utcH">Time of the day, UTC, with decimals [h], 0 to 24.</param>
    /// <returns>The Julian day with decimals [d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Reda, Andreas, NREL/TP-560-34302, 2008, equation 4 (after Meeus)</source>
    public static double DaysAtUtc(int year, int month, int day, double utcH)
    {
        Within.RequireCount(year, 1600, 2200);
        Within.RequireCount(month, 1, 12);
        Within.RequireCount(day, 1, DateTime.DaysInMonth(year, month));
        Within.Require(utcH, 0, 24, "h");
        var (y, m) = month <= 2 ? (year - 1, month + 12) : (year, month);
        var century = y / 100;
        var gregorian = 2 - century + (century / 4);
        return Math.Floor(365.25 * (y + 4716)) + Math.Floor(30.6001 * (m + 1)) + day + (utcH / 24) + gregorian - 1524.5;
    }
}
