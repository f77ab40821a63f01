using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>How far a reading may lie from its promise and still meet it.</summary>
public static class ProofTolerance
{
    /// <summary>Open voltage of a string: modules differ (IEC 62446-1, strings alike).</summary>
    public const double VoltageShare = 0.03;

    /// <summary>Short-circuit current of a string: modules differ (IEC 62446-1, strings alike).</summary>
    public const double CurrentShare = 0.05;

    /// <summary>Power of the array: tolerance of modules and soiling; judgement, no source.</summary>
    public const double PowerShare = 0.06;

    /// <summary>Fall of the level: the test was of another day; judgement, no source.</summary>
    public const double DrawdownShare = 0.15;

    /// <summary>Time to fill the tank; judgement, no source.</summary>
    public const double TimeShare = 0.03;

    /// <summary>Least insulation of motor and cable [MΩ]; from memory.</summary>
    public const double MotorMohm = 2;

    /// <summary>The pump: grade 3B of ISO 9906.</summary>
    public static PumpGrade Pump { get; } = PumpGrade.Of("3B");
}
