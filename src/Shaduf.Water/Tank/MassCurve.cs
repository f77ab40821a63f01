using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Tank volume from the run of supply and draw through a day.</summary>
public static class MassCurve
{
    /// <summary>Useful volume that carries a repeating day's supply over to its draw.</summary>
    /// <param name="supplyShares">24 shares of the day's supply, sum 1.</param>
    /// <param name="drawShares">24 shares of the day's draw, sum 1.</param>
    /// <returns>Useful volume as a share of the day's volume [share], 0 to 1; taken at the ends of hours.</returns>
    /// <exception cref="ArgumentException">Not 24 shares, a share outside 0 to 1, or a sum that is not 1.</exception>
    /// <source>Rippl 1883, mass curve: largest less smallest of cumulative supply minus draw</source>
    public static double UsefulShare(IReadOnlyList<double> supplyShares, IReadOnlyList<double> drawShares)
    {
        DayShares.Checked(supplyShares, nameof(supplyShares));
        DayShares.Checked(drawShares, nameof(drawShares));
        var (stored, lowest, highest) = (0.0, 0.0, 0.0);
        for (var hour = 0; hour < 24; hour++)
        {
            stored += supplyShares[hour] - drawShares[hour];
            lowest = Math.Min(lowest, stored);
            highest = Math.Max(highest, stored);
        }

        return highest - lowest;
    }
}
