using CsCheck;
using Shaduf.Sun;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Sun;

public sealed class DailyClearnessTests
{
    [Fact]
    public void Rows_of_the_library_add_up_to_one_but_for_its_rounding()
    {
        var rows = Csv.Embedded(typeof(DailyClearness).Assembly, "DailyClearnessStep.csv");
        Assert.Equal(100, rows.Count);
        Assert.All(rows, row => Assert.InRange(Enumerable.Range(1, 10).Sum(to => row.Number($"to{to}")), 997, 1002));
    }

    // Spread and memory of each class, worked out apart from this program from the same library.
    [Theory]
    [InlineData(0.29, 0.241, 0.156)]
    [InlineData(0.34, 0.334, 0.166)]
    [InlineData(0.39, 0.374, 0.167)]
    [InlineData(0.44, 0.429, 0.166)]
    [InlineData(0.49, 0.476, 0.167)]
    [InlineData(0.54, 0.526, 0.157)]
    [InlineData(0.59, 0.575, 0.153)]
    [InlineData(0.64, 0.620, 0.136)]
    [InlineData(0.69, 0.668, 0.119)]
    [InlineData(0.74, 0.728, 0.073)]
    public void A_long_sequence_has_the_mean_and_the_spread_of_its_class(
        double monthMeanRatio,
        double expectedMean,
        double expectedDeviation
    )
    {
        var random = new SplitMix64(1);
        var days = new double[200_000];
        var yesterday = monthMeanRatio;
        for (var day = 0; day < days.Length; day++)
        {
            yesterday = days[day] = DailyClearness.NextRatio(monthMeanRatio, yesterday, random.NextShare());
        }

        var mean = days.Average();
        Assert.Equal(expectedMean, mean, 0.003);
        Assert.Equal(expectedDeviation, Math.Sqrt(days.Average(day => (day - mean) * (day - mean))), 0.003);
    }

    [Fact]
    public void A_drawn_day_is_inside_the_library_whatever_the_draw() =>
        Gen.Select(
                Gen.Double[0.05, 0.80],
                Gen.Double[0, 1],
                Gen.OneOf(Gen.Double[0, 1], Gen.Const(0.0), Gen.Const(1.0))
            )
            .Sample(
                (mean, yesterday, draw) => DailyClearness.NextRatio(mean, yesterday, draw) is >= 0.010 and <= 0.866
            );

    [Fact]
    public void A_month_has_exactly_its_mean() =>
        Gen.Select(Gen.Double[0.05, 0.80], Gen.Double[5, 45].Array[28, 31], Gen.ULong)
            .Sample(
                (mean, weights, seed) =>
                {
                    var days = DailyClearness.Month(mean, mean, weights, new(seed));
                    var obtained = days.Zip(weights, (day, weight) => day * weight).Sum() / weights.Sum();
                    return Math.Abs(obtained - mean) < 1e-12 && days.All(day => day is >= 0.009999 and <= 0.865001);
                },
                iter: 300
            );

    [Fact]
    public void The_generator_gives_its_known_numbers()
    {
        // First numbers for the seed 1234567, as widely printed beside the algorithm (from memory).
        var random = new SplitMix64(1234567);
        Assert.Equal(6457827717110365317UL, random.Next());
        Assert.Equal(3203168211198807973UL, random.Next());
        Assert.Equal(9817491932198370423UL, random.Next());
    }

    [Theory]
    [InlineData(0.049)]
    [InlineData(0.801)]
    [InlineData(double.NaN)]
    public void Refuses_a_month_that_no_sky_makes(double monthMeanRatio) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DailyClearness.NextRatio(monthMeanRatio, 0.5, 0.5));
}
