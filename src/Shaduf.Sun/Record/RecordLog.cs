namespace Shaduf.Sun;

/// <summary>Counts what is found in a year of a record, by matter and month.</summary>
/// <param name="hours">The record's hours, for their lines.</param>
internal sealed class RecordLog(IReadOnlyList<RecordHour> hours)
{
    private readonly SortedDictionary<RecordMatter, (int[] MonthCounts, int FirstHour)> found = [];

    /// <summary>What was found, in the order of the matters.</summary>
    internal IReadOnlyList<RecordCount> Counts =>
        [
            .. found.Select(each => new RecordCount(
                each.Key,
                each.Value.MonthCounts.Sum(),
                LineOf(each.Value.FirstHour)
            )),
        ];

    /// <summary>Notes a matter of an hour.</summary>
    internal void Add(RecordMatter matter, int hour)
    {
        if (!found.TryGetValue(matter, out var so))
        {
            found[matter] = so = (new int[12], hour);
        }

        so.MonthCounts[YearCalendar.MonthOf(hour)]++;
    }

    /// <summary>In how many hours of a month something was found.</summary>
    internal int CountIn(int month, RecordMatter matter) =>
        found.TryGetValue(matter, out var so) ? so.MonthCounts[month] : 0;

    /// <summary>In how many hours of the year something was found.</summary>
    internal int CountOf(RecordMatter matter) => found.TryGetValue(matter, out var so) ? so.MonthCounts.Sum() : 0;

    /// <summary>The line that holds an hour.</summary>
    internal int LineOf(int hour) => hours[hour].Line;
}
