using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The pictures of the choice: what reliability costs, what the years cost, what harder years bring.</summary>
public static class ChoiceCharts
{
    // Below this share a station is no offer.
    private const double LeastShownPercent = 50;

    /// <summary>The least cost for each share of the demand, with what was chosen.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture; null when no arrangement serves.</returns>
    public static Scene? Front(Design design, PaperSize size)
    {
        var shown = ShownFront(design).Select(point => new ChartPoint(point.Share * 100, point.Cost / 1000)).ToList();
        var chosen = design.Sizing.Front.FirstOrDefault(point => point.Choice == design.Choice);
        if (shown.Count == 0 || chosen is null)
        {
            return null;
        }

        return new LineChart(
            new(MetTitle(design)) { From = Math.Min(LeastShownPercent, 100), To = 100 },
            new(Invariant($"cost of what differs, 1000 {design.Offer.Currency}")) { From = 0 },
            [
                new("least cost", shown),
                new(
                    Invariant($"chosen: {design.Choice.Pump.Name}, {design.Choice.ModuleCount} modules"),
                    [new(chosen.Share * 100, chosen.Cost / 1000)]
                ),
            ]
        ).ToScene(size, "cost against reliability");
    }

    /// <summary>The front as it is shown: the cheapest way to each whole per cent, and the chosen one.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The points, cheapest first.</returns>
    public static IReadOnlyList<FrontPoint> ShownFront(Design design) =>
        [
            .. design
                .Sizing.Front.Where(point => point.Share * 100 >= LeastShownPercent)
                .GroupBy(point => Math.Floor((point.Share * 100) + 1e-9))
                .SelectMany(percent => percent.Where((point, i) => i == 0 || point.Choice == design.Choice)),
        ];

    /// <summary>Cost from the start to each year, solar and diesel.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture.</returns>
    public static Scene LifeCycle(Design design, PaperSize size)
    {
        var life = design.LifeCycle;
        var series = new List<LineSeries> { new("solar, as designed", ByYear(life.Solar)) };
        if (life.Diesel is { } diesel)
        {
            series.Add(new(Invariant($"diesel set of {life.Set!.RatedKW:0} kW, same pump and pipes"), ByYear(diesel)));
        }

        return new LineChart(
            new("years") { From = 0, To = life.YearCount },
            new(Invariant($"cost so far, 1000 {life.Currency} of today")) { From = 0 },
            series
        ).ToScene(size, "solar against diesel");
    }

    /// <summary>Share of the demand met in the design year and in harder ones.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture.</returns>
    public static Scene Sensitivity(Design design, PaperSize size)
    {
        var years = design.Sensitivity.Years;
        return new BarChart(
            new("share of the demand met, %") { To = 120, Step = 20 },
            [.. years.Select(year => year.Name)],
            [
                new("in the worst month", [.. years.Select(year => year.WorstShare * 100)]),
                new("over the year", [.. years.Select(year => year.YearShare * 100)]),
            ]
        )
        {
            ValueFormat = "0",
        }.ToScene(size, "harder years");
    }

    /// <summary>What the share is measured over, as an axis says it.</summary>
    internal static string MetTitle(Design design) =>
        design.Brief.Uses.TargetSpan == TargetSpan.Year
            ? "share of the year's demand met, %"
            : "share of the demand met in the worst month, %";

    private static List<ChartPoint> ByYear(WayOfLifting way) =>
        [.. way.Cumulative.Select((cost, year) => new ChartPoint(year, (double)cost / 1000))];
}
