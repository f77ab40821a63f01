using Shaduf.Working;

namespace Shaduf.Money;

/// <summary>Profit as a share of cost (mark-up) against profit as a share of price (margin).</summary>
public static class MarkUp
{
    /// <summary>Mark-up on cost that leaves a margin on price.</summary>
    /// <param name="marginShare">Profit as a share of price, 0 to 0.9.</param>
    /// <returns>Profit as a share of cost.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>Definitions: price = cost (1 + m) = cost/(1 - g)</source>
    public static double Share(double marginShare)
    {
        Within.Require(marginShare, 0, 0.9, "");
        return marginShare / (1 - marginShare);
    }

    /// <summary>Margin on price that a mark-up on cost leaves.</summary>
    /// <param name="markUpShare">Profit as a share of cost, 0 to 9.</param>
    /// <returns>Profit as a share of price.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>Definitions: price = cost (1 + m) = cost/(1 - g)</source>
    public static double MarginShare(double markUpShare)
    {
        Within.Require(markUpShare, 0, 9, "");
        return markUpShare / (1 + markUpShare);
    }
}
