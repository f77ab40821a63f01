using CsCheck;
using Shaduf.Money;

namespace Shaduf.Trades.Tests.Money;

public sealed class LifeCycleCostTests
{
    [Fact]
    public void Sums_of_years_equal_the_factors() =>
        Gen.Select(Gen.Double[0, 0.3], Gen.Double[-0.1, 0.2], Gen.Int[1, 40])
            .Sample(
                (rate, rise, years) =>
                {
                    var plan = new CostPlan(1000, 50, 70, rise, []);
                    var last = (double)LifeCycleCost.Cumulative(plan, rate, years)[^1];
                    var expected =
                        1000
                        + (50 * PresentWorth.YearlyFactor(rate, years))
                        + (70 * PresentWorth.RisingFactor(rate, rise, years));
                    Assert.Equal(expected, last, expected * 1e-9);
                }
            );

    [Fact]
    public void The_closed_form_of_the_rising_factor_agrees_away_from_equal_rates() =>
        Gen.Select(Gen.Double[0.05, 0.3], Gen.Double[-0.1, 0.04], Gen.Int[1, 60])
            .Sample(
                (rate, rise, years) =>
                    Assert.Equal(
                        (1 + rise) * (1 - Math.Pow((1 + rise) / (1 + rate), years)) / (rate - rise),
                        PresentWorth.RisingFactor(rate, rise, years),
                        1e-9
                    )
            );

    [Fact]
    public void Break_even_must_last()
    {
        Assert.Equal(2, LifeCycleCost.BreakEvenYear([10, 11, 12, 13], [5, 9, 12, 15]));
        Assert.Equal(0, LifeCycleCost.BreakEvenYear([1, 2], [3, 4]));
        Assert.Null(LifeCycleCost.BreakEvenYear([10, 11], [5, 6]));

        // Cheaper for a while and dearer again: only the last crossing counts.
        Assert.Equal(3, LifeCycleCost.BreakEvenYear([5, 6, 20, 21], [6, 7, 8, 22]));
        Assert.Throws<ArgumentException>(() => LifeCycleCost.BreakEvenYear([1], [1, 2]));
    }

    [Fact]
    public void What_lives_eight_years_is_bought_twice_in_twenty()
    {
        Assert.Equal([8, 16], LifeCycleCost.Every(8, 20, 1).Select(renewal => renewal.Year));
        Assert.Equal([10], LifeCycleCost.Every(10, 20, 1).Select(renewal => renewal.Year));
        Assert.Equal([3, 5, 8], LifeCycleCost.Every(2.5, 10, 1).Select(renewal => renewal.Year));
        Assert.Empty(LifeCycleCost.Every(25, 20, 1));
    }

    [Fact]
    public void Figures_outside_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PresentWorth.OnceFactor(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PresentWorth.RisingFactor(0.1, -0.6, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => LifeCycleCost.Cumulative(new(0, 0, 0, 0, []), -0.1, 5));
    }
}
