using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Kind of battery.</summary>
public enum BatteryKind
{
    /// <summary>Lithium iron phosphate.</summary>
    LithiumIronPhosphate,

    /// <summary>Lead and acid, sealed or flooded.</summary>
    LeadAcid,
}

/// <summary>The battery that carries a lamp through nights without sun.</summary>
public static class LampBattery
{
    /// <summary>Part of the capacity that may be drawn each time, for planning.</summary>
    /// <param name="kind">Kind of battery.</param>
    /// <returns>Share of the capacity.</returns>
    /// <source>Planning values of practice to IEEE 1562 and IEC 61427 (from memory); the maker's sheet decides.</source>
    public static double DepthShare(BatteryKind kind) => kind == BatteryKind.LeadAcid ? 0.5 : 0.8;

    /// <summary>Capacity left in the cold.</summary>
    /// <param name="kind">Kind of battery.</param>
    /// <param name="degC">Coldest battery [°C], -60 to 40.</param>
    /// <returns>Share of the capacity at 25 °C: lead falls by 0.6 % a degree to 0.85 at 0 °C; lithium is taken as whole.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    /// <source>Lead 0.85 at 0 °C (from memory), in between and below in proportion; the maker's sheet decides.</source>
    public static double ColdShare(BatteryKind kind, double degC)
    {
        Within.Require(degC, -60, 40, "°C");
        return kind == BatteryKind.LeadAcid ? Math.Min(1, 1 - (0.006 * (25 - degC))) : 1;
    }

    /// <summary>Capacity needed.</summary>
    /// <param name="nightlyWh">Energy that one night draws from the battery [Wh], 0 to 1e6.</param>
    /// <param name="autonomyDays">Nights to be carried without sun [days], 0.5 to 30.</param>
    /// <param name="depthShare">Part of the capacity that may be drawn, 0.1 to 1.</param>
    /// <param name="efficiencyShare">Part of what is drawn that reaches the lamp, 0.5 to 1.</param>
    /// <param name="coldShare">Part of the capacity left in the cold, 0.3 to 1.</param>
    /// <returns>Capacity [Wh].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>IEEE 1562, IEC 61427 form: C = E N/(DoD η k) (looked up in a public worked example).</source>
    public static double CapacityWh(
        double nightlyWh,
        double autonomyDays,
        double depthShare,
        double efficiencyShare,
        double coldShare
    )
    {
        Within.Require(nightlyWh, 0, 1e6, "Wh");
        Within.Require(autonomyDays, 0.5, 30, "days");
        Within.Require(depthShare, 0.1, 1, "");
        Within.Require(efficiencyShare, 0.5, 1, "");
        Within.Require(coldShare, 0.3, 1, "");
        return nightlyWh * autonomyDays / (depthShare * efficiencyShare * coldShare);
    }
}
