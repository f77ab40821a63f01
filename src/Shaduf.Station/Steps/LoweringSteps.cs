using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>How the pump is lowered, step by step.</summary>
internal static class LoweringSteps
{
    // More than the pump's largest diameter; common practice, no source.
    private const double DummyRoomMm = 5;

    /// <summary>The steps for a station.</summary>
    /// <param name="build">Equipment of the borehole.</param>
    /// <param name="choice">What was chosen.</param>
    /// <returns>The steps in order.</returns>
    public static IReadOnlyList<string> Of(WellBuild build, Choice choice)
    {
        var (well, riser) = (build.Well, choice.Lift.Foot.Card);
        var isCoil = riser.LosesStrengthWhenWarm;
        return
        [
            Invariant(
                $"Run a dummy of the pump's length and {choice.Pump.InWater.DiameterMm + DummyRoomMm:0} mm across to {well.PumpSettingM:0.0} m on a rope. If it sticks, stop and ask the driller."
            ),
            "Splice the cable, lay the splice in water for an hour, measure its insulation, mark the phases.",
            "Screw check valve and first pipe to the pump with a second pair of wrenches; never through plastic threads. Tie the safety rope to the pump's eye.",
            isCoil
                ? Invariant(
                    $"Unroll the coil and straighten it in the sun, cap its free end, lead it over a wheel of {riser.OuterMm * 25 / 1000:0.0} m at least; two men hold back by a turn round a post."
                )
                : "Bars stand ready with couplings on; one man keeps dirt out of the open ends.",
            Invariant(
                $"Clamp on the casing, hoist takes over, clamp off, lower, clamp on: never hands on a load without clamp. {build.Hung.EmptyKg:0} kg go down, {build.Hung.TotalKg:0} kg come up full."
            ),
            Invariant(
                $"A clip for the cable every {WellBuild.ClipM:0} m and beside each joint, {build.ClipCount} in all; {(isCoil ? "slack between clips, for the pipe grows" : "no slack that could rub")}, a loop every 40 m."
            ),
            isCoil
                ? "One torque arrestor 0.3 to 0.6 m above the pump, its rubber just touching the casing."
                : "No torque arrestor on a steel riser with a drive that starts gently.",
            "Every 20 to 30 m dip the level and measure the insulation.",
            Invariant(
                $"Land on the cover, mark the depth from the casing's top: intake {well.PumpSettingM:0.0} m below ground{(isCoil ? Invariant($", {build.YearsStretchM:0.00} m deeper after years") : "")}; {well.BottomM - well.PumpSettingM:0.0} m stay free below."
            ),
            Invariant(
                $"Tie the rope slack to the cover: it catches a pump that falls and lifts nothing. Breaking load {build.RopeKN:0.0} kN at least, with knots."
            ),
            Invariant(
                $"Probes: stop at {well.StopProbeM:0.0} m, start at {well.StartProbeM:0.0} m, the common one below the stop; lock-out 15 to 30 min."
            ),
            "Close the cover, seal gland and dip tube, disinfect, pump to waste until clear, take the sample.",
        ];
    }
}
