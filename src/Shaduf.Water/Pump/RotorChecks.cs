using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>The checks of the helical rotor's published rows.</summary>
internal static class RotorChecks
{
    private const double SPerH = 3600;

    public static IReadOnlyList<PublishedCheck> All { get; } =
    [
        new("water/helical-rotor", "displacement", row => 1e6 * DisplacementM3(row)),
        new("water/helical-rotor", "theoretical-flow", row => DisplacementM3(row) * row["speedRpm"] / 60 * SPerH),
        new(
            "water/helical-rotor",
            "torque",
            row =>
                HelicalRotor.PressureTorqueNm(
                    DisplacementM3(row),
                    WaterState.At(25).DensityKgPerM3 * Gravity.MPerS2 * row["headM"]
                )
        ),
    ];

    private static double DisplacementM3(PublishedCase row) =>
        HelicalRotor.DisplacementM3(row["eccentricityMm"] / 1000, row["rotorMm"] / 1000, row["pitchMm"] / 1000);
}
