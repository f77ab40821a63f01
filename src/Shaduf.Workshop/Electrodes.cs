using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Stick electrodes to buy for a mass of weld metal.</summary>
public static class Electrodes
{
    /// <summary>Electrodes bought, coating and stubs included.</summary>
    /// <param name="depositKg">Weld metal [kg], 0 to 10000.</param>
    /// <param name="efficiencyShare">Weld metal to electrodes bought, 0.40 to 0.75; 0.55 for planning, 0.62 for rods of 350 mm burnt down to 50 mm.</param>
    /// <returns>Electrodes [kg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Welding makers' planning tables: electrodes = deposit/(1 - loss)</source>
    public static double MassKg(double depositKg, double efficiencyShare)
    {
        Within.Require(depositKg, 0, 10_000, "kg");
        Within.Require(efficiencyShare, 0.40, 0.75, "");
        return depositKg / efficiencyShare;
    }
}
