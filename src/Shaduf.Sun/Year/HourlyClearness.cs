using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>
/// Clearness of the hours of a day (global over extraterrestrial irradiation): a mean that follows the sun's height, and
/// about it a scatter that remembers the hour before.
/// </summary>
public static class HourlyClearness
{
    /// <summary>Highest clearness of a day that the formulas are used for.</summary>
    public const double HighestDayRatio = 0.9;

    private const int MostDraws = 20;

    /// <summary>Mean clearness of the hours in which the sun stands at a height.</summary>
    /// <param name="dayRatio">The day's clearness, 0 to 0.9.</param>
    /// <param name="elevationDeg">Height of the sun in the middle of the hour [deg], 0 to 90.</param>
    /// <returns>Mean clearness.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Aguiar, Collares-Pereira, Solar Energy 49(3), 1992</source>
    public static double MeanRatio(double dayRatio, double elevationDeg)
    {
        Require(dayRatio, elevationDeg);
        var floor = -0.19 + (1.12 * dayRatio) + (0.24 * Math.Exp(-8 * dayRatio));
        var rise = 0.32 - (1.6 * (dayRatio - 0.5) * (dayRatio - 0.5));
        var depth = 0.19 + (2.27 * dayRatio * dayRatio) - (2.51 * dayRatio * dayRatio * dayRatio);
        return floor + (rise * Math.Exp(-depth / Angle.Sin(elevationDeg)));
    }

    /// <summary>Standard deviation of the hours about their mean.</summary>
    /// <param name="dayRatio">The day's clearness, 0 to 0.9.</param>
    /// <param name="elevationDeg">Height of the sun in the middle of the hour [deg], 0 to 90.</param>
    /// <returns>Standard deviation of clearness.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Aguiar, Collares-Pereira, Solar Energy 49(3), 1992</source>
    public static double DeviationRatio(double dayRatio, double elevationDeg)
    {
        Require(dayRatio, elevationDeg);
        var size = 0.14 * Math.Exp(-20 * (dayRatio - 0.35) * (dayRatio - 0.35));
        var growth = (3 * (dayRatio - 0.45) * (dayRatio - 0.45)) + (16 * Math.Pow(dayRatio, 5));
        return size * Math.Exp(growth * (1 - Angle.Sin(elevationDeg)));
    }

    /// <summary>How much of an hour's scatter the next hour keeps.</summary>
    /// <param name="dayRatio">The day's clearness, 0 to 0.9.</param>
    /// <returns>Correlation of an hour with the next.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The clearness is outside its range.</exception>
    /// <source>Aguiar, Collares-Pereira, Solar Energy 49(3), 1992</source>
    public static double MemoryCoefficient(double dayRatio)
    {
        Require(dayRatio, 0);
        return 0.38 + (0.06 * Math.Cos((7.4 * dayRatio) - 2.5));
    }

    /// <summary>Clearness that no hour passes.</summary>
    /// <param name="solarTimeH">Solar time in the middle of the hour [h], 0 to 24.</param>
    /// <returns>Highest clearness.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside its range.</exception>
    /// <source>Aguiar, Collares-Pereira, Solar Energy 49(3), 1992</source>
    public static double HighestRatio(double solarTimeH)
    {
        Within.Require(solarTimeH, 0, 24, "h");
        return 0.88 * Math.Cos(Math.PI * (solarTimeH - 12) / 30);
    }

    /// <summary>
    /// The hours of a day, whose mean weighted by the sun above the air is exactly the day's clearness. On a day clearer
    /// than its hours may be together their ends are raised alike.
    /// </summary>
    /// <param name="dayRatio">The day's clearness, above 0 to 0.9.</param>
    /// <param name="hours">The day's sunlit hours in order.</param>
    /// <param name="random">Where the random numbers come from.</param>
    internal static double[] Day(double dayRatio, ReadOnlySpan<LitHour> hours, SplitMix64 random)
    {
        var ratios = new double[hours.Length];
        Span<double> weights = stackalloc double[hours.Length];
        Span<double> lowest = stackalloc double[hours.Length];
        Span<double> highest = stackalloc double[hours.Length];
        var (mostSum, weightSum) = (0.0, 0.0);
        for (var i = 0; i < hours.Length; i++)
        {
            weights[i] = hours[i].AboveWPerM2;
            highest[i] = HighestRatio(hours[i].SolarTimeH);
            weightSum += weights[i];
            mostSum += highest[i] * weights[i];
        }

        var raise = Math.Max(1, dayRatio * weightSum / mostSum * (1 + 1e-9));
        var memory = MemoryCoefficient(dayRatio);
        var scatter = random.NextNormal();
        for (var i = 0; i < hours.Length; i++)
        {
            highest[i] *= raise;
            var mean = Math.Min(MeanRatio(dayRatio, hours[i].ElevationDeg), highest[i]);
            var deviation = DeviationRatio(dayRatio, hours[i].ElevationDeg);
            (ratios[i], scatter) = Draw(mean, deviation, memory * scatter, memory, highest[i], random);
        }

        HeldScale.To(ratios, weights, dayRatio, lowest, highest);
        return ratios;
    }

    // Drawn anew while outside the ends, as the source does; the mean itself when that does not help.
    private static (double Ratio, double Scatter) Draw(
        double mean,
        double deviation,
        double kept,
        double memory,
        double highest,
        SplitMix64 random
    )
    {
        for (var draw = 0; draw < MostDraws; draw++)
        {
            var scatter = kept + (Math.Sqrt(1 - (memory * memory)) * random.NextNormal());
            var ratio = mean + (deviation * scatter);
            if (ratio >= 0 && ratio <= highest)
            {
                return (ratio, scatter);
            }
        }

        return (mean, 0);
    }

    private static void Require(double dayRatio, double elevationDeg)
    {
        Within.Require(dayRatio, 0, HighestDayRatio, "");
        Within.Require(elevationDeg, 0, 90, "deg");
    }
}

/// <summary>A sunlit hour, or the sunlit part of one.</summary>
/// <param name="ElevationDeg">Height of the sun in its middle [deg], 0 to 90.</param>
/// <param name="SolarTimeH">Solar time in its middle [h], 0 to 24.</param>
/// <param name="AboveWPerM2">Extraterrestrial irradiance on the horizontal, mean of the hour [W/m2].</param>
internal readonly record struct LitHour(double ElevationDeg, double SolarTimeH, double AboveWPerM2);
