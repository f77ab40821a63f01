using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>
/// Lightning flashes to ground, estimated from the days on which thunder is heard. A satellite's or a location system's
/// map goes before it. Published rules differ by a fifth: take the largest.
/// </summary>
public static class FlashDensity
{
    /// <summary>The largest of the rules.</summary>
    /// <param name="thunderDays">Days with thunder in a year [days], 0 to 300.</param>
    /// <returns>Flashes to ground [1/km²/year].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The days are outside their range.</exception>
    /// <source>The rules of this class; to take the largest is a judgement, no source.</source>
    public static double LargestPerKm2Year(double thunderDays) =>
        Math.Max(AndersonPerKm2Year(thunderDays), LinearPerKm2Year(thunderDays, 0.12));

    /// <summary>After Anderson and Eriksson.</summary>
    /// <param name="thunderDays">Days with thunder in a year [days], 0 to 300.</param>
    /// <returns>Flashes to ground [1/km²/year].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The days are outside their range.</exception>
    /// <source>Anderson, Eriksson, Electra 69, 1980: 0.04 T^1.25 (from memory).</source>
    public static double AndersonPerKm2Year(double thunderDays)
    {
        Within.Require(thunderDays, 0, 300, "days");
        return 0.04 * Math.Pow(thunderDays, 1.25);
    }

    /// <summary>In proportion to the days.</summary>
    /// <param name="thunderDays">Days with thunder in a year [days], 0 to 300.</param>
    /// <param name="perDayCoefficient">Flashes for one day, 0.01 to 1: 0.1 (EN 62305-2:2006, temperate regions), 0.12 also met.</param>
    /// <returns>Flashes to ground [1/km²/year].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>EN 62305-2:2006, annex A: 0.1 T (looked up).</source>
    public static double LinearPerKm2Year(double thunderDays, double perDayCoefficient)
    {
        Within.Require(thunderDays, 0, 300, "days");
        Within.Require(perDayCoefficient, 0.01, 1, "");
        return perDayCoefficient * thunderDays;
    }
}
