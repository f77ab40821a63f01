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
    /// <summary>Ticks of the site book: the point, and whether it was ticked.</summary>
    public IReadOnlyList<string> Ticked { get; init; } = [];
}
