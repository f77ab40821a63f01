using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the pump: does it start, does it stay on its curve, is it safe.</summary>
internal static class PumpFindings
{
    // Continuous duty, as a share of the flow of the best efficiency; from memory, the maker's limits win.
    private const double LeastDuty = 0.3;
    private const double MostDuty = 1.2;

    // Share of the water that may be pumped outside that range; judgement, no source.
    private const double MostOutside = 0.1;

    // Above this a pump gives little water at partial sun; from memory.
    private const double LateStartRatio = 0.9;

    // The affinity laws are trusted from here on.
    private const double SlowestTrustedRatio = 0.5;

    /// <summary>The findings.</summary>
    /// <param name="design">The design so far.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Design design)
    {
        var table = design.Sizing.Table;
        yield return Start(design);
        if (table.FullFlowM3PerH <= 0)
        {
            yield break;
        }

        yield return Duty(design);
        if (table.Points[0].Operating.SpeedRatio < SlowestTrustedRatio && design.Choice.Pump.Curve is PumpCurve)
        {
            yield return new(
                "pump/slow",
                FindingStatus.Look,
                "water is reckoned at speeds where the affinity laws are not trusted",
                table.Points[0].Operating.SpeedRatio * 100,
                SlowestTrustedRatio * 100,
                "%",
                "affinity laws, 50 to 120 % of the curve's speed; from memory"
            );
        }

        if (design.Choice.Pump is { Rotor: { } rotor })
        {
            yield return Relief(rotor);
            yield return Breakaway(design, rotor);
        }
    }

    // Whether the sun of the year turns the pump fast enough, and how early.
    private static Finding Start(Design design)
    {
        var (table, system) = (design.Sizing.Table, design.Choice.Lift.System);
        var curve = design.Choice.Pump.Curve;
        if (table.FullFlowM3PerH <= 0)
        {
            return new(
                "pump/start",
                FindingStatus.Stop,
                "the pump lifts no water here at any speed that its drive and the string's voltage allow",
                0,
                null,
                "m3/h",
                ""
            );
        }

        var hours = design.Trace.ArrayW.Count(watts => watts >= table.StartPowerW);
        var startRatio = curve.SpeedRatio(0, system.HeadM(0));
        var isLate = startRatio > LateStartRatio;
        return new(
            "pump/start",
            hours == 0 ? FindingStatus.Stop
                : isLate ? FindingStatus.Look
                : FindingStatus.Holds,
            Invariant(
                $"water comes from {startRatio * 100:0} % of the rated speed on, when the array gives {table.StartPowerW:#,0} W: {hours:#,0} hours of the year{(isLate ? "; so high a start leaves little water at partial sun" : "")}"
            ),
            startRatio * 100,
            LateStartRatio * 100,
            "%",
            "crossing of pump and system at no flow; limit from memory"
        );
    }

    private static Finding Duty(Design design)
    {
        var (table, curve) = (design.Sizing.Table, design.Choice.Pump.Curve);
        if (table.CappedByCurve)
        {
            return new(
                "pump/curve",
                FindingStatus.Look,
                "at full speed the pump would run off the end of its curve: the drive must be set to no more than this speed",
                table.HighestRatio * 100,
                100,
                "%",
                "pump card"
            );
        }

        var outsideM3 = 0.0;
        var allM3 = 0.0;
        foreach (var (hour, watts) in design.Trace.ArrayW.Index())
        {
            var flow = table.FlowM3PerH(watts);
            if (flow > 0)
            {
                var ratio = curve.SpeedRatio(flow / 3600, design.Choice.Lift.System.HeadM(flow / 3600));
                var duty = flow / 3600 / ratio / curve.BestFlowM3PerS;
                allM3 += design.Trace.PumpedM3[hour];
                outsideM3 += duty is < LeastDuty or > MostDuty ? design.Trace.PumpedM3[hour] : 0;
            }
        }

        var share = allM3 > 0 && curve is PumpCurve ? outsideM3 / allM3 : 0;
        return new(
            "pump/curve",
            share <= MostOutside ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"share of the year's water pumped below {LeastDuty * 100:0} % or above {MostDuty * 100:0} % of the flow that suits the pump best"
            ),
            share * 100,
            MostOutside * 100,
            "%",
            "range of continuous duty from memory, the maker's limits win; share: judgement, no source"
        );
    }

    private static Finding Relief(RotorCard rotor) =>
        new(
            "pump/relief",
            FindingStatus.Look,
            "a rotor that displaces its volume bursts what it cannot open: the relief valve of the bill is set to this head and no valve stands between it and the pump; running dry ruins the stator within minutes",
            rotor.ReliefHeadM,
            null,
            "m",
            "pump card"
        );

    // A stator that stood still or is new holds its rotor fast.
    private static Finding Breakaway(Design design, RotorCard rotor)
    {
        var (drive, motor) = (design.Choice.Drive, design.Choice.Pump.Motor);
        var amps = drive.Sheet.LargestMotorA * Electrics.DeratingShareOf(design.Brief, design.Survey);
        return new(
            "pump/breakaway",
            amps >= rotor.BreakawayShare * motor.RatedA ? FindingStatus.Holds : FindingStatus.Look,
            "current that the drive can give for a moment against what breaks the rotor loose, taken to rise with the torque; ask the drive's maker for its boost",
            amps,
            rotor.BreakawayShare * motor.RatedA,
            "A",
            "pump card; torque as current: common practice, no source"
        );
    }
}
