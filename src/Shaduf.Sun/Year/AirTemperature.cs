using System.Collections.Immutable;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Air temperature by the hour from twelve monthly means.</summary>
public static class AirTemperature
{
    private const double MeanToleranceK = 1e-10;

    /// <summary>How far the air is from its daily mean, as a share of the day's swing.</summary>
    /// <param name="solarTimeH">Solar time [h], -12 to 36; a time outside 0 to 24 is that of the day before or after.</param>
    /// <returns>Share of the swing, -0.46 to 0.53; its mean over 24 hours is zero.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside its range.</exception>
    /// <source>Erbs, Klein, Beckman, ASHRAE Journal, June 1983 (coefficients from memory)</source>
    public static double DailyShapeShare(double solarTimeH)
    {
        Within.Require(solarTimeH, -12, 36, "h");
        var s = 2 * Math.PI * (solarTimeH - 1) / 24;
        return (0.4632 * Math.Cos(s - 3.805))
            + (0.0984 * Math.Cos((2 * s) - 0.360))
            + (0.0168 * Math.Cos((3 * s) - 0.822))
            + (0.0138 * Math.Cos((4 * s) - 3.513));
    }

    /// <summary>
    /// Swing of the air over the day, peak to peak, in a month of given clearness. Below a clearness of 0.202 the source's
    /// line would turn negative: there the swing is zero.
    /// </summary>
    /// <param name="monthMeanRatio">The month's mean clearness, 0 to 1.</param>
    /// <returns>Swing [K].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The clearness is outside its range.</exception>
    /// <source>Erbs, Klein, Beckman, ASHRAE Journal, June 1983 (coefficients from memory)</source>
    public static double DailySwingK(double monthMeanRatio)
    {
        Within.Require(monthMeanRatio, 0, 1, "");
        return Math.Max(0, (25.8 * monthMeanRatio) - 5.21);
    }

    /// <summary>
    /// Daily means on a smooth curve round the year (cubic through mid-months, the last month joined to the first) whose
    /// monthly means are the ones given, within 1e-10 K.
    /// </summary>
    /// <param name="monthlyDegC">Twelve monthly means [degC], -50 to 50.</param>
    /// <returns>Daily means [degC], 365 values.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are not twelve means, or one is outside its range.</exception>
    /// <exception cref="ArithmeticException">The curve does not settle on the means.</exception>
    /// <source>Catmull, Rom 1974 for the curve; restoring the means: worked out here</source>
    public static ImmutableArray<double> DailyMeansDegC(IReadOnlyList<double> monthlyDegC)
    {
        Within.RequireCount(monthlyDegC.Count, 12, 12);
        foreach (var monthDegC in monthlyDegC)
        {
            Within.Require(monthDegC, -50, 50, "degC");
        }

        var knotsDegC = monthlyDegC.ToArray();
        const int mostRounds = 200; // Each round more than halves what is missing.
        for (var round = 0; round < mostRounds; round++)
        {
            double[] daysDegC = [.. Enumerable.Range(0, 12).SelectMany(month => MonthOnCurve(knotsDegC, month))];
            if (MoveKnots(knotsDegC, daysDegC, monthlyDegC) < MeanToleranceK)
            {
                return [.. daysDegC];
            }
        }

        throw new ArithmeticException("The curve of daily temperature does not settle on the monthly means.");
    }

    // Moves each month's knot by what its mean lacks; gives the largest gap that was found [K].
    private static double MoveKnots(double[] knotsDegC, double[] daysDegC, IReadOnlyList<double> monthlyDegC)
    {
        var largestGapK = 0.0;
        for (var month = 0; month < 12; month++)
        {
            var days = daysDegC.AsSpan(YearCalendar.FirstDays[month], YearCalendar.DaysInMonth[month]);
            var gapK = monthlyDegC[month] - Mean(days);
            knotsDegC[month] += gapK;
            largestGapK = Math.Max(largestGapK, Math.Abs(gapK));
        }

        return largestGapK;
    }

    // Days of a month on the curve: the months' middles lie 1 apart, whatever their lengths.
    private static IEnumerable<double> MonthOnCurve(double[] knotsDegC, int month)
    {
        var dayCount = YearCalendar.DaysInMonth[month];
        for (var day = 0; day < dayCount; day++)
        {
            var fromMiddle = ((day + 0.5) / dayCount) - 0.5;
            var left = fromMiddle < 0 ? month + 11 : month + 12;
            var x = fromMiddle < 0 ? fromMiddle + 1 : fromMiddle;
            var (before, start) = (knotsDegC[(left - 1) % 12], knotsDegC[left % 12]);
            var (end, after) = (knotsDegC[(left + 1) % 12], knotsDegC[(left + 2) % 12]);
            yield return start
                + (
                    x
                    / 2
                    * (
                        end
                        - before
                        + (x * ((2 * before) - (5 * start) + (4 * end) - after))
                        + (x * x * ((3 * (start - end)) + after - before))
                    )
                );
        }
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }
}
