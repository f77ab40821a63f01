using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Water past the motor, bare in the casing and in a shroud.</summary>
/// <param name="OpenMPerS">Speed past the bare motor at the least flow of the working range [m/s]; 0 when the motor fills the casing.</param>
/// <param name="ShroudMPerS">Speed in the narrowest shroud at the largest flow [m/s].</param>
/// <param name="LeastMPerS">Least speed that the motor's maker asks for [m/s].</param>
/// <param name="ShroudFits">Whether such a shroud passes the casing.</param>
public sealed record Cooling(double OpenMPerS, double ShroudMPerS, double LeastMPerS, bool ShroudFits)
{
    // Judgement, no source: water and cable between pump and shroud, and two walls of 3 mm.
    private const double PassageMm = 10;
    private const double WallsMm = 6;

    // The shroud must pass the casing less this; from memory.
    private const double LeastRoomMm = 15;

    /// <summary>Whether the motor needs a shroud.</summary>
    public bool NeedsShroud => OpenMPerS < LeastMPerS;

    /// <summary>Bore of the narrowest shroud [mm].</summary>
    /// <param name="pump">The pump.</param>
    /// <returns>Bore [mm].</returns>
    public static double ShroudMm(PumpCard pump) => pump.InWater.DiameterMm + PassageMm;

    /// <summary>The cooling of a pump in its casing.</summary>
    /// <param name="casingMm">Bore of the casing [mm].</param>
    /// <param name="pump">The pump.</param>
    /// <param name="table">Its flow by power; the least flow is that of a tenth of the way from start to full power.</param>
    /// <returns>The cooling.</returns>
    public static Cooling Of(double casingMm, PumpCard pump, PumpTable table)
    {
        var leastM3PerH = table.FlowM3PerH(table.StartPowerW + (0.1 * (table.FullPowerW - table.StartPowerW)));
        var shroudMm = ShroudMm(pump);
        return new(
            SpeedMPerS(leastM3PerH, casingMm, pump),
            SpeedMPerS(table.FullFlowM3PerH, shroudMm, pump),
            pump.InWater.LowestCoolingMPerS,
            shroudMm + WallsMm <= casingMm - LeastRoomMm
        );
    }

    /// <summary>Least flow that cools the motor, in the shroud if it needs one.</summary>
    /// <param name="casingMm">Bore of the casing [mm].</param>
    /// <param name="pump">The pump.</param>
    /// <returns>Flow [m³/s]; 0 when the motor fills its casing.</returns>
    public double NeededM3PerS(double casingMm, PumpCard pump)
    {
        var (boreMm, body) = (NeedsShroud ? ShroudMm(pump) : casingMm, pump.InWater);
        return boreMm > body.MotorMm
            ? CoolingFlow.PastMotorM3PerS(boreMm / 1000, body.MotorMm / 1000, body.LowestCoolingMPerS)
            : 0;
    }

    /// <summary>The finding.</summary>
    /// <returns>Holds bare; with the shroud of the bill, to be looked at; else stop.</returns>
    public Finding Finding() =>
        (NeedsShroud, ShroudFits, ShroudMPerS >= LeastMPerS) switch
        {
            (false, _, _) => Said(FindingStatus.Holds, "water past the motor at the least flow cools it", OpenMPerS),
            (_, false, _) => Said(
                FindingStatus.Stop,
                "too little water passes the bare motor at the least flow, and a cooling shroud does not pass the casing",
                OpenMPerS
            ),
            (_, _, false) => Said(
                FindingStatus.Stop,
                "too little water passes the motor even in a cooling shroud at the largest flow",
                ShroudMPerS
            ),
            _ => Said(
                FindingStatus.Look,
                Invariant(
                    $"with the cooling shroud of the bill, at the largest flow; bare, the least flow passes at {OpenMPerS:0.000} m/s: set the drive to stop the pump rather than run it slower than the motor's maker allows"
                ),
                ShroudMPerS
            ),
        };

    private Finding Said(FindingStatus status, string says, double mPerS) =>
        new("source/cooling", status, says, mPerS, LeastMPerS, "m/s", "pump card");

    private static double SpeedMPerS(double flowM3PerH, double boreMm, PumpCard pump) =>
        flowM3PerH > 0 && boreMm > pump.InWater.MotorMm
            ? MotorCooling.VelocityMPerS(flowM3PerH / 3600, boreMm / 1000, pump.InWater.MotorMm / 1000)
            : 0;
}
