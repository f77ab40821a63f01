using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Wind speeds of one storm, averaged over longer or shorter times.</summary>
public static class WindAveraging
{
    /// <summary>Averaging time of the basic speed [s]: ten minutes.</summary>
    public const double BasicS = 600;

    // Averaging time [s] and largest mean over it, over the mean of the hour.
    private static readonly (double TimeS, double Factor)[] Curve =
    [
        (1, 1.57),
        (3, 1.52),
        (10, 1.43),
        (30, 1.32),
        (60, 1.25),
        (300, 1.10),
        (600, 1.065),
        (3600, 1.0),
    ];

    /// <summary>Largest mean over an averaging time, over the mean of the hour, in open country.</summary>
    /// <param name="timeS">Averaging time [s], 1 to 3,600.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>Durst 1960, as drawn in ASCE 7-16, figure C26.5-1 (points from memory), straight over the logarithm of the time</source>
    public static double HourRatio(double timeS)
    {
        Within.Require(timeS, 1, 3600, "s");
        var above = Math.Max(1, Array.FindIndex(Curve, point => point.TimeS >= timeS));
        var (low, high) = (Curve[above - 1], Curve[above]);
        var share = Math.Log(timeS / low.TimeS) / Math.Log(high.TimeS / low.TimeS);
        return low.Factor + (share * (high.Factor - low.Factor));
    }

    /// <summary>The basic speed v_b (ten-minute mean, 50 years) that a given speed stands for.</summary>
    /// <param name="speedMPerS">Speed 10 m above open country [m/s], 0 to 90.</param>
    /// <param name="timeS">Its averaging time [s], 1 to 3,600.</param>
    /// <param name="returnYears">Its return period [years], 2 to 10,000.</param>
    /// <returns>v_b [m/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Ratio of the two means by <see cref="HourRatio"/>; EN 1991-1-4:2005, 4.2(2) note 4 for the return period</source>
    public static double BasicMPerS(double speedMPerS, double timeS, double returnYears)
    {
        Within.Require(speedMPerS, 0, 90, "m/s");
        return speedMPerS * HourRatio(BasicS) / HourRatio(timeS) / WindPressure.ReturnFactor(returnYears);
    }
}
