using Shaduf.Working;

namespace Shaduf.Programme;

/// <summary>Days that rain takes from work in the open.</summary>
public static class RainDays
{
    /// <summary>Share of the days of heavy rain on which earth and paint stand still; judgement, no source.</summary>
    public const double LostShare = 0.5;

    /// <summary>Dates spread evenly over each month, so that the same place always loses the same days.</summary>
    /// <param name="from">First date that counts.</param>
    /// <param name="until">Last date that counts.</param>
    /// <param name="lostDays">Days lost in each month of the year [d], twelve figures, each 0 to 28.</param>
    /// <returns>The dates, in order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not twelve, outside the range, or NaN.</exception>
    /// <source>day number (i + 0.5) n/k of a month of n days with k lost: own rule, no source</source>
    public static IReadOnlyList<DateOnly> Of(DateOnly from, DateOnly until, IReadOnlyList<double> lostDays)
    {
        Within.RequireCount(lostDays.Count, 12, 12);
        foreach (var lost in lostDays)
        {
            Within.Require(lost, 0, 28, "d");
        }

        var dates = new List<DateOnly>();
        for (var month = new DateOnly(from.Year, from.Month, 1); month <= until; month = month.AddMonths(1))
        {
            var (days, count) = (
                DateTime.DaysInMonth(month.Year, month.Month),
                (int)Math.Ceiling(lostDays[month.Month - 1])
            );
            dates.AddRange(Enumerable.Range(0, count).Select(i => month.AddDays((int)((i + 0.5) * days / count))));
        }

        return [.. dates.Where(date => date >= from && date <= until)];
    }
}
