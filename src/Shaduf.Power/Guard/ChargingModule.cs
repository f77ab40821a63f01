using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>The module that charges a lamp's battery, for the month with the least sun.</summary>
public static class ChargingModule
{
    /// <summary>Least reserve over a mean day of the worst month; more is needed to refill an empty battery in time.</summary>
    public const double LeastMarginRatio = 1.2;

    /// <summary>Part of the module's rating that reaches the battery and comes out again, for planning.</summary>
    /// <param name="kind">Kind of battery.</param>
    /// <returns>Share: controller, round trip of the battery, soiling and heat together.</returns>
    /// <source>Planning values (from memory).</source>
    public static double KeptShare(BatteryKind kind) => kind == BatteryKind.LeadAcid ? 0.65 : 0.72;

    /// <summary>What a controller without a converter keeps: the module works at the battery's voltage, not at its own.</summary>
    /// <param name="batteryV">Voltage of the battery [V], 6 to 60.</param>
    /// <param name="maximumPowerV">The module's voltage at maximum power [V], 6 to 200.</param>
    /// <returns>Share of the module's power, at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is outside its range.</exception>
    /// <source>Working current times battery voltage over rated power.</source>
    public static double DirectShare(double batteryV, double maximumPowerV)
    {
        Within.Require(batteryV, 6, 60, "V");
        Within.Require(maximumPowerV, 6, 200, "V");
        return Math.Min(1, batteryV / maximumPowerV);
    }

    /// <summary>Reserve that also refills an empty battery within some days of the worst month.</summary>
    /// <param name="autonomyDays">Nights that the battery carries [days], 0.5 to 30.</param>
    /// <param name="refillDays">Days until it is full again [days], 1 to 60.</param>
    /// <returns>Module over what a mean day needs, as a ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Balance: (m − 1) E refills N E in N/(m − 1) days; refill in ten days is practice (from memory).</source>
    public static double MarginRatio(double autonomyDays, double refillDays)
    {
        Within.Require(autonomyDays, 0.5, 30, "days");
        Within.Require(refillDays, 1, 60, "days");
        return Math.Max(LeastMarginRatio, 1 + (autonomyDays / refillDays));
    }

    /// <summary>Rating needed.</summary>
    /// <param name="nightlyWh">Energy of one night [Wh], 0 to 1e6.</param>
    /// <param name="sunKWhPerM2Day">Sun on the module in the worst month [kWh/m²/d], 0.05 to 12.</param>
    /// <param name="keptShare">Part of the rating that comes out of the battery again, 0.1 to 1.</param>
    /// <param name="marginRatio">Reserve, 1 to 10.</param>
    /// <returns>Rating at 1000 W/m² and 25 °C [W].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>IEC 62124, IEEE 1562 form: P = m E/(η PSH).</source>
    public static double RatingW(double nightlyWh, double sunKWhPerM2Day, double keptShare, double marginRatio)
    {
        Within.Require(nightlyWh, 0, 1e6, "Wh");
        Within.Require(sunKWhPerM2Day, 0.05, 12, "kWh/m²/d");
        Within.Require(keptShare, 0.1, 1, "");
        Within.Require(marginRatio, 1, 10, "");
        return marginRatio * nightlyWh / (keptShare * sunKWhPerM2Day);
    }
}
