using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>
/// How the days of a month spread about its mean clearness by published records, and how far a set of days is from it.
/// </summary>
public static class ClearnessDistribution
{
    /// <summary>Lowest monthly mean clearness that the published spread is used for.</summary>
    public const double LowestMeanRatio = 0.2;

    /// <summary>Clearness of the dullest day of any month.</summary>
    public const double LowestDayRatio = 0.05;

    /// <summary>Clearness of the brightest day of a month.</summary>
    /// <param name="monthMeanRatio">The month's mean clearness, 0.2 to 0.8.</param>
    /// <returns>Clearness.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The clearness is outside its range.</exception>
    /// <source>
    /// Hollands, Huget, Solar Energy 30, 1983; Duffie, Beckman, Solar Engineering of Thermal Processes, equation 2.9.7
    /// (from memory)
    /// </source>
    public static double HighestDayRatio(double monthMeanRatio)
    {
        Within.Require(monthMeanRatio, LowestMeanRatio, DailyClearness.HighestMeanRatio, "");
        return 0.6313 + (0.267 * monthMeanRatio) - (11.9 * Math.Pow(monthMeanRatio - 0.75, 8));
    }

    /// <summary>
    /// How steeply bright days outnumber dull ones: the exponent for which the days between the ends have the month's mean.
    /// </summary>
    /// <param name="monthMeanRatio">The month's mean clearness, 0.2 to 0.8.</param>
    /// <returns>The exponent; negative where dull days are more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The clearness is outside its range.</exception>
    /// <source>Bendt, Collares-Pereira, Rabl, Solar Energy 27, 1981; solved here for the mean itself</source>
    public static double SteepnessCoefficient(double monthMeanRatio)
    {
        var span = HighestDayRatio(monthMeanRatio) - LowestDayRatio;
        var wanted = (monthMeanRatio - LowestDayRatio) / span;

        // The mean rises with the exponent: halving the bracket cannot fail.
        var (low, high) = (-200.0, 200.0);
        for (var round = 0; round < 100; round++)
        {
            var middle = (low + high) / 2;
            (low, high) = MeanShare(middle) < wanted ? (middle, high) : (low, middle);
        }

        return (low + high) / 2 / span;

        // Mean of exp(x u), u from 0 to 1.
        static double MeanShare(double x) => Math.Abs(x) < 1e-6 ? 0.5 + (x / 12) : (1 / -Expm1(-x)) - (1 / x);
    }

    /// <summary>Share of a month's days that are no brighter.</summary>
    /// <param name="dayRatio">Clearness of a day, 0 to 1.</param>
    /// <param name="monthMeanRatio">The month's mean clearness, 0.2 to 0.8.</param>
    /// <returns>Share, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>
    /// Bendt, Collares-Pereira, Rabl, Solar Energy 27, 1981; Duffie, Beckman, Solar Engineering of Thermal Processes,
    /// equation 2.9.4 (from memory)
    /// </source>
    public static double BendtShare(double dayRatio, double monthMeanRatio)
    {
        Within.Require(dayRatio, 0, 1, "");
        return ShareAt(dayRatio, HighestDayRatio(monthMeanRatio), SteepnessCoefficient(monthMeanRatio));
    }

    /// <summary>Kolmogorov and Smirnov's distance of days from the published spread: the largest gap between the shares.</summary>
    /// <param name="dayRatios">Clearness of each day, 0 to 1; at least one day.</param>
    /// <param name="monthMeanRatio">The month's mean clearness, 0.2 to 0.8.</param>
    /// <returns>Distance, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or there is no day.</exception>
    /// <source>Kolmogorov 1933; Smirnov 1948</source>
    public static double GapShare(IReadOnlyList<double> dayRatios, double monthMeanRatio)
    {
        Within.RequireCount(dayRatios.Count, 1, int.MaxValue);
        var (highest, steepness) = (HighestDayRatio(monthMeanRatio), SteepnessCoefficient(monthMeanRatio));
        var gap = 0.0;
        foreach (var (i, dayRatio) in dayRatios.Order().Index())
        {
            Within.Require(dayRatio, 0, 1, "");
            var share = ShareAt(dayRatio, highest, steepness);
            gap = Math.Max(gap, Math.Max(share - ((double)i / dayRatios.Count), ((i + 1.0) / dayRatios.Count) - share));
        }

        return gap;
    }

    /// <summary>Distance that a record of so many independent days would pass in one case of twenty by chance.</summary>
    /// <param name="dayCount">Number of days, 5 to 100000.</param>
    /// <returns>Distance, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    /// <source>Stephens, Journal of the Royal Statistical Society B 32, 1970</source>
    public static double ChanceGapShare(int dayCount)
    {
        Within.RequireCount(dayCount, 5, 100_000);
        var root = Math.Sqrt(dayCount);
        return 1.358 / (root + 0.12 + (0.11 / root));
    }

    private static double ShareAt(double dayRatio, double highest, double steepness)
    {
        var u = Math.Clamp((dayRatio - LowestDayRatio) / (highest - LowestDayRatio), 0, 1);
        var x = steepness * (highest - LowestDayRatio);
        return Math.Abs(x) < 1e-6 ? u
            : x > 0 ? Math.Exp(x * (u - 1)) * Expm1(-x * u) / Expm1(-x)
            : Expm1(x * u) / Expm1(x);
    }

    // exp(x) - 1 without loss of digits near zero.
    private static double Expm1(double x) =>
        Math.Abs(x) < 1e-3 ? x * (1 + (x / 2 * (1 + (x / 3 * (1 + (x / 4)))))) : Math.Exp(x) - 1;
}
