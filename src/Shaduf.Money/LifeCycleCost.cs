using Shaduf.Working;

namespace Shaduf.Money;

/// <summary>Something bought again during the years.</summary>
/// <param name="Year">Year in which it is bought, counted from the start; 1 is the end of the first year.</param>
/// <param name="Amount">Its price today.</param>
public readonly record struct Renewal(int Year, decimal Amount);

/// <summary>What one way of doing a job costs over the years, in prices of today.</summary>
/// <param name="Capital">Paid at the start.</param>
/// <param name="CarePerYear">Care and repair each year; the price keeps pace with others.</param>
/// <param name="FuelPerYear">Fuel each year at the price of today.</param>
/// <param name="FuelRisePerYear">Rise of the fuel's price beyond inflation [1/year]; already paid in the first year.</param>
/// <param name="Renewals">What is bought again.</param>
public sealed record CostPlan(
    decimal Capital,
    decimal CarePerYear,
    decimal FuelPerYear,
    double FuelRisePerYear,
    IReadOnlyList<Renewal> Renewals
);

/// <summary>The cost of owning and running over the years, as its worth today. What is left at the end counts nothing.</summary>
public static class LifeCycleCost
{
    /// <summary>Cost from the start to the end of each year, as its worth today.</summary>
    /// <param name="plan">The costs.</param>
    /// <param name="ratePerYear">Real rate [1/year], 0 to 1.</param>
    /// <param name="yearCount">Number of years, 1 to 100.</param>
    /// <returns>One amount more than years: the capital first, the whole cost last.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>LCC = capital + present worth of care, fuel and renewals; US national laboratories' practice for photovoltaic systems, salvage left out</source>
    public static IReadOnlyList<decimal> Cumulative(CostPlan plan, double ratePerYear, int yearCount)
    {
        Within.RequireCount(yearCount, 1, 100);
        Within.Require(plan.FuelRisePerYear, -0.5, 1, "1/year");
        var sums = new List<decimal> { plan.Capital };
        for (var year = 1; year <= yearCount; year++)
        {
            var fuel = plan.FuelPerYear * (decimal)Math.Pow(1 + plan.FuelRisePerYear, year);
            var renewed = plan.Renewals.Where(renewal => renewal.Year == year).Sum(renewal => renewal.Amount);
            var worth = (decimal)PresentWorth.OnceFactor(ratePerYear, year);
            sums.Add(sums[^1] + ((plan.CarePerYear + fuel + renewed) * worth));
        }

        return sums;
    }

    /// <summary>The year by whose end one way has cost no more than another, and stays so.</summary>
    /// <param name="one">Cost of the one, by year, the start first.</param>
    /// <param name="other">Cost of the other.</param>
    /// <returns>The year, 0 when it is cheaper from the start; null when it never is.</returns>
    /// <exception cref="ArgumentException">Not the same number of years.</exception>
    /// <source>crossing of two cumulative costs</source>
    public static int? BreakEvenYear(IReadOnlyList<decimal> one, IReadOnlyList<decimal> other)
    {
        if (one.Count != other.Count)
        {
            throw new ArgumentException("The two costs cover different numbers of years.", nameof(other));
        }

        var lastDearer = Enumerable.Range(0, one.Count).LastOrDefault(year => one[year] > other[year], -1);
        return lastDearer + 1 < one.Count ? lastDearer + 1 : null;
    }

    /// <summary>Years in which something that lasts some years is bought again before the end.</summary>
    /// <param name="lifeYears">How long it lasts [years], 0.5 to 100.</param>
    /// <param name="yearCount">Number of years, 1 to 100.</param>
    /// <param name="amount">Its price today.</param>
    /// <returns>The renewals; none in the last year.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>each time a whole life has passed, at the end of the year in which it passes; common practice, no source</source>
    public static IReadOnlyList<Renewal> Every(double lifeYears, int yearCount, decimal amount)
    {
        Within.Require(lifeYears, 0.5, 100, "years");
        Within.RequireCount(yearCount, 1, 100);
        return
        [
            .. Enumerable
                .Range(1, (int)Math.Ceiling(yearCount / lifeYears))
                .Select(i => new Renewal((int)Math.Ceiling((i * lifeYears) - 1e-9), amount))
                .Where(renewal => renewal.Year < yearCount),
        ];
    }
}
