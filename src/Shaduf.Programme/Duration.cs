using Shaduf.Working;

namespace Shaduf.Programme;

/// <summary>How long a quantity of work takes a crew.</summary>
public static class Duration
{
    /// <summary>Shortest time that is planned for anything; common practice, no source [d].</summary>
    public const double LeastDays = 0.5;

    /// <summary>Factor on work in thin air or in heat above 35 °C; judgement, no source.</summary>
    public const double HardshipFactor = 1.2;

    /// <summary>Working days that a quantity takes, in steps of half a day.</summary>
    /// <param name="unitCount">Quantity, counted in its unit, 0 to 1000000.</param>
    /// <param name="eachDays">Work of one person for one unit [d], 0 to 1000.</param>
    /// <param name="peopleCount">People who can work at it at once, 1 to 1000.</param>
    /// <param name="factor">Factor for hardship, 0.1 to 10.</param>
    /// <returns>Days; 0 where there is nothing to do, otherwise at least half a day [d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>D = Q p/n; steps of half a day: common practice, no source</source>
    public static double Days(double unitCount, double eachDays, int peopleCount, double factor = 1)
    {
        Within.Require(unitCount, 0, 1_000_000, "");
        Within.Require(eachDays, 0, 1000, "d");
        Within.RequireCount(peopleCount, 1, 1000);
        Within.Require(factor, 0.1, 10, "");
        var days = unitCount * eachDays * factor / peopleCount;

        // A hair over a step is the rounding of the machine, not work.
        return Math.Ceiling((days / LeastDays) - 1e-9) * LeastDays;
    }
}
