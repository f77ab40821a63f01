using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>The battery of a night light.</summary>
/// <param name="Kind">Lead or lithium.</param>
/// <param name="BlockWh">Energy of one block [Wh].</param>
/// <param name="BlockV">Voltage of one block [V].</param>
/// <param name="ChargesBelowZero">Whether it may be charged below 0 °C, or keeps itself from it.</param>
public sealed record LampBlock(BatteryKind Kind, double BlockWh, double BlockV, bool ChargesBelowZero);

/// <summary>The module that charges a night light.</summary>
/// <param name="RatedW">Rating of one module [W].</param>
/// <param name="MaximumPowerV">Its voltage at maximum power [V].</param>
/// <param name="HasTracking">Whether the controller follows the maximum power; else the module works at the battery's voltage.</param>
public sealed record LampModule(double RatedW, double MaximumPowerV, bool HasTracking);

/// <summary>A night light with the battery and the charging module that go with it.</summary>
/// <param name="Name">The name that briefs and price books use.</param>
/// <param name="About">What it is, for people.</param>
/// <param name="IsPlanningData">A generic card for planning.</param>
/// <param name="LampW">Power that the lamp draws from its battery [W].</param>
/// <param name="Luminaire">Its light.</param>
/// <param name="PoleM">Usual height of the lamp above ground [m].</param>
/// <param name="Battery">The battery's blocks.</param>
/// <param name="Charger">The charging modules.</param>
public sealed record LightCard(
    string Name,
    string About,
    bool IsPlanningData,
    double LampW,
    Luminaire Luminaire,
    double PoleM,
    LampBlock Battery,
    LampModule Charger
) : Card(Name, About, IsPlanningData)
{
    /// <summary>Area of all that hangs on a column of its own, as the wind catches it [m2]; null when the maker does not say.</summary>
    public double? SailM2 { get; init; }

    /// <summary>Mass of all that hangs on a column of its own [kg]; null when the maker does not say.</summary>
    public double? HungKg { get; init; }
}
