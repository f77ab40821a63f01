using Shaduf.Power;
using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>A pump on its pipes with its drive: the flow for each power that the array gives.</summary>
/// <param name="Pump">The pump.</param>
/// <param name="Curve">Its fitted curve.</param>
/// <param name="Drive">The drive.</param>
/// <param name="Lift">The pipes.</param>
/// <param name="Feed">Filter and cable between drive and motor.</param>
public sealed record Hydraulics(PumpCard Pump, IPumpCurve Curve, DriveCard Drive, Lift Lift, MotorFeed Feed)
{
    /// <summary>Lowest frequency that the drive is set to [Hz]; the motor's own until it is known.</summary>
    public double LowestHz { get; init; } = Pump.Motor.LowestHz;

    /// <summary>Flow by power, up to a share of the rated speed.</summary>
    /// <param name="highestSpeedRatio">Highest speed that the array's voltage allows, as a share of rated speed, above 0 to 1.</param>
    /// <param name="yieldM3PerH">Largest flow that the well allows [m³/h].</param>
    /// <returns>The table.</returns>
    public PumpTable Table(double highestSpeedRatio, double yieldM3PerH)
    {
        var lowest = Math.Min(LowestHz / Pump.Motor.RatedHz, highestSpeedRatio);
        return PumpTable.Build(Curve, Lift.System, new(lowest, highestSpeedRatio, yieldM3PerH / 3600), InputW);
    }

    /// <summary>Power drawn from the array for a power at the pump's shaft [W].</summary>
    /// <param name="shaftW">Power at the shaft [W], at least 0.</param>
    /// <returns>Power at the drive's input [W].</returns>
    public double InputW(double shaftW) =>
        DriveInput.DcW(Drive.Sheet, MotorInput.ElectricalW(Pump.Motor, shaftW) / Feed.CableKeptShare);

    /// <summary>
    /// Highest speed that an aged string's voltage on the hottest day allows, as a share of rated speed. No boost is counted:
    /// a brushless motor turns as fast as its direct voltage, a three-phase motor as <see cref="BusVoltage"/> says.
    /// </summary>
    /// <param name="module">The module.</param>
    /// <param name="seriesCount">Modules in the string, at least 1.</param>
    /// <param name="hotCellDegC">Hottest cell [°C].</param>
    /// <param name="ageYears">Age of the modules [years].</param>
    /// <returns>The share, at most 1.</returns>
    public double SpeedByVoltageRatio(ModuleSheet module, int seriesCount, double hotCellDegC, int ageYears)
    {
        var stringV = StringVoltage.AgedHotMaximumPowerV(module, seriesCount, hotCellDegC, ageYears);
        var hotV = stringV * (1 - CableRuns.DirectDropShare);
        return Pump.Motor.Kind == MotorKind.BrushlessDc
            ? Math.Min(1, hotV / Pump.Motor.RatedV)
            : BusVoltage.SpeedRatio(hotV, Pump.Motor.RatedV, Feed.CableDropShare + Feed.FilterDropShare);
    }
}
