namespace Shaduf.Power;

/// <summary>One pump drive's data sheet.</summary>
/// <param name="LargestDcV">Largest input voltage ever, also without load [V], 1 to 2000.</param>
/// <param name="WindowLowV">Lowest input voltage at which it seeks maximum power [V], 0 to 2000.</param>
/// <param name="WindowHighV">Highest input voltage at which it seeks maximum power [V], 0 to 2000.</param>
/// <param name="LargestShortCircuitA">Largest short-circuit current of the array it may be joined to [A], 0.1 to 10000.</param>
/// <param name="LargestInputA">Largest working input current; beyond it power is given up [A], 0.1 to 10000.</param>
/// <param name="LargestMotorA">Largest motor current, before derating [A], 0.1 to 10000.</param>
/// <param name="EfficiencyShare">Efficiency at rated power, 0.5 to 1.</param>
/// <param name="OwnUseW">Power that it uses for itself while awake [W], 0 to 1000.</param>
/// <param name="Drives">Kind of motor that it turns.</param>
public sealed record DriveSheet(
    double LargestDcV,
    double WindowLowV,
    double WindowHighV,
    double LargestShortCircuitA,
    double LargestInputA,
    double LargestMotorA,
    double EfficiencyShare,
    double OwnUseW,
    MotorKind Drives
)
{
    /// <summary>Efficiencies at other powers than the rated one, own use left out, as the sheet tells them; empty when it does not.</summary>
    public IReadOnlyList<OutputEfficiency> ByOutput { get; init; } = [];
}

/// <summary>Efficiency of a drive at a power.</summary>
/// <param name="OutputW">Power at the output [W], 1 to 1000000.</param>
/// <param name="EfficiencyShare">Efficiency there, own use left out, 0.3 to 1.</param>
public readonly record struct OutputEfficiency(double OutputW, double EfficiencyShare);
