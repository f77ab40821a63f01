namespace Shaduf.Sun;

/// <summary>How a gap of a record was closed.</summary>
internal enum GapCure
{
    /// <summary>Between the hours before and after it.</summary>
    Neighbours,

    /// <summary>The same hours of the nearest day that has them.</summary>
    NearDay,

    /// <summary>Too long, or no day near has the hours: it stays open.</summary>
    None,
}

/// <summary>Closes the gaps of a year's series by rules that are written down.</summary>
internal static class GapFill
{
    /// <summary>Longest gap that is closed from the hours beside it [h].</summary>
    internal const int LongestBridgeH = 3;

    /// <summary>Longest gap that is closed from another day [h].</summary>
    internal const int LongestCopyH = 72;

    private const int FarthestDay = 15;

    /// <summary>Closes every gap that the rules allow.</summary>
    /// <param name="values">8,760 values, null where one is missing; filled in place.</param>
    /// <param name="matters">Whether an hour's value is needed (light at night is not).</param>
    /// <param name="tell">Told hour and cure of every hour that was missing.</param>
    internal static void Fill(double?[] values, Func<int, bool> matters, Action<int, GapCure> tell)
    {
        var known = values.ToArray();
        for (var first = 0; first < values.Length; first++)
        {
            if (!matters(first) || known[first] is not null)
            {
                continue;
            }

            var last = Last(known, matters, first);
            var cure =
                last - first < LongestBridgeH && Bridge(values, known, matters, first, last) ? GapCure.Neighbours
                : last - first < LongestCopyH && Copy(values, known, matters, first, last) ? GapCure.NearDay
                : GapCure.None;
            for (var hour = first; hour <= last; hour++)
            {
                if (matters(hour))
                {
                    tell(hour, cure);
                }
            }

            first = last;
        }
    }

    // A night does not end a gap.
    private static int Last(double?[] known, Func<int, bool> matters, int first)
    {
        var last = first;
        for (var hour = first; hour < known.Length && (!matters(hour) || known[hour] is null); hour++)
        {
            last = matters(hour) ? hour : last;
        }

        return last;
    }

    private static bool Bridge(double?[] values, double?[] known, Func<int, bool> matters, int first, int last)
    {
        var before = first > 0 && matters(first - 1) ? known[first - 1] : null;
        var after = last + 1 < known.Length && matters(last + 1) ? known[last + 1] : null;
        if ((before ?? after) is not { } one)
        {
            return false;
        }

        var (start, end) = (before ?? one, after ?? one);
        for (var hour = first; hour <= last; hour++)
        {
            values[hour] = start + ((end - start) * (hour - first + 1) / (last - first + 2));
        }

        return true;
    }

    private static bool Copy(double?[] values, double?[] known, Func<int, bool> matters, int first, int last)
    {
        for (var day = first / 24; day <= last / 24; day++)
        {
            int[] hours =
            [
                .. Enumerable
                    .Range(day * 24, 24)
                    .Where(hour => hour >= first && hour <= last && matters(hour) && known[hour] is null),
            ];
            if (NearDay(known, hours) is not { } from)
            {
                return false;
            }

            foreach (var hour in hours)
            {
                values[hour] = known[Moved(hour, from)];
            }
        }

        return true;
    }

    // Days away of the nearest day that has all the hours.
    private static int? NearDay(double?[] known, int[] hours)
    {
        for (var away = 1; away <= FarthestDay; away++)
        {
            foreach (var days in (ReadOnlySpan<int>)[-away, away])
            {
                if (Array.TrueForAll(hours, hour => known[Moved(hour, days)] is not null))
                {
                    return days;
                }
            }
        }

        return null;
    }

    private static int Moved(int hour, int days) =>
        (hour + (24 * days) + YearCalendar.HourCount) % YearCalendar.HourCount;
}
