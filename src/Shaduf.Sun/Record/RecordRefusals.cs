using System.Collections.Immutable;
using static System.FormattableString;

namespace Shaduf.Sun;

/// <summary>What makes a year of a record unfit.</summary>
internal static class RecordRefusals
{
    /// <summary>A clock that does not go with the sun.</summary>
    internal static IEnumerable<RecordRefusal> OfClock(ImmutableArray<double?> shiftMin, RecordLog log)
    {
        var worst = Enumerable.Range(0, 12).MaxBy(month => Math.Abs(shiftMin[month] ?? 0));
        if (shiftMin[worst] is { } shift && Math.Abs(shift) > RecordYear.MostShiftMin)
        {
            yield return new(
                log.LineOf(24 * YearCalendar.FirstDays[worst]),
                Invariant(
                    $"in {Name(worst)} the day's light balances {Math.Abs(shift):0} min {(shift > 0 ? "after" : "before")} the sun crosses the meridian"
                ),
                Invariant(
                    $"a record whose clock goes with the sun within {RecordYear.MostShiftMin} min is accepted: look at the offset from UTC, at summer time, and at whether the stamp is the hour's beginning or end"
                )
            );
        }
    }

    /// <summary>Months in which too much is missing, impossible or contradicts itself.</summary>
    internal static IEnumerable<RecordRefusal> OfMonths(IReadOnlyList<SunlitHour> suns, RecordLog log)
    {
        for (var month = 0; month < 12; month++)
        {
            var hours = 24 * YearCalendar.DaysInMonth[month];
            var firstHour = 24 * YearCalendar.FirstDays[month];
            var lit = suns.Skip(firstHour).Take(hours).Count(sun => sun.LitShare > 0);
            (int Count, int Of, double MostShare, string What)[] limits =
            [
                (
                    log.CountIn(month, RecordMatter.NoLight),
                    lit,
                    RecordYear.MostLostShare,
                    "sunlit hours without a usable irradiance"
                ),
                (
                    log.CountIn(month, RecordMatter.NightLight),
                    hours - lit,
                    RecordYear.MostLostShare,
                    "hours of the night with light"
                ),
                (
                    log.CountIn(month, RecordMatter.NotClosed),
                    lit,
                    RecordYear.MostNotClosedShare,
                    "sunlit hours whose global irradiance is not the sum of its parts"
                ),
                (
                    log.CountIn(month, RecordMatter.NoAir),
                    hours,
                    RecordYear.MostLostShare,
                    "hours without a usable air temperature"
                ),
            ];
            foreach (var limit in limits.Where(limit => limit.Count > limit.MostShare * limit.Of))
            {
                yield return new(
                    log.LineOf(firstHour),
                    Invariant($"{Name(month)} has {limit.Count} {limit.What}, of {limit.Of}"),
                    Invariant($"at most {limit.MostShare * 100:0} % of them are accepted")
                );
            }
        }
    }

    /// <summary>A gap that no rule closes.</summary>
    internal static RecordRefusal OfGap(int hour, RecordMatter matter, RecordLog log)
    {
        var month = YearCalendar.MonthOf(hour);
        var day = YearCalendar.DayOf(hour) - YearCalendar.FirstDays[month] + 1;
        var what = matter == RecordMatter.LightBridged ? "irradiance" : "air temperature";
        return new(
            log.LineOf(hour),
            Invariant($"no {what} on {day} {Name(month)}, in a gap too long to close or without a whole day near it"),
            Invariant($"gaps of at most {GapFill.LongestCopyH} h are accepted")
        );
    }

    /// <summary>Months whose light no sky gives.</summary>
    internal static IEnumerable<RecordRefusal> OfSky(double[] globalWPerM2, SunlitHour[] suns, RecordLog log)
    {
        for (var month = 0; month < 12; month++)
        {
            var range = (24 * YearCalendar.FirstDays[month])..(
                24 * (YearCalendar.FirstDays[month] + YearCalendar.DaysInMonth[month])
            );
            var ratio = globalWPerM2[range].Sum() / suns[range].Sum(sun => sun.HorizontalWPerM2);
            if (ratio is not (>= DailyClearness.LowestMeanRatio and <= DailyClearness.HighestMeanRatio))
            {
                yield return new(
                    log.LineOf(range.Start.Value),
                    Invariant($"the light of {Name(month)} is {ratio * 100:0} % of that above the air"),
                    Invariant(
                        $"{DailyClearness.LowestMeanRatio * 100:0} to {DailyClearness.HighestMeanRatio * 100:0} % is accepted: look at the unit"
                    )
                );
            }
        }
    }

    private static string Name(int month) =>
        System.Globalization.CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month + 1);
}
