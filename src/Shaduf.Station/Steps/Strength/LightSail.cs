namespace Shaduf.Station;

/// <summary>What hangs on a light column: lamp, box with battery, charging modules.</summary>
/// <param name="AreaM2">Area that the wind catches [m2].</param>
/// <param name="MassKg">Mass [kg].</param>
/// <param name="IsGiven">Whether the card says both; else they are reckoned from the ratings.</param>
public sealed record LightSail(double AreaM2, double MassKg, bool IsGiven)
{
    /// <summary>Nothing.</summary>
    public static LightSail None { get; } = new(0, 0, true);

    // Planning values, from memory: 165 W and 12 kg for a square metre of module; lamp and box of 0.15 m2 and 12 kg;
    // batteries of 35 and 90 Wh/kg.
    private const double ModuleWPerM2 = 165;
    private const double ModuleKgPerM2 = 12;
    private const double LampM2 = 0.15;
    private const double LampKg = 12;
    private const double LeadWhPerKg = 35;
    private const double LithiumWhPerKg = 90;

    /// <summary>The sail of one lamp.</summary>
    /// <param name="light">The night light.</param>
    /// <returns>By the card, or reckoned.</returns>
    public static LightSail Of(GuardLight light)
    {
        var card = light.Card;
        var moduleM2 = light.ModulesEach * card.Charger.RatedW / ModuleWPerM2;
        var perKg = card.Battery.Kind == Power.BatteryKind.LeadAcid ? LeadWhPerKg : LithiumWhPerKg;
        var massKg = LampKg + (moduleM2 * ModuleKgPerM2) + (light.BlocksEach * card.Battery.BlockWh / perKg);
        return new(
            card.SailM2 ?? LampM2 + moduleM2,
            card.HungKg ?? massKg,
            card is { SailM2: not null, HungKg: not null }
        );
    }
}
