namespace Shaduf.Desk;

/// <summary>One row of figures in a chart that tells what it shows where it is touched.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Values">A figure for each place along the chart.</param>
/// <param name="Unit">Their unit as the brief writes it.</param>
/// <param name="IsBar">Whether it is drawn as bars and not as a line.</param>
public sealed record HoverSeries(string Name, IReadOnlyList<double> Values, string Unit, bool IsBar = false)
{
    /// <summary>Decimals of its figures.</summary>
    public int Decimals { get; init; } = 1;
}

/// <summary>The year run as a person looks at it: the year by months, a month by days, a day by hours.</summary>
/// <param name="Month">The month, 0 to 11; null for the year.</param>
/// <param name="Day">The day of the month, 0 for the first; null for the month.</param>
public sealed record YearView(int? Month, int? Day)
{
    private static readonly string[] s_months =
    [
        "Jan",
        "Feb",
        "Mar",
        "Apr",
        "May",
        "Jun",
        "Jul",
        "Aug",
        "Sep",
        "Oct",
        "Nov",
        "Dec",
    ];

    /// <summary>The whole year.</summary>
    public static YearView Year { get; } = new(null, null);

    /// <summary>What is looked at, in words.</summary>
    public string Says =>
        (Month, Day) switch
        {
            (null, _) => "the year, mean day of each month",
            ({ } month, null) => $"{s_months[month]}, day by day",
            ({ } month, { } day) => FormattableString.Invariant($"{day + 1} {s_months[month]}, hour by hour"),
        };

    /// <summary>Names of the places along the chart.</summary>
    public IReadOnlyList<string> Labels =>
        (Month, Day) switch
        {
            (null, _) => s_months,
            ({ } month, null) => [.. Enumerable.Range(1, DaysOf(month)).Select(day => $"{day}")],
            _ => [.. Enumerable.Range(0, 24).Select(hour => FormattableString.Invariant($"{hour + 1:00}:00"))],
        };

    /// <summary>What a place along the chart opens; null when it is an hour.</summary>
    public YearView? Into(int place) =>
        (Month, Day) switch
        {
            (null, _) => new(place, null),
            ({ }, null) => this with { Day = place },
            _ => null,
        };

    /// <summary>What lies around; null for the year.</summary>
    public YearView? Out =>
        (Month, Day) switch
        {
            (null, _) => null,
            (_, null) => Year,
            _ => this with { Day = null },
        };

    /// <summary>The one before or after at the same width.</summary>
    public YearView Moved(int by)
    {
        if (Month is not { } month)
        {
            return this;
        }

        if (Day is not { } day)
        {
            return this with { Month = (month + by + 12) % 12 };
        }

        var next = (DayOfYear(month, day) + by + 365) % 365;
        var of = Enumerable.Range(0, 12).Last(each => DayOfYear(each, 0) <= next);
        return new(of, next - DayOfYear(of, 0));
    }

    /// <summary>Figures by hour of the year gathered for the view: sums of a day, means of a month's days, or the hours.</summary>
    /// <param name="byHour">8760 figures.</param>
    /// <param name="isSum">Whether a day is the sum of its hours and not their least.</param>
    public IReadOnlyList<double> Of(IReadOnlyList<double> byHour, bool isSum = true)
    {
        double DayOf(int day)
        {
            var hours = Enumerable.Range(day * 24, 24).Select(hour => byHour[hour]);
            return isSum ? hours.Sum() : hours.Min();
        }

        return (Month, Day) switch
        {
            (null, _) =>
            [
                .. Enumerable
                    .Range(0, 12)
                    .Select(month => Enumerable.Range(DayOfYear(month, 0), DaysOf(month)).Average(DayOf)),
            ],
            ({ } month, null) => [.. Enumerable.Range(DayOfYear(month, 0), DaysOf(month)).Select(DayOf)],
            ({ } month, { } day) => [.. byHour.Skip(DayOfYear(month, day) * 24).Take(24)],
        };
    }

    private static int DaysOf(int month) => DateTime.DaysInMonth(2001, month + 1);

    private static int DayOfYear(int month, int day) => new DateTime(2001, month + 1, 1).DayOfYear - 1 + day;
}
