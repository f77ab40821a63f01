using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The chosen tilt beside others.</summary>
public static class FacingChart
{
    /// <summary>What the chosen array would do at other tilts.</summary>
    /// <param name="facing">The table of facings.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture.</returns>
    public static Scene Of(FacingTable facing, PaperSize size)
    {
        List<ChartPoint> Points(Func<FacingRow, double> share) =>
            [.. facing.Rows.Select(row => new ChartPoint(row.Facing.TiltDeg, 100 * share(row)))];
        var percent = facing
            .Rows.Append(facing.Chosen)
            .SelectMany(row => new[] { row.LightShare, row.MetShare })
            .ToList();
        return new LineChart(
            new("tilt, deg")
            {
                From = 0,
                To = facing.Rows[^1].Facing.TiltDeg,
                Step = 5,
            },
            new("worst month, %")
            {
                From = Math.Floor(10 * percent.Min()) * 10,
                To = Math.Ceiling(10 * percent.Max()) * 10,
            },
            [
                new("light for the demand, of the chosen plane's", Points(row => row.LightShare)),
                new("demand met by this array", Points(row => row.MetShare)),
                new("chosen", [new(facing.Chosen.Facing.TiltDeg, 100 * facing.Chosen.MetShare)]),
            ]
        ).ToScene(size, "worst month by tilt");
    }
}
