using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

/// <summary>The generated days against the published spread of days: Kolmogorov and Smirnov's distance.</summary>
public sealed class ClearnessDistributionTests(ITestOutputHelper output)
{
    // The bound is the distance that one month's record of 31 days passes by chance in one case of twenty: nearer than
    // any one month on the ground could tell.
    [Theory]
    [InlineData(0.25)]
    [InlineData(0.30)]
    [InlineData(0.35)]
    [InlineData(0.40)]
    [InlineData(0.45)]
    [InlineData(0.50)]
    [InlineData(0.55)]
    [InlineData(0.60)]
    [InlineData(0.65)]
    [InlineData(0.70)]
    [InlineData(0.75)]
    public void Generated_months_are_nearer_to_the_published_spread_than_a_month_can_tell(double meanRatio)
    {
        var weights = Enumerable.Repeat(1.0, 31).ToArray();
        var random = new SplitMix64(1);
        var days = new List<double>();
        for (var month = 0; month < 400; month++)
        {
            days.AddRange(DailyClearness.Month(meanRatio, days.Count > 0 ? days[^1] : meanRatio, weights, random));
        }

        var gap = ClearnessDistribution.GapShare(days, meanRatio);
        output.WriteLine(FormattableString.Invariant($"mean {meanRatio:0.00}: gap {gap:0.000}"));
        Assert.InRange(gap, 0, ClearnessDistribution.ChanceGapShare(31));
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(0.35)]
    [InlineData(0.5)]
    [InlineData(0.65)]
    [InlineData(0.8)]
    public void The_published_spread_has_the_months_mean(double meanRatio)
    {
        const int steps = 20_000;
        var mean = Enumerable
            .Range(0, steps)
            .Sum(i => (1 - ClearnessDistribution.BendtShare((i + 0.5) / steps, meanRatio)) / steps);
        Assert.Equal(meanRatio, mean, 1e-5);
    }

    [Fact]
    public void Days_drawn_from_the_spread_itself_are_at_no_distance_and_equal_days_far_off()
    {
        double[] even = [.. Enumerable.Range(0, 200).Select(i => Day((i + 0.5) / 200))];
        Assert.InRange(ClearnessDistribution.GapShare(even, 0.5), 0, 0.006);
        Assert.InRange(ClearnessDistribution.GapShare([.. Enumerable.Repeat(0.5, 31)], 0.5), 0.4, 1);

        static double Day(double share)
        {
            var (low, high) = (0.0, 1.0);
            for (var i = 0; i < 60; i++)
            {
                var middle = (low + high) / 2;
                (low, high) = ClearnessDistribution.BendtShare(middle, 0.5) < share ? (middle, high) : (low, middle);
            }

            return low;
        }
    }
}
