using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>The day of the year on which most water is asked for.</summary>
public static class PeakDay
{
    /// <summary>Water on the peak day.</summary>
    /// <param name="meanM3PerDay">Mean day of the largest month [m3/d], 0 to 1000000.</param>
    /// <param name="peakDayFactor">Peak day over mean day, 1 to 2; usual 1.1 to 1.3.</param>
    /// <returns>Water [m3/d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Q_day,max = k_d Q, k_d 1.1 to 1.3, IRC Technical Paper Series 40 style; from memory</source>
    public static double M3PerDay(double meanM3PerDay, double peakDayFactor)
    {
        Within.Require(meanM3PerDay, 0, 1_000_000, "m3/d");
        Within.Require(peakDayFactor, 1, 2, "times the mean day");
        return meanM3PerDay * peakDayFactor;
    }

    /// <summary>Taps that a number of people needs.</summary>
    /// <param name="peopleCount">People, 0 to 10000000.</param>
    /// <returns>Taps [count].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>Sphere Handbook 2018, water supply standard 2.1: 250 people a tap of 7.5 L/min open eight hours a day</source>
    public static double TapCount(double peopleCount)
    {
        Within.Require(peopleCount, 0, 10_000_000, "people");
        return Math.Ceiling(peopleCount / 250);
    }
}
