using Shaduf.Money;
using Shaduf.Programme;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>One activity of the station's programme.</summary>
/// <param name="Timing">When it can and must take place without a limit of people.</param>
/// <param name="Place">When it takes place with the people there are.</param>
/// <param name="ManDays">Man-days of eight hours that it takes.</param>
/// <param name="Basis">Where its duration comes from.</param>
public sealed record PlannedActivity(Timing Timing, Placed Place, double ManDays, string Basis)
{
    /// <summary>Whether it takes no time.</summary>
    public bool IsEvent => Timing.Activity.Work == TimeSpan.Zero;

    /// <summary>Whether it is a point at which work stops until somebody has looked and signed.</summary>
    public bool IsHold => Timing.Activity.Name.StartsWith("HOLD", StringComparison.Ordinal);
}

/// <summary>The programme of the works: from the order to the day the station is handed over.</summary>
/// <param name="Start">When it begins.</param>
/// <param name="Path">The network in time.</param>
/// <param name="Levelled">The same with no more people at once than there are.</param>
/// <param name="Activities">What is done on this station, in order of the start.</param>
/// <param name="PeopleCount">People on site.</param>
/// <param name="Site">The calendar of the site.</param>
public sealed record StationProgramme(
    DateTime Start,
    CriticalPath Path,
    Levelling Levelled,
    IReadOnlyList<PlannedActivity> Activities,
    int PeopleCount,
    WorkCalendar Site
)
{
    /// <summary>The trade of everybody on site.</summary>
    public const string Hands = "people";

    private const double ManDayH = 8;
    private const int LeadDays = 14;

    // Columns on one line carry the wind's whole moment: 0.9 of the strength before the modules catch it; judgement.
    private const double OneLineCureDays = 14;
    private static readonly TimeSpan s_begin = TimeSpan.FromHours(7);
    private static readonly IReadOnlyList<CsvRow> s_activities = Table("activities.csv");
    private static readonly IReadOnlyList<CsvRow> s_links = Table("links.csv");

    /// <summary>Activities begun before all that they wait for was done: the one begun, the one not done.</summary>
    public IReadOnlyList<(string Begun, string NotDone)> OutOfOrder { get; init; } = [];

    /// <summary>When all is done.</summary>
    public DateTime Finish => Levelled.Finish;

    /// <summary>When an activity takes place with the people there are, also one that this station does not have.</summary>
    /// <param name="key">Its key.</param>
    /// <returns>Start and finish.</returns>
    public Placed PlaceOf(string key) =>
        Levelled.Places[Path.Network.Activities.Index().Single(each => each.Item.Key == key).Index];

    /// <summary>How many people are at work, from each instant on.</summary>
    public IReadOnlyList<(DateTime From, int Count)> Histogram => Levelled.Histogram(Path.Network, Hands);

    /// <summary>Keys of all activities.</summary>
    public static IReadOnlyList<string> Keys { get; } = [.. s_activities.Select(row => row["key"])];

    /// <summary>Rows of the table of labour that no activity counts; none, or the table of activities is wrong.</summary>
    public static IReadOnlyList<string> UncountedLabour { get; } =
    [.. Labour.Ids.Except(s_activities.SelectMany(LabourOf), StringComparer.Ordinal)];

    /// <summary>The activity that takes the labour of a row of the table of labour.</summary>
    /// <param name="labour">The row.</param>
    /// <returns>Key of the activity.</returns>
    public static string ActivityOf(string labour) =>
        s_activities.Single(row => LabourOf(row).Contains(labour, StringComparer.Ordinal))["key"];

    /// <summary>Plans the works.</summary>
    /// <param name="ground">The brief, and what is settled of it.</param>
    /// <param name="works">The works.</param>
    /// <param name="lines">What was taken off.</param>
    /// <param name="issued">Date of the documents, where the brief does not say when work may begin.</param>
    /// <param name="report">What has happened, for a forecast of the rest; null for the plan.</param>
    /// <returns>The programme.</returns>
    /// <exception cref="ProgrammeException">The calendar has no day to work on.</exception>
    public static StationProgramme Of(
        (Brief Brief, Survey Survey) ground,
        Works works,
        IReadOnlyList<QuantityLine> lines,
        DateOnly issued,
        ProgressBrief? report = null
    )
    {
        var (brief, survey) = ground;
        var crew = brief.Rack.Crew;
        var people = (int)survey["crew-people"];
        var start = (crew.Start ?? issued.AddDays(LeadDays)).ToDateTime(TimeOnly.MinValue);
        var site = new WorkCalendar(
            Enum.GetValues<DayOfWeek>().Except(crew.RestDays),
            s_begin,
            TimeSpan.FromHours(survey["work-hours"]),
            crew.Feasts
        );
        var first = DateOnly.FromDateTime(start);
        var open = site.Without(RainDays.Of(first, first.AddYears(2), crew.RainDays));
        var factor = Hardship.FactorOf(brief);
        var gang = new Gang(ManDays(lines), people, survey["work-hours"], factor);
        var planned = s_activities
            .Select(row =>
                row["calendar"] == "always"
                    ? Wait(row, survey, works)
                    : Plan(row, gang, row["calendar"] == "open" ? open : site)
            )
            .ToList();
        var network = Network.Of(
            [.. planned.Select(each => each.Activity)],
            [
                .. s_links.Select(row => new Link(
                    row["from"],
                    row["to"],
                    Lag: IsThere(planned, row["from"]) ? TimeSpan.FromDays(row.Number("lag_days")) : TimeSpan.Zero
                )),
            ]
        );
        var progress = report?.Of(network);
        var path = CriticalPath.Of(network, start, site, progress);
        var levelled = Levelling.Of(path, new Dictionary<string, int> { [Hands] = people }, site, progress);
        return new(start, path, levelled, [.. InOrder(path, levelled, planned)], people, site)
        {
            OutOfOrder = [.. progress?.OutOfOrder(network).Select(pair => (pair.Begun.Name, pair.NotDone.Name)) ?? []],
        };
    }

    private static bool IsThere(List<(Activity Activity, double ManDays, string Basis)> planned, string key) =>
        planned.Single(each => each.Activity.Key == key).Activity.Work > TimeSpan.Zero;

    // What this station does not have takes no time and is not told; events are.
    private static IEnumerable<PlannedActivity> InOrder(
        CriticalPath path,
        Levelling levelled,
        List<(Activity Activity, double ManDays, string Basis)> planned
    ) =>
        planned
            .Select((each, at) => new PlannedActivity(path.Timings[at], levelled.Places[at], each.ManDays, each.Basis))
            .Where((each, at) => !each.IsEvent || s_activities[at]["labour"].Length == 0)
            .Where(each => !each.IsEvent || each.Timing.Activity.Key is not ("steel" or "goods"))
            .OrderBy(each => each.Place.Start)
            .ThenBy(each => each.Place.Finish);

    private static (Activity Activity, double ManDays, string Basis) Wait(CsvRow row, Survey survey, Works works)
    {
        var wait = row["key"] switch
        {
            "steel" => survey["steel-wait"],
            "goods" => survey["goods-wait"],
            "cure" when works.Rack.Form.Lines == 1 => OneLineCureDays,
            _ => row.Number("days"),
        };
        return (
            new(row["key"], row["name"], TimeSpan.FromDays(wait), WorkCalendar.Always),
            0,
            Invariant($"{wait:0.#} days, running day and night")
        );
    }

    private static (Activity Activity, double ManDays, string Basis) Plan(CsvRow row, Gang gang, WorkCalendar calendar)
    {
        var hands = Math.Max(1, Math.Min((int)row.Number("gang"), gang.PeopleCount));
        var needed = LabourOf(row).Sum(id => gang.ManDays.GetValueOrDefault(id));
        var days =
            needed > 0 ? Duration.Days(needed * ManDayH / gang.HoursADay, 1, hands, gang.Factor) : row.Number("days");
        var hardship = gang.Factor > 1 ? Invariant($", x {gang.Factor:0.0} for heat or thin air") : "";
        var isWork = days > 0;
        return (
            new(row["key"], row["name"], days * calendar.DayWork, calendar)
            {
                Crew = isWork ? new Dictionary<string, int> { [Hands] = hands } : [],
            },
            needed,
            !isWork ? ""
            : needed > 0 ? Invariant($"{needed:0.0} man-days by {hands}{hardship}")
            : Invariant($"{days:0.#} days, common practice, no source")
        );
    }

    // Who works: man-days by row of the table of labour, people, hours, factor of hardship.
    private sealed record Gang(
        IReadOnlyDictionary<string, double> ManDays,
        int PeopleCount,
        double HoursADay,
        double Factor
    );

    private static Dictionary<string, double> ManDays(IReadOnlyList<QuantityLine> lines) =>
        lines
            .Where(line => line.Item == Labour.Item)
            .GroupBy(Labour.IdOf)
            .ToDictionary(same => same.Key, same => same.Sum(line => line.Quantity));

    private static string[] LabourOf(CsvRow row) => row["labour"].Split(';', StringSplitOptions.RemoveEmptyEntries);

    private static IReadOnlyList<CsvRow> Table(string name) => Csv.Embedded(typeof(StationProgramme).Assembly, name);
}
