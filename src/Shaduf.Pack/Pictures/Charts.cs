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
