using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Water;

internal static class DayShares
{
    private const double SumTolerance = 1e-6;

    public static TShares Checked<TShares>(TShares shares, string name)
        where TShares : IReadOnlyList<double>
    {
        if (shares.Count != 24)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{name} has {shares.Count} shares; a day has 24"),
                name
            );
        }

        var sum = 0.0;
        foreach (var share in shares)
        {
            Within.Require(share, 0, 1, "of the day", name);
            sum += share;
        }

        return Math.Abs(sum - 1) <= SumTolerance
            ? shares
            : throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{name} sums to {sum}; accepted: 1"),
                name
            );
    }
}
