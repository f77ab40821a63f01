using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The pump's curves, the head that well and pipes ask for, and where the pump works through the year.</summary>
public static class PumpChart
{
    private const int Steps = 120;
    private const int Bins = 24;
    private const double SmallestMm = 0.4;
    private const double LargestMm = 2.2;

    /// <summary>The picture.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture; a cloud's larger marks are more hours of the year.</returns>
    public static Scene Of(Design design, PaperSize size)
    {
        var (curve, table) = (design.Sizing.Hydraulics.Curve, design.Sizing.Table);
        var mostM3PerH = curve.LargestFlowM3PerS * 3600;
        var series = new List<LineSeries>
        {
            new("pump at rated speed", Heads(mostM3PerH, flow => curve.HeadM(flow, 1))),
        };
        if (table.HighestRatio is > 0 and < 0.995)
        {
            series.Add(AtSpeed(table.HighestRatio));
        }

        if (table.Points.Count > 0 && table.Points[0].Operating.SpeedRatio < table.HighestRatio - 0.02)
        {
            series.Add(AtSpeed(table.Points[0].Operating.SpeedRatio));
        }

        series.Add(new("head asked for", Heads(mostM3PerH, design.Choice.Lift.System.HeadM)));
        if (Cloud(design) is { Points.Count: > 0 } cloud)
        {
            series.Add(cloud);
        }

        return new LineChart(new("flow, m3/h") { From = 0 }, new("head, m") { From = 0 }, series).ToScene(
            size,
            "pump curves and the year's operating points"
        );

        LineSeries AtSpeed(double ratio) =>
            new(
                Invariant($"pump at {ratio * 100:0} % speed"),
                Heads(mostM3PerH * ratio, flow => curve.HeadM(flow, ratio))
            );
    }

    private static List<ChartPoint> Heads(double mostM3PerH, Func<double, double> headM) =>
        [
            .. Enumerable
                .Range(0, Steps + 1)
                .Select(i => mostM3PerH * i / Steps)
                .Select(flow => new ChartPoint(flow, headM(flow / 3600)))
                .Where(point => point.Y >= 0),
        ];

    // The hours in which water flows, gathered by flow; the size of a mark tells how many.
    private static LineSeries Cloud(Design design)
    {
        var table = design.Sizing.Table;
        var bins = design
            .Trace.ArrayW.Select(table.FlowM3PerH)
            .Where(flow => flow > 0)
            .GroupBy(flow => Math.Min(Bins - 1, (int)(flow / table.FullFlowM3PerH * Bins)))
            .Select(bin => (FlowM3PerH: bin.Average(), Hours: bin.Count()))
            .OrderByDescending(bin => bin.Hours)
            .ToList();
        var most = bins.Count > 0 ? bins[0].Hours : 1;
        return new(
            "hours of the year, larger for more",
            [
                .. bins.Select(bin => new ChartPoint(
                    bin.FlowM3PerH,
                    design.Choice.Lift.System.HeadM(bin.FlowM3PerH / 3600)
                )),
            ]
        )
        {
            CloudMm =
            [
                .. bins.Select(bin => SmallestMm + ((LargestMm - SmallestMm) * Math.Sqrt((double)bin.Hours / most))),
            ],
        };
    }
}
