using Shaduf.Pack;
using static System.FormattableString;

namespace Shaduf.Bench.Steel;

/// <summary>How the time of a rack grows with its members, in one go and without a harness: table, exponent and plot.</summary>
internal static class RackGrowth
{
    private static readonly int[] Bays = [10, 16, 32, 64, 128, 256, 512, 1000];

    /// <summary>Measures and writes.</summary>
    /// <param name="plot">Path of the SVG.</param>
    public static void Write(string plot)
    {
        var points = Bays.Select(Measured).ToList();
        var exponent = Slope(points);
        foreach (var (members, ms) in points)
        {
            Console.WriteLine(Invariant($"| {members:#,0} | {ms:0.00} ms | {ms * 1000 / members:0} us |"));
        }

        Console.WriteLine(Invariant($"exponent {exponent:0.00}"));
        var chart = new LineChart(
            new("members, logarithm to base 10")
            {
                From = 1.5,
                To = 4,
                Step = 0.5,
            },
            new("processor time in ms, logarithm to base 10")
            {
                From = -0.5,
                To = 4,
                Step = 0.5,
            },
            [
                new("measured", [.. points.Select(p => new ChartPoint(Math.Log10(p.Members), Math.Log10(p.Ms)))]),
                new("growth with the power of 1.5, which is asked for at most", [.. Asked(points)]),
            ]
        );
        File.WriteAllText(
            plot,
            SvgRenderer.Write(
                chart.ToScene(new(150, 90), Invariant($"time of a rack over its members, exponent {exponent:0.00}"))
            )
        );
    }

    private static IEnumerable<ChartPoint> Asked(List<(int Members, double Ms)> points)
    {
        var (from, to) = (Math.Log10(points[0].Members), Math.Log10(points[^1].Members));
        var ms = Math.Log10(points[0].Ms);
        yield return new(from, ms);
        yield return new(to, ms + (1.5 * (to - from)));
    }

    private static (int Members, double Ms) Measured(int bays)
    {
        var rack = new BayRack(bays);
        return (rack.MemberCount, ProcessorTime.Of(() => rack.WorstUse()).LeastMs);
    }

    // Least squares of the logarithms.
    private static double Slope(List<(int Members, double Ms)> points)
    {
        var (x, y) = (points.Average(p => Math.Log(p.Members)), points.Average(p => Math.Log(p.Ms)));
        return points.Sum(p => (Math.Log(p.Members) - x) * (Math.Log(p.Ms) - y))
            / points.Sum(p => Math.Pow(Math.Log(p.Members) - x, 2));
    }
}
