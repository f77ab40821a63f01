using Shaduf.Money;
using Shaduf.Programme;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What the site costs whatever is built on it: once, and by the week of the programme.</summary>
internal static class Preliminaries
{
    /// <summary>The lines.</summary>
    /// <param name="programme">The programme.</param>
    /// <returns>The lines.</returns>
    public static IEnumerable<QuantityLine> Of(StationProgramme programme)
    {
        var weeks = WeekCount(programme);
        return
        [
            new(
                "mobilisation",
                BillSection.General,
                "tools, hut, water and sign board brought to the site and away again",
                "sum",
                1,
                "one site"
            ),
            new(
                "site-week",
                BillSection.General,
                "week of the site: foreman's time, guard, camp, drinking water, first aid",
                "wk",
                weeks,
                Invariant($"weeks of the programme in which somebody is at work, of {Weeks(programme):0.0} in all")
            ),
        ];
    }

    /// <summary>Weeks, from Monday, in which somebody is at work.</summary>
    /// <param name="programme">The programme.</param>
    /// <returns>Their number.</returns>
    public static int WeekCount(StationProgramme programme) =>
        programme
            .Activities.Where(each => !each.IsEvent && each.Timing.Activity.Calendar != WorkCalendar.Always)
            .SelectMany(each => WeeksOf(each.Place))
            .Distinct()
            .Count();

    private static double Weeks(StationProgramme programme) => (programme.Finish - programme.Start).TotalDays / 7;

    // Day 0 of the count was a Monday.
    private static IEnumerable<int> WeeksOf(Placed place)
    {
        var (first, last) = (
            DateOnly.FromDateTime(place.Start).DayNumber / 7,
            DateOnly.FromDateTime(place.Finish).DayNumber / 7
        );
        return Enumerable.Range(first, last - first + 1);
    }
}
