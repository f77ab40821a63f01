using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>One step of a step test.</summary>
/// <param name="FlowM3PerH">Flow [m³/h].</param>
/// <param name="DrawdownM">Drawdown below the rest level [m].</param>
public sealed record StepBrief(double FlowM3PerH, double DrawdownM);

/// <summary>A test at constant rate.</summary>
/// <param name="FlowM3PerH">Rate held [m³/h].</param>
/// <param name="Readings">Late readings of the level, in order.</param>
public sealed record ConstantTestBrief(double FlowM3PerH, IReadOnlyList<TimedDrawdown> Readings);

/// <summary>A test with a drum and a watch on a borrowed pump.</summary>
/// <param name="VolumeM3">Volume of the drum [m³].</param>
/// <param name="TimeS">Time in which it filled [s].</param>
/// <param name="DrawdownM">Drawdown at the end [m]; null when nobody dipped.</param>
public sealed record BucketTestBrief(double VolumeM3, double TimeS, double? DrawdownM)
{
    /// <summary>Flow [m³/h].</summary>
    public double FlowM3PerH => VolumeM3 / TimeS * 3600;
}

/// <summary>A length of screen. Depths are below ground at the wellhead.</summary>
/// <param name="TopM">Its top [m].</param>
/// <param name="BottomM">Its bottom [m].</param>
public sealed record ScreenBrief(double TopM, double BottomM);

/// <summary>Where the water comes from.</summary>
/// <param name="WaterDegC">Temperature of the water [°C]; null when unknown.</param>
public abstract record SourceBrief(double? WaterDegC)
{
    /// <summary>Depth of the lowest water below the ground where the main begins, as far as the brief knows it [m].</summary>
    /// <param name="groundM">Level of that ground above sea [m].</param>
    /// <returns>Depth [m]; below 0 when the water stands higher.</returns>
    public abstract double LowestWaterM(double groundM);
}

/// <summary>The borehole or well. Depths are below ground at the wellhead.</summary>
public sealed record BoreholeBrief(
    double? DepthM,
    double? CasingMm,
    double? RestLevelM,
    double? SeasonalFallM,
    double? TestedYieldM3PerH,
    double? DrillersFigureM3PerH,
    double? YieldShare,
    IReadOnlyList<StepBrief> Steps,
    double? PumpSettingM,
    double? WaterDegC
) : SourceBrief(WaterDegC)
{
    /// <inheritdoc/>
    public override double LowestWaterM(double groundM) => (RestLevelM ?? DepthM ?? 0) + (SeasonalFallM ?? 0);

    /// <summary>Length of each step of the step test [min]; null when not said.</summary>
    public double? StepMin { get; init; }

    /// <summary>Test at constant rate; null when none was made.</summary>
    public ConstantTestBrief? ConstantTest { get; init; }

    /// <summary>Test with a drum; null when none was made.</summary>
    public BucketTestBrief? BucketTest { get; init; }

    /// <summary>Screens from the top down; empty when unknown.</summary>
    public IReadOnlyList<ScreenBrief> Screens { get; init; } = [];

    /// <summary>Depth of the grouted seal round the casing [m]; null when unknown.</summary>
    public double? SealM { get; init; }

    /// <summary>Water that the licence allows [m³/d]; null when there is none.</summary>
    public double? LicenceM3PerDay { get; init; }

    /// <summary>Days of pumping without recharge [days]; null when not said.</summary>
    public double? DryDays { get; init; }
}
