using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of riser and main.</summary>
internal static class LiftFindings
{
    // Against the air outside; lower, and joints draw in dirt and thin pipe buckles.
    private const double LeastMainM = -5;

    /// <summary>Findings of the pipes for the flow chosen.</summary>
    /// <param name="lift">The pipes.</param>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="flowM3PerH">Largest flow of the year [m³/h].</param>
    /// <param name="shutOffM">Head of the pump against a closed valve [m].</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Lift lift, Brief brief, Survey survey, double flowM3PerH, double shutOffM) =>
        [
            .. Speeds(lift, flowM3PerH),
            .. Running(lift, brief.Lift, survey["pipe-temperature"], flowM3PerH),
            .. Closed(lift, brief.Lift, survey, shutOffM),
            Summit(brief.Lift),
        ];

    private static IEnumerable<Finding> Speeds(Lift lift, double flowM3PerH)
    {
        yield return Finding.AtMost(
            "lift/main-speed",
            Lift.SpeedMPerS(lift.Main, flowM3PerH),
            Lift.FastestMainMPerS,
            "m/s",
            "water in the main at the largest flow",
            "plastic mains preferably at most 1.5 m/s (rural pipe guide)"
        );
        yield return Finding.AtMost(
            "lift/riser-speed",
            Lift.SpeedMPerS(lift.Riser, flowM3PerH),
            Lift.FastestRiserMPerS,
            "m/s",
            "water in the riser at the largest flow",
            "common practice, no source"
        );
    }

    private static IEnumerable<Finding> Running(Lift lift, LiftBrief route, double degC, double flowM3PerH)
    {
        var mainLossM = DarcyWeisbach
            .Loss(lift.System.Runs[1], flowM3PerH / 3600, lift.System.KinematicViscosityM2PerS)
            .TotalM;
        var (runningBar, riseBar, leastM) = Lift.Pressure(route, lift.Main, mainLossM, lift.Water, flowM3PerH);
        yield return Finding.AtMost(
            "lift/main-pressure",
            runningBar + riseBar,
            Lift.AllowedBar(lift.Main, degC),
            "bar",
            Invariant(
                $"the main where its pressure is largest: {runningBar:0.0} bar while the pump runs and {riseBar:0.0} bar more when it stops hard"
            ),
            "Joukowsky; pressure class by temperature, EN 12201-1 (from memory)"
        );
        yield return new(
            "lift/main-vacuum",
            leastM >= LeastMainM ? FindingStatus.Holds : FindingStatus.Look,
            leastM >= LeastMainM
                ? "least head along the main when the pump stops hard"
                : "a hard stop, such as a cloud over an array without ramp, pulls a vacuum in the main: let the drive ramp down, fit air valves at the wellhead and the high points, and ask a specialist for a surge calculation",
            leastM,
            LeastMainM,
            "m",
            "Joukowsky; the limit from memory"
        );
    }

    private static IEnumerable<Finding> Closed(Lift lift, LiftBrief route, Survey survey, double shutOffM)
    {
        var degC = survey["pipe-temperature"];
        var bar = Lift.ClosedValveBar(route, survey, lift.Water, shutOffM);
        var allowedBar = Lift.AllowedBar(lift.Main, degC);
        yield return new(
            "lift/closed-valve",
            bar <= allowedBar ? FindingStatus.Holds : FindingStatus.Stop,
            bar <= allowedBar
                ? "the main against the pump's head at a closed valve"
                : "a float valve or gate that closes while the pump runs bursts this main: take the next pressure class",
            bar,
            allowedBar,
            "bar",
            "pump card and pipe card"
        );
        yield return Finding.AtMost(
            "lift/riser-pressure",
            PressureClass.PressureBar(shutOffM, lift.Water.DensityKgPerM3),
            Lift.AllowedBar(lift.Riser, degC),
            "bar",
            "the riser against the pump's head at a closed valve",
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
