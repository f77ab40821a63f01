using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What was read on one string.</summary>
/// <param name="Number">The string's number.</param>
/// <param name="LightWPerM2">Light on the plane [W/m²].</param>
/// <param name="CellDegC">Cell temperature [°C].</param>
/// <param name="OpenV">Open voltage [V]; null when not read.</param>
/// <param name="ShortA">Short-circuit current [A]; null when not read.</param>
/// <param name="InsulationMohm">Insulation to earth [MΩ]; null when not read.</param>
public sealed record StringReading(
    int Number,
    double LightWPerM2,
    double CellDegC,
    double? OpenV,
    double? ShortA,
    double? InsulationMohm
);

/// <summary>What was read while the pump ran in steady sun.</summary>
/// <param name="LightWPerM2">Light on the plane [W/m²].</param>
/// <param name="CellDegC">Cell temperature [°C].</param>
/// <param name="VoltageV">Voltage at the drive's input [V].</param>
/// <param name="CurrentA">Current there [A].</param>
/// <param name="FlowM3PerH">Flow [m³/h].</param>
/// <param name="LevelM">Depth to the water [m]; null when not read.</param>
/// <param name="GaugeBar">Gauge at the start of the main [bar]; null when not read.</param>
public sealed record PumpReading(
    double LightWPerM2,
    double CellDegC,
    double VoltageV,
    double CurrentA,
    double FlowM3PerH,
    double? LevelM,
    double? GaugeBar
)
{
    /// <summary>Power at the drive's input [W].</summary>
    public double PowerW => VoltageV * CurrentA;
}

/// <summary>Water caught in the tank.</summary>
/// <param name="VolumeM3">Its volume [m³].</param>
/// <param name="TimeH">Time that it took [h].</param>
public sealed record TankReading(double VolumeM3, double TimeH);

/// <summary>How far the instruments may be wrong.</summary>
/// <param name="LightShare">Light.</param>
/// <param name="CellK">Cell temperature [K].</param>
/// <param name="VoltageShare">Voltage.</param>
/// <param name="CurrentShare">Current.</param>
/// <param name="FlowShare">Flow.</param>
/// <param name="LevelM">Depth to the water [m].</param>
/// <param name="GaugeBar">Gauge [bar].</param>
/// <param name="OhmShare">Resistance.</param>
public sealed record Instruments(
    double LightShare,
    double CellK,
    double VoltageShare,
    double CurrentShare,
    double FlowShare,
    double LevelM,
    double GaugeBar,
    double OhmShare
)
{
    /// <summary>Good hand instruments: ±5 % light, 2 K, 1 % volts, 2 % amperes, 3 % flow, 0.1 m, 0.1 bar, 5 % ohms; from memory.</summary>
    public static Instruments Usual { get; } = new(0.05, 2, 0.01, 0.02, 0.03, 0.1, 0.1, 0.05);
}

/// <summary>A point of a check list that was ticked.</summary>
/// <param name="Point">Its name: 'pits' for the hold of that step, 'pits/2' for its second line.</param>
/// <param name="At">When; null when not told.</param>
/// <param name="By">Who; empty when not told.</param>
public sealed record Tick(string Point, DateTime? At, string By)
{
    /// <summary>Who and when, as it is printed.</summary>
    public string Says =>
        (By.Length, At) switch
        {
            (> 0, { } at) => Invariant($"{By}, {at:yyyy-MM-dd HH:mm}"),
            (0, { } at) => Invariant($"{at:yyyy-MM-dd HH:mm}"),
            (> 0, null) => By,
            _ => "ticked",
        };
}

/// <summary>A note of the crew.</summary>
/// <param name="About">What it is about.</param>
/// <param name="Text">The note.</param>
public sealed record SiteNote(string About, string Text);

/// <summary>What was measured on the finished station.</summary>
/// <param name="On">The day; null when not said.</param>
/// <param name="By">Who measured.</param>
/// <param name="Strings">Strings.</param>
/// <param name="Runs">The pump in steady sun.</param>
/// <param name="RestM">Depth to the water before pumping that morning [m]; null when not read.</param>
/// <param name="EarthOhm">Resistance of the earth [Ω]; null when not read.</param>
/// <param name="MotorMohm">Insulation of motor and cable [MΩ]; null when not read.</param>
/// <param name="Tank">Water caught in the tank; null when not timed.</param>
/// <param name="Instruments">How far the instruments may be wrong.</param>
public sealed record MeasuredBrief(
    DateOnly? On,
    string By,
    IReadOnlyList<StringReading> Strings,
    IReadOnlyList<PumpReading> Runs,
    double? RestM,
    double? EarthOhm,
    double? MotorMohm,
    TankReading? Tank,
    Instruments Instruments
)
{
    /// <summary>Points ticked on site.</summary>
    public IReadOnlyList<Tick> Ticked { get; init; } = [];

    /// <summary>Name of the station as the file tells it; null when it does not.</summary>
    public string? Station { get; init; }

    /// <summary>What the crew wrote down beside the readings.</summary>
    public IReadOnlyList<SiteNote> Notes { get; init; } = [];
}
