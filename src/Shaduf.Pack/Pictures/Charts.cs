using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The charts of a design.</summary>
public static class Charts
{
    private static readonly IReadOnlyList<string> Short = [.. YearCalendarNames.Months.Select(name => name[..3])];

    /// <summary>Water by month: demand, what the uses receive, and what could be pumped.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture.</returns>
    public static Scene Water(Design design, PaperSize size) =>
        new BarChart(
            new("water, m3 a day"),
            Short,
            [
                new("demand", [.. design.Months.Select(month => month.DemandM3PerDay)]),
                new("supply", [.. design.Months.Select(month => month.SupplyM3PerDay)]),
                new("could be pumped", [.. design.Months.Select(month => month.PumpableM3PerDay)]),
            ]
        )
        {
            ValueFormat = null,
        }.ToScene(size, "water by month");

    /// <summary>Demand by month and use, at the place of use.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture; uses beyond the fourth are drawn as one.</returns>
    public static Scene Demand(Design design, PaperSize size)
    {
        var uses = design.Demand.Uses.OrderByDescending(use => use.M3PerDay.Sum()).ToList();
        var most = uses.Count > 5 ? 4 : uses.Count;
        var series = uses.Take(most).Select(use => new BarSeries(use.Name, use.M3PerDay)).ToList();
        if (uses.Count > most)
        {
            var rest = uses.Skip(most).ToList();
            series.Add(
                new("other uses", [.. Enumerable.Range(0, 12).Select(month => rest.Sum(use => use.M3PerDay[month]))])
            );
        }

        return new BarChart(new("water at the place of use, m3 a day"), Short, series) { ValueFormat = null }.ToScene(
            size,
            "demand by use"
        );
    }

    /// <summary>Water in the tank through the fortnight in which it stands lowest.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture.</returns>
    public static Scene Tank(Design design, PaperSize size)
    {
        const int span = 14 * 24;
        var level = design.Trace.LevelM3;
        var sum = level.Take(span).Sum();
        var (least, start) = (sum, 0);
        for (var hour = span; hour < level.Length; hour++)
        {
            sum += level[hour] - level[hour - span];
            if (sum < least)
            {
                (least, start) = (sum, hour - span + 1);
            }
        }

        var from = new DateOnly(Sun.YearCalendar.Year, 1, 1).AddDays(start / 24);
        var points = Enumerable.Range(0, span).Select(i => new ChartPoint(i / 24.0, level[start + i])).ToList();
        return new LineChart(
            new(Invariant($"days from {from:d MMMM}"))
            {
                From = 0,
                To = 14,
                Step = 1,
            },
            new("water in the tank, m3") { From = 0 },
            [new("useful water", points)]
        ).ToScene(size, "tank in the lowest fortnight");
    }
}
