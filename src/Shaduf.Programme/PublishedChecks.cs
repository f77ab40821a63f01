using System.Text.RegularExpressions;
using Shaduf.Working;

namespace Shaduf.Programme;

/// <summary>Which shipped kernel computes each quantity of the trade's published rows.</summary>
public static partial class PublishedChecks
{
    // A Monday long before any programme: the published networks count weeks from nought.
    private static readonly DateTime s_start = new(2001, 1, 1);

    /// <summary>One check for each quantity that the published files of the trade name.</summary>
    public static IReadOnlyList<PublishedCheck> All { get; } =
    [
        new("programme/critical-path", "finish", row => (Solved(row).Finish - s_start).TotalDays),
        new("programme/critical-path", "early-start", row => (One(row).EarlyStart - s_start).TotalDays),
        new("programme/critical-path", "late-finish", row => (One(row).LateFinish - s_start).TotalDays),
        new("programme/critical-path", "total-float", row => One(row).TotalFloat.TotalDays),
        new("programme/work-calendar", "erected-day", ErectedDay),
        new(
            "programme/duration",
            "days",
            row => Duration.Days(row["unitCount"], row["eachDays"], (int)row["peopleCount"])
        ),
        new("programme/rain-days", "last-lost-day", LastLostDay),
    ];

    private static Timing One(PublishedCase row)
    {
        var key = row.Inputs.TryGetValue("askedNumber", out var asked)
            ? $"{(char)('A' + (int)asked - 1)}"
            : $"{row["askedFromNumber"]}-{row["askedToNumber"]}";
        return Solved(row).Timings.Single(timing => timing.Activity.Key == key);
    }

    private static CriticalPath Solved(PublishedCase row)
    {
        var arrows = row.Inputs.Keys.Select(name => Arrow().Match(name)).Where(match => match.Success).ToList();
        var tasks = row.Inputs.Keys.Select(name => Task().Match(name)).Where(match => match.Success).ToList();
        var links = row.Inputs.Keys.Select(name => After().Match(name)).Where(match => match.Success);
        var activities = arrows
            .Select(match => OfWeeks($"{match.Groups[1]}-{match.Groups[2]}", row[match.Value]))
            .Concat(tasks.Select(match => OfWeeks(match.Groups[1].Value, row[match.Value])))
            .ToList();
        var joined =
            from one in arrows
            from other in arrows
            where one.Groups[2].Value == other.Groups[1].Value
            select new Link($"{one.Groups[1]}-{one.Groups[2]}", $"{other.Groups[1]}-{other.Groups[2]}");
        var given = links.Select(match => new Link(
            match.Groups[1].Value,
            match.Groups[2].Value,
            Lag: TimeSpan.FromDays(row[match.Value])
        ));
        return CriticalPath.Of(Network.Of(activities, [.. joined, .. given]), s_start, WorkCalendar.Always);
    }

    private static Activity OfWeeks(string key, double weeks) =>
        new(key, key, TimeSpan.FromDays(weeks), WorkCalendar.Always);

    private static double ErectedDay(PublishedCase row)
    {
        var start = new DateTime((int)row["startYear"], (int)row["startMonth"], (int)row["startDay"]);
        var site = new WorkCalendar(
            Enum.GetValues<DayOfWeek>().Except([DayOfWeek.Sunday]),
            TimeSpan.FromHours(8),
            TimeSpan.FromHours(8)
        );
        Activity Days(string name, double days) => new(name, name, TimeSpan.FromHours(8 * days), site);
        var network = Network.Of(
            [
                Days("excavate", row["excavateDays"]),
                Days("pour", row["pourDays"]),
                new("cure", "cure", TimeSpan.FromDays(row["cureDays"]), WorkCalendar.Always),
                Days("erect", row["erectDays"]),
            ],
            [new("excavate", "pour"), new("pour", "cure"), new("cure", "erect")]
        );
        return CriticalPath.Of(network, start, site).Finish.Day;
    }

    private static double LastLostDay(PublishedCase row)
    {
        var first = new DateOnly((int)row["year"], (int)row["month"], 1);
        var lost = Enumerable.Repeat(row["lostDays"], 12).ToList();
        return RainDays.Of(first, first.AddMonths(1).AddDays(-1), lost)[^1].Day;
    }

    [GeneratedRegex("^arrow([0-9]+)To([0-9]+)Weeks$")]
    private static partial Regex Arrow();

    [GeneratedRegex("^task([A-Z])Weeks$")]
    private static partial Regex Task();

    [GeneratedRegex("^after([A-Z])Comes([A-Z])Weeks$")]
    private static partial Regex After();
}
