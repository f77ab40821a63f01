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

    /// <summary>The pump's curve at two speeds with the head that the pipes ask for.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture.</returns>
    public static Scene Pump(Design design, PaperSize size)
    {
        var (curve, table) = (design.Sizing.Hydraulics.Curve, design.Sizing.Table);
        var lift = design.Choice.Lift.System;
        var mostM3PerH = curve.LargestFlowM3PerS * 3600;
        var series = new List<LineSeries>
        {
            new("pump at rated speed", HeadPoints(mostM3PerH, flow => curve.HeadM(flow, 1))),
        };
        if (table.HighestRatio is > 0 and < 0.995)
        {
            series.Add(
                new(
                    Invariant($"pump at {table.HighestRatio * 100:0} % speed"),
                    HeadPoints(mostM3PerH, flow => curve.HeadM(flow, table.HighestRatio))
                )
            );
        }

        series.Add(new("head asked for", HeadPoints(mostM3PerH, lift.HeadM)));
        return new LineChart(new("flow, m3/h") { From = 0 }, new("head, m") { From = 0 }, series).ToScene(
            size,
            "pump curve and head"
        );
    }

    private static List<ChartPoint> HeadPoints(double mostM3PerH, Func<double, double> headM) =>
        [
            .. Enumerable
                .Range(0, 41)
                .Select(i => mostM3PerH * i / 40)
                .Select(flow => new ChartPoint(flow, headM(flow / 3600)))
                .Where(point => point.Y >= 0),
        ];

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
