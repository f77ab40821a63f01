using Shaduf.Working;

namespace Shaduf.Money;

/// <summary>
/// What later money is worth today. All in real terms: prices of today, and a rate from which inflation has been taken
/// out. Money is counted at the end of each year.
/// </summary>
public static class PresentWorth
{
    private const double MostPerYear = 1;
    private const int MostYears = 100;

    /// <summary>Rate of interest with inflation taken out.</summary>
    /// <param name="nominalPerYear">Rate as the bank quotes it [1/year], 0 to 1.</param>
    /// <param name="inflationPerYear">Inflation [1/year], 0 to 1.</param>
    /// <returns>Real rate [1/year].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>Fisher: 1 + i = (1 + i_nominal)/(1 + inflation)</source>
    public static double RealPerYear(double nominalPerYear, double inflationPerYear)
    {
        Within.Require(nominalPerYear, 0, MostPerYear, "1/year");
        Within.Require(inflationPerYear, 0, MostPerYear, "1/year");
        return ((1 + nominalPerYear) / (1 + inflationPerYear)) - 1;
    }

    /// <summary>Worth today of one unit of money paid once.</summary>
    /// <param name="ratePerYear">Real rate [1/year], 0 to 1.</param>
    /// <param name="year">Year of the payment, 0 to 100.</param>
    /// <returns>Factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>P/F = 1/(1 + i)^n, compound interest</source>
    public static double OnceFactor(double ratePerYear, int year)
    {
        Within.Require(ratePerYear, 0, MostPerYear, "1/year");
        Within.RequireCount(year, 0, MostYears);
        return Math.Pow(1 + ratePerYear, -year);
    }

    /// <summary>Worth today of one unit of money paid each year.</summary>
    /// <param name="ratePerYear">Real rate [1/year], 0 to 1.</param>
    /// <param name="yearCount">Number of years, 1 to 100.</param>
    /// <returns>Factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>P/A = (1 - (1 + i)^-n)/i, compound interest; n without interest</source>
    public static double YearlyFactor(double ratePerYear, int yearCount) => RisingFactor(ratePerYear, 0, yearCount);

    /// <summary>Equal payment each year that pays off one unit of money had today.</summary>
    /// <param name="ratePerYear">Real rate [1/year], 0 to 1.</param>
    /// <param name="yearCount">Number of years, 1 to 100.</param>
    /// <returns>Factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>A/P = 1/(P/A), compound interest</source>
    public static double RecoveryFactor(double ratePerYear, int yearCount) => 1 / YearlyFactor(ratePerYear, yearCount);

    /// <summary>Worth today of a payment each year whose price rises faster than others: the first is 1 + e.</summary>
    /// <param name="ratePerYear">Real rate [1/year], 0 to 1.</param>
    /// <param name="risePerYear">Rise of the price beyond inflation [1/year], -0.5 to 1.</param>
    /// <param name="yearCount">Number of years, 1 to 100.</param>
    /// <returns>Factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>sum of ((1 + e)/(1 + i))^t, t = 1..n: (1 + e)(1 - ((1 + e)/(1 + i))^n)/(i - e); n when i = e</source>
    public static double RisingFactor(double ratePerYear, double risePerYear, int yearCount)
    {
        Within.Require(ratePerYear, 0, MostPerYear, "1/year");
        Within.Require(risePerYear, -0.5, MostPerYear, "1/year");
        Within.RequireCount(yearCount, 1, MostYears);

        // Summed rather than closed: near i = e the closed form is the difference of two large figures.
        var step = (1 + risePerYear) / (1 + ratePerYear);
        var (sum, factor) = (0.0, 1.0);
        for (var year = 1; year <= yearCount; year++)
        {
            factor *= step;
            sum += factor;
        }

        return sum;
    }
}
