using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Water that is pumped but does not reach the users.</summary>
public static class Losses
{
    /// <summary>What must be pumped when a share of the pumped water is lost.</summary>
    /// <param name="netM3">Water delivered to users [m3], 0 to 1000000.</param>
    /// <param name="lossShare">Lost share of the production, not of the delivery [share], 0 to 0.9.</param>
    /// <returns>Production [m3].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Q_prod = Q_net/(1 - L), the convention of non-revenue water; common practice, no source</source>
    public static double ProductionM3(double netM3, double lossShare)
    {
        Within.Require(netM3, 0, 1_000_000, "m3");
        Within.Require(lossShare, 0, 0.9, "of production");
        return netM3 / (1 - lossShare);
    }

    /// <summary>Turns a mark-up on the delivery, the other convention in use, into a share of the production.</summary>
    /// <param name="markUpShare">Loss as a share of the delivery [share], 0 to 9.</param>
    /// <returns>Loss as a share of the production [share].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>L = m/(1 + m), from Q_net (1 + m) = Q_net/(1 - L)</source>
    public static double ShareFromMarkUp(double markUpShare)
    {
        Within.Require(markUpShare, 0, 9, "of delivery");
        return markUpShare / (1 + markUpShare);
    }
}
