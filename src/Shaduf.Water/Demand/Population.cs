using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>People to be served at the end of the design period.</summary>
public static class Population
{
    /// <summary>Growth by a constant share of those present each year.</summary>
    /// <param name="presentCount">People counted today [count], 0 to 10000000.</param>
    /// <param name="growthPerYearShare">Yearly growth [share], -0.1 to 0.2.</param>
    /// <param name="years">Design period [years], 0 to 100.</param>
    /// <returns>People at the end of the period [count], not rounded.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>P_n = P_0 (1 + r)^n, compound growth; common practice, no source</source>
    public static double GeometricCount(double presentCount, double growthPerYearShare, double years)
    {
        Within.Require(presentCount, 0, 10_000_000, "people");
        Within.Require(growthPerYearShare, -0.1, 0.2, "per year");
        Within.Require(years, 0, 100, "years");
        return presentCount * Math.Pow(1 + growthPerYearShare, years);
    }
}
