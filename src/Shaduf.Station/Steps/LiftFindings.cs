using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of the pipes from the source to the tank.</summary>
internal static class LiftFindings
{
    // Against the air outside; lower, and joints draw in dirt and thin pipe buckles.
    private const double LeastMainM = -5;

    // Slower, and sand and air stay in the main.
    private const double SlowestMainMPerS = 0.3;

    /// <summary>Findings of the pipes for the flow chosen.</summary>
    /// <param name="lift">The pipes.</param>
    /// <param name="route">The lift as the brief has it.</param>
    /// <param name="main">The main as built.</param>
    /// <param name="pipeDegC">Temperature for the strength of the pipe [°C].</param>
    /// <param name="flowM3PerH">Largest flow of the year [m³/h].</param>
    /// <param name="shutOffM">Head of the pump against a closed valve [m].</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(
        Lift lift,
        LiftBrief route,
        MainWorks main,
        double pipeDegC,
        double flowM3PerH,
        double shutOffM
    ) =>
        [
            .. lift.Foot.Findings(flowM3PerH, PressureClass.PressureBar(shutOffM, lift.Water.DensityKgPerM3), pipeDegC),
            Speed(lift, flowM3PerH),
            Slow(lift.Lay.Reaches.Min(reach => Lift.SpeedMPerS(reach.Pipe, flowM3PerH))),
            .. Running(main.Profile, lift.Water),
            Closed(main),
            Summit(route),
        ];

    private static Finding Speed(Lift lift, double flowM3PerH) =>
        Finding.AtMost(
            "lift/main-speed",
            Lift.SpeedMPerS(lift.Lay.Narrowest, flowM3PerH),
            Lift.FastestMainMPerS,
            "m/s",
            "water in the main at the largest flow",
            "plastic mains preferably at most 1.5 m/s (rural pipe guide)"
        );

    private static Finding Slow(double slowestMPerS) =>
        new(
            "lift/main-slow",
            slowestMPerS >= SlowestMainMPerS ? FindingStatus.Holds : FindingStatus.Look,
            slowestMPerS >= SlowestMainMPerS
                ? "the slowest water in the main at the largest flow moves air and silt on"
                : "the water in the main is too slow to carry air and silt away: open the washouts twice a year, or take a narrower main",
            slowestMPerS,
            SlowestMainMPerS,
            "m/s",
            "common practice, no source"
        );

    private static IEnumerable<Finding> Running(MainProfile profile, WaterState water)
    {
        var riseBar = PressureClass.PressureBar(profile.RiseM, water.DensityKgPerM3);
        var worst = profile.Points.MaxBy(point => (point.RunningBar + riseBar) / point.AllowedBar)!;
        yield return Finding.AtMost(
            "lift/main-pressure",
            worst.RunningBar + riseBar,
            worst.AllowedBar,
            "bar",
            Invariant(
                $"the main where it has least to spare, {worst.Pipe.Name} at {worst.ChainageM:0} m: {worst.RunningBar:0.0} bar while the pump runs and {riseBar:0.0} bar more when it stops hard"
            ),
            "Joukowsky; pressure class by temperature, EN 12201-1 (from memory)"
        );
        yield return new(
            "lift/main-vacuum",
            profile.LeastM >= LeastMainM ? FindingStatus.Holds : FindingStatus.Look,
            profile.LeastM >= LeastMainM
                ? "least head along the main when the pump stops hard"
                : "a hard stop, such as a cloud over an array without ramp, pulls a vacuum in the main: let the drive ramp down, fit air valves at the start and the high points, and ask a specialist for a surge calculation",
            profile.LeastM,
            LeastMainM,
            "m",
            "Joukowsky; the limit from memory"
        );
    }

    private static Finding Closed(MainWorks main)
    {
        var worst = main.Profile.Points.MaxBy(point => point.ClosedBar / point.AllowedBar)!;
        var surge = main.TankFull.Way == TankFullStop.PressureStop ? ", the surge of a hard stop on top" : "";
        return new(
            "lift/closed-valve",
            worst.ClosedBar <= worst.AllowedBar ? FindingStatus.Holds : FindingStatus.Stop,
            worst.ClosedBar <= worst.AllowedBar
                ? $"the main against the pump's head at a closed valve{surge}"
                : "a float valve or gate that closes while the pump runs bursts this main: take the next pressure class",
            worst.ClosedBar,
            worst.AllowedBar,
            "bar",
            "pump card and pipe card"
        );
    }

    private static Finding Summit(LiftBrief route)
    {
        var heightM = route.Route.Max(point => point.ElevationM);
        return new(
            "lift/summit",
            heightM > route.InletM ? FindingStatus.Look : FindingStatus.Holds,
            heightM > route.InletM
                ? "the route rises above the tank's inlet: the head is taken to the summit; air and vacuum there need a specialist"
                : "no point of the route lies above the tank's inlet",
            heightM,
            route.InletM,
            "m",
            "hydraulic grade line"
        );
    }
}
