using System.Collections.Immutable;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How far a record's clock is from the sun: where its light balances against where the sun crosses the meridian.</summary>
public static class ClockShift
{
    private const int FewestDays = 5;

    /// <summary>Clock time at which the sun crosses the meridian.</summary>
    /// <param name="place">The site; its longitude and its offset from UTC count.</param>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    /// <returns>Local standard time [h].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The day is outside its range.</exception>
    /// <source>Duffie, Beckman, Solar Engineering of Thermal Processes, equations 1.5.2 and 1.5.3</source>
    public static double TransitH(Place place, int dayOfYear) =>
        24 - SolarGeometry.SolarTimeH(12, place, SolarGeometry.EquationOfTimeMin(dayOfYear));

    /// <summary>
    /// How much later by the clock than the sun's crossing the light of a month balances: the median of its brighter half
    /// of days, because clouds that keep to one half of the day move the balance too.
    /// </summary>
    /// <param name="place">The site.</param>
    /// <param name="globalWPerM2">Global irradiance by hour of the year [W/m2], 0 to 2000; null where it is not known.</param>
    /// <returns>Twelve shifts [min], January first; null in a month with fewer than five whole days of light.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are not 8,760 hours.</exception>
    /// <source>Worked out here: first moment of the day's irradiance</source>
    public static ImmutableArray<double?> MonthsMin(Place place, IReadOnlyList<double?> globalWPerM2)
    {
        Within.RequireCount(globalWPerM2.Count, YearCalendar.HourCount, YearCalendar.HourCount);
        return [.. Enumerable.Range(0, 12).Select(month => MonthMin(place, globalWPerM2, month))];
    }

    private static double? MonthMin(Place place, IReadOnlyList<double?> globalWPerM2, int month)
    {
        var days = Enumerable
            .Range(YearCalendar.FirstDays[month], YearCalendar.DaysInMonth[month])
            .Select(day => DayShift(place, globalWPerM2, day))
            .OfType<(double SumWPerM2, double ShiftH)>()
            .OrderByDescending(day => day.SumWPerM2)
            .ToList();
        if (days.Count < FewestDays)
        {
            return null;
        }

        var shiftsH = days.Take((days.Count + 1) / 2).Select(day => day.ShiftH).Order().ToList();
        return 60 * shiftsH[shiftsH.Count / 2];
    }

    // The 24 hours about the crossing, so that a clock far off does not cut the day in two.
    private static (double SumWPerM2, double ShiftH)? DayShift(
        Place place,
        IReadOnlyList<double?> globalWPerM2,
        int day
    )
    {
        var transitH = TransitH(place, day + 1);
        var startH = (int)Math.Round(transitH) - 12;
        var (sum, moment) = (0.0, 0.0);
        for (var hour = startH; hour < startH + 24; hour++)
        {
            var at = ((day * 24) + hour + YearCalendar.HourCount) % YearCalendar.HourCount;
            if (globalWPerM2[at] is not { } value)
            {
                return null;
            }

            sum += value;
            moment += value * (hour + 0.5 - transitH);
        }

        return sum > 0 ? (sum, moment / sum) : null;
    }
}
