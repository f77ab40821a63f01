using Shaduf.Power;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The lowest frequency that the drive may run the pump at.</summary>
/// <param name="SetHz">Lowest frequency to set [Hz], a tenth up.</param>
/// <param name="MotorHz">What the motor's bearing asks for [Hz].</param>
/// <param name="NoFlowHz">Frequency at which the pump just holds the static head and no water flows [Hz].</param>
/// <param name="CoolingHz">Frequency from which enough water passes the motor [Hz]; null when not even the highest one is enough.</param>
/// <param name="HighestHz">Highest frequency of the year run [Hz].</param>
/// <param name="Cooler">What cools the motor, in words; null when it is the water.</param>
public sealed record LowestSpeed(
    double SetHz,
    double MotorHz,
    double NoFlowHz,
    double? CoolingHz,
    double HighestHz,
    string? Cooler
)
{
    private const double SlowestRatio = 0.1;

    /// <summary>Works out the frequency.</summary>
    /// <param name="hydraulics">The pump on its pipes.</param>
    /// <param name="highestRatio">Highest speed of the year run as a share of rated speed.</param>
    /// <param name="need">What the motor asks.</param>
    /// <returns>The frequency.</returns>
    internal static LowestSpeed Of(Hydraulics hydraulics, double highestRatio, MotorNeed need)
    {
        var motor = hydraulics.Pump.Motor;
        var (motorHz, neededM3PerS) = (need.LeastHz, need.CoolingM3PerS);
        var noFlowRatio = OperatingPoint.LeastSpeedRatio(hydraulics.Curve, hydraulics.Lift.System);
        double FlowM3PerS(double ratio) =>
            OperatingPoint.Solve(hydraulics.Curve, hydraulics.Lift.System, ratio).FlowM3PerS;

        var coolingRatio =
            highestRatio >= SlowestRatio && FlowM3PerS(highestRatio) >= neededM3PerS
                ? Least(ratio => FlowM3PerS(ratio) >= neededM3PerS, SlowestRatio, highestRatio)
                : (double?)null;
        var leastHz = Math.Max(
            motorHz,
            motor.RatedHz * Math.Max(Math.Min(noFlowRatio, highestRatio), coolingRatio ?? highestRatio)
        );
        return new(
            Math.Ceiling(leastHz * 10 - 1e-9) / 10,
            motorHz,
            noFlowRatio * motor.RatedHz,
            coolingRatio * motor.RatedHz,
            highestRatio * motor.RatedHz,
            need.Says
        );
    }

    /// <summary>The finding.</summary>
    /// <param name="motor">The motor.</param>
    /// <returns>What to set the drive to, and why.</returns>
    public Finding Finding(MotorSheet motor)
    {
        var cooled =
            Cooler
            ?? (
                CoolingHz is { } hz
                    ? Invariant($"enough water cools it from {hz:0.0} Hz on")
                    : "not even the highest frequency cools it"
            );
        var start =
            Cooler is null && motor.Kind == MotorKind.ThreePhase
                ? Invariant($"; from rest to {MotorNeed.LeastThreePhaseHz:0} Hz within 1 s")
                : "";
        return new(
            "electrics/lowest-speed",
            SetHz > HighestHz + 0.05 ? FindingStatus.Stop : FindingStatus.Look,
            Invariant(
                $"set the drive's lowest frequency to {SetHz:0.0} Hz and let it stop below: the motor bears {MotorHz:0.#} Hz, {(NoFlowHz <= HighestHz ? "water flows" : "water would flow only")} from {NoFlowHz:0.0} Hz on, and {cooled}{start}"
            ),
            SetHz,
            HighestHz,
            "Hz",
            "submersible-motor makers: 30 Hz within 1 s, thrust bearing; water past the motor"
        );
    }

    // By halving: the test holds from some ratio on.
    private static double Least(Func<double, bool> holds, double low, double high)
    {
        if (holds(low))
        {
            return low;
        }

        for (var round = 0; round < 40; round++)
        {
            var middle = (low + high) / 2;
            (low, high) = holds(middle) ? (low, middle) : (middle, high);
        }

        return high;
    }
}
