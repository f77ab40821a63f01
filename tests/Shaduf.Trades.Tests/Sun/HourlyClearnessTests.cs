using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class HourlyClearnessTests
{
    [Fact]
    public void The_hours_of_a_day_have_exactly_its_clearness() =>
        Gen.Select(Gen.Double[0.01, 0.866], Gen.Double[25, 175], Gen.ULong)
            .Sample(
                (dayRatio, sunsetDeg, seed) =>
                {
                    var hours = Hours(sunsetDeg);
                    var ratios = HourlyClearness.Day(dayRatio, hours, new(seed));
                    var mean =
                        ratios.Zip(hours, (ratio, hour) => ratio * hour.AboveWPerM2).Sum()
                        / hours.Sum(hour => hour.AboveWPerM2);
                    return Math.Abs(mean - dayRatio) < 1e-12 && ratios.All(ratio => ratio is >= 0 and < 1);
                },
                iter: 3000
            );

    // The mean of many days against the published profile of mean days, hour by hour as a share of the day.
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [InlineData(0.7)]
    public void Many_days_together_follow_the_mean_profile(double dayRatio)
    {
        var hours = Hours(90);
        var random = new SplitMix64(1);
        var sums = new double[hours.Length];
        for (var day = 0; day < 4000; day++)
        {
            var ratios = HourlyClearness.Day(dayRatio, hours, random);
            for (var i = 0; i < sums.Length; i++)
            {
                sums[i] += ratios[i] * hours[i].AboveWPerM2;
            }
        }

        for (var i = 0; i < sums.Length; i++)
        {
            var share = DailyProfile.NormalisedShare(15 * (hours[i].SolarTimeH - 12), 90);
            Assert.Equal(share, sums[i] / sums.Sum(), 0.01);
        }
    }

    [Fact]
    public void The_scatter_is_that_of_the_formula_and_remembers_the_hour_before()
    {
        var hours = Hours(90);
        var random = new SplitMix64(2);
        var noons = new List<(double Eleven, double Noon)>();
        for (var day = 0; day < 20_000; day++)
        {
            var ratios = HourlyClearness.Day(0.45, hours, random);
            noons.Add((ratios[5], ratios[6]));
        }

        var (meanEleven, meanNoon) = (noons.Average(day => day.Eleven), noons.Average(day => day.Noon));
        var deviation = Math.Sqrt(noons.Average(day => Math.Pow(day.Noon - meanNoon, 2)));
        var memory = noons.Average(day => (day.Noon - meanNoon) * (day.Eleven - meanEleven)) / (deviation * deviation);

        // Scaling the day to its sum takes some of both away.
        var whole = HourlyClearness.DeviationRatio(0.45, 82);
        Assert.InRange(deviation, 0.7 * whole, whole);
        Assert.InRange(memory, 0.1, HourlyClearness.MemoryCoefficient(0.45));
    }

    // Equinox at the equator-like day of the given half length: height by the cosine of the hour angle.
    private static LitHour[] Hours(double sunsetDeg) =>
        [
            .. Enumerable
                .Range(0, 24)
                .Select(hour => hour + 0.5)
                .Where(solarTimeH => Math.Abs(15 * (solarTimeH - 12)) < sunsetDeg)
                .Select(solarTimeH =>
                {
                    var height = Math.Max(
                        0.001,
                        Math.Cos(15 * (solarTimeH - 12) * Math.PI / 180) - Math.Cos(sunsetDeg * Math.PI / 180)
                    );
                    var sine = Math.Min(1, height);
                    return new LitHour(Math.Asin(sine) * 180 / Math.PI, solarTimeH, 1361 * sine);
                }),
        ];
}
