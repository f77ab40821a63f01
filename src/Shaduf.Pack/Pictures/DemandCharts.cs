using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The charts of the demand: through the year and through the day.</summary>
public static class DemandCharts
{
    private const int MostSeries = 5;
    private static readonly IReadOnlyList<string> s_months = [.. YearCalendarNames.Months.Select(name => name[..3])];

    // Each hour by the clock time at which it begins.
    private static readonly IReadOnlyList<string> s_hours =
    [
        .. Enumerable.Range(0, 24).Select(hour => FormattableString.Invariant($"{hour}")),
    ];

    /// <summary>Demand by month and use, at the place of use, uses on one another.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture; uses beyond the fourth are drawn as one.</returns>
    public static Scene Months(Design design, PaperSize size) =>
        new BarChart(
            new("water at the place of use, m3 a day"),
            s_months,
            Few(design.Demand.Uses, use => use.M3PerDay, 12)
        )
        {
            IsStacked = true,
        }.ToScene(size, "demand by month and use");

    /// <summary>Draw by hour and use on the mean day of the largest month, at the place of use.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture; uses beyond the fourth are drawn as one.</returns>
    public static Scene Hours(Design design, PaperSize size)
    {
        var month = design.Demand.PeakMonth;
        return new BarChart(
            new("water drawn in the hour that begins at, m3"),
            s_hours,
            Few(design.Demand.Uses, use => [.. use.Pattern.HourShares.Select(share => share * use.M3PerDay[month])], 24)
        )
        {
            IsStacked = true,
            ValueFormat = null,
        }.ToScene(size, "draw by hour and use");
    }

    private static List<BarSeries> Few(
        IReadOnlyList<UseYear> uses,
        Func<UseYear, IReadOnlyList<double>> values,
        int count
    )
    {
        var all = uses.OrderByDescending(use => use.M3PerDay.Sum()).ToList();
        var most = all.Count > MostSeries ? MostSeries - 1 : all.Count;
        var series = all.Take(most).Select(use => new BarSeries(use.Name, values(use))).ToList();
        if (all.Count > most)
        {
            var rest = all.Skip(most).Select(values).ToList();
            series.Add(new("other uses", [.. Enumerable.Range(0, count).Select(i => rest.Sum(use => use[i]))]));
        }

        return series;
    }
}
