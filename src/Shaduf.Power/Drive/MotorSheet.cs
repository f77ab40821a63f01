namespace Shaduf.Power;

/// <summary>What kind of motor turns the pump.</summary>
public enum MotorKind
{
    /// <summary>Three-phase motor on a drive with an inverter.</summary>
    ThreePhase,

    /// <summary>Brushless direct-current motor with its own controller, which fits voltage to speed by itself.</summary>
    BrushlessDc,
}

/// <summary>One pump motor's data sheet.</summary>
/// <param name="ShaftKW">Rated power at the shaft [kW], 0.05 to 500.</param>
/// <param name="RatedV">Rated voltage, between lines for three phases [V], 10 to 1000.</param>
/// <param name="RatedA">Rated current [A], 0.1 to 1000.</param>
/// <param name="Kind">Kind of motor.</param>
/// <param name="EfficiencyShare">Efficiency at rated load, 0.3 to 0.99.</param>
/// <param name="PowerFactor">Power factor at rated load, 0.3 to 1; 1 for a brushless motor with its own controller.</param>
/// <param name="RatedHz">Rated frequency [Hz], 20 to 400.</param>
/// <param name="LowestHz">Lowest frequency of continuous running [Hz], 0 to 400.</param>
public sealed record MotorSheet(
    double ShaftKW,
    double RatedV,
    double RatedA,
    MotorKind Kind,
    double EfficiencyShare,
    double PowerFactor,
    double RatedHz,
    double LowestHz
)
{
    /// <summary>Efficiencies at other loads than the rated one, as the sheet tells them; empty when it does not.</summary>
    public IReadOnlyList<LoadEfficiency> ByLoad { get; init; } = [];
}

/// <summary>Efficiency of a motor at a load.</summary>
/// <param name="LoadRatio">Power at the shaft over the rated one, 0.1 to 1.2.</param>
/// <param name="EfficiencyShare">Efficiency there, 0.1 to 0.99.</param>
public readonly record struct LoadEfficiency(double LoadRatio, double EfficiencyShare);
