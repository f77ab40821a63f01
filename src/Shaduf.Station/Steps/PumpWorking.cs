using Shaduf.Power;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>How the pump's working point was worked out.</summary>
internal static class PumpWorking
{
    /// <summary>The chain from the water lifted back to the power of the array, at the largest flow.</summary>
    /// <param name="design">The design so far.</param>
    /// <returns>The working.</returns>
    public static WorkingSheet Show(Design design)
    {
        var hydraulics = design.Sizing.Hydraulics;
        var flow = design.ShownFlowM3PerH / 3600;
        var headM = hydraulics.Lift.System.HeadM(flow);
        var density = hydraulics.Lift.Water.DensityKgPerM3;
        var hydraulicW = HydraulicPower.W(flow, headM, density);
        return new(
            Invariant($"Power at the largest flow, {design.ShownFlowM3PerH:0.00} m3/h"),
            [
                new(
                    "P_hyd",
                    "rho g Q H",
                    Invariant($"{density:0.0} x 9.80665 x {flow * 1000:0.000} L/s x {headM:0.00} m"),
                    hydraulicW,
                    "W",
                    "water/hydraulic-power",
                    "definition"
                ),
                .. design.Sizing.Table.FullFlowM3PerH > 0 ? Machines(design, flow, hydraulicW) : [],
                new(
                    "P_array",
                    "modules x rated power x kept share",
                    Invariant(
                        $"{design.Choice.ModuleCount} x {design.Choice.Module.Sheet.RatedW:0} x {design.Sizing.Losses.KeptShare:0.000}"
                    ),
                    design.Choice.ArrayW * design.Sizing.Losses.KeptShare,
                    "W",
                    "power/array-losses",
                    "planning values, from memory"
                ),
            ]
        );
    }

    private static IEnumerable<Line> Machines(Design design, double flowM3PerS, double hydraulicW)
    {
        var (hydraulics, speedRatio) = (design.Sizing.Hydraulics, design.Sizing.Table.HighestRatio);
        var efficiency = hydraulics.Curve.EfficiencyShare(flowM3PerS, speedRatio);
        var shaftW = hydraulicW / efficiency;
        var motorW = MotorInput.ElectricalW(design.Choice.Pump.Motor, shaftW);
        var outputW = motorW / hydraulics.Feed.CableKeptShare;
        yield return new(
            "P_2",
            "P_hyd / eta_p",
            Invariant($"{hydraulicW:0} / {efficiency:0.000} at {speedRatio * 100:0} % speed"),
            shaftW,
            "W",
            "water/pump-curve",
            "pump card"
        );
        yield return new(
            "P_dc",
            "motor, cable and drive",
            Invariant(
                $"motor {shaftW / motorW:0.000} at {shaftW / 10 / design.Choice.Pump.Motor.ShaftKW:0} % of its load, cable {hydraulics.Feed.CableKeptShare:0.000}, drive {outputW / DriveInput.DcW(design.Choice.Drive.Sheet, outputW):0.000} with its own use"
            ),
            hydraulics.InputW(shaftW),
            "W",
            "power/motor-input",
            "cards"
        );
    }
}
