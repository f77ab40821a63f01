using Shaduf.Sun;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What a log tells of its station, by stated rules; their limits are judgement without a source.</summary>
internal static class LogFindings
{
    private const double LeastToldShare = 0.95;
    private const double LeastWaterShare = 0.9;
    private const double SoiledShare = 0.05;
    private const double WornRatio = -0.05;
    private const double WornChanceShare = 0.05;
    private const double WeakRatio = 0.9;
    private const double LeakShare = 0.05;
    private const double BackflowShare = 0.02;
    private const double ClockMin = 30;
    private const double ClockPerInterval = 0.25;
    private const int LastWeeks = 4;
    private const string Rule = "rule of the method page station/logs; judgement, no source";

    /// <summary>The findings.</summary>
    public static IReadOnlyList<Finding> Of(Design design, LogReport report) =>
        [
            Told(report),
            .. Marred(report),
            Clock(report),
            Water(report),
            Units(report),
            Dust(report),
            Pump(report),
            Leak(design, report),
            Back(design, report),
            Rest(design, report),
        ];

    private static Finding Unchecked(string id, string says) =>
        new(id, FindingStatus.Unchecked, says, null, null, "", "");

    private static Finding Judged(
        string id,
        bool isWell,
        string says,
        (double Value, double Limit, string Unit) figures
    ) =>
        new(
            id,
            isWell ? FindingStatus.Holds : FindingStatus.Look,
            says,
            figures.Value,
            figures.Limit,
            figures.Unit,
            Rule
        );

    private static Finding Told(LogReport report)
    {
        var logged = report.Weeks.Sum(week => week.LoggedH);
        var missing = report.MissingCount * report.IntervalS / 3600.0;
        var share = logged / Math.Max(logged + missing, 1e-9);
        return Judged(
            "logs/told",
            share >= LeastToldShare,
            Invariant(
                $"{logged:0} h are told and {missing:0} h are missing in {report.FaultCounts[LogFaultKind.Gap]} gaps; only told hours are compared"
            ),
            (share * 100, LeastToldShare * 100, "%")
        );
    }

    private static IEnumerable<Finding> Marred(LogReport report)
    {
        (LogFaultKind Kind, string Id, string Says)[] kinds =
        [
            (LogFaultKind.NotARow, "logs/rows", "lines that are no rows are left out"),
            (LogFaultKind.NotANumber, "logs/numbers", "cells that are no numbers are left out"),
            (LogFaultKind.Impossible, "logs/impossible", "figures that cannot be at this station are left out"),
            (LogFaultKind.Repeated, "logs/repeated", "rows that stand twice are counted once"),
            (LogFaultKind.Contradicts, "logs/contradicts", "times with two rows that differ: the first is counted"),
        ];
        return kinds
            .Where(each => report.FaultCounts[each.Kind] > 0)
            .Select(each =>
                Judged(
                    each.Id,
                    false,
                    $"{each.Says}; first on line {report.Faults.First(fault => fault.Kind == each.Kind).Line}",
                    (report.FaultCounts[each.Kind], 0, "")
                )
            );
    }

    private static Finding Clock(LogReport report)
    {
        var back = report.FaultCounts[LogFaultKind.ClockBack];
        var limitMin = ClockMin + (ClockPerInterval * report.IntervalS / 60);
        var off = report.Weeks.Where(week => Math.Abs(week.ClockOffMin ?? 0) >= limitMin).ToList();
        var told = report.Weeks.Where(week => week.ClockOffMin is not null).ToList();
        var apart =
            back > 0
                ? Invariant(
                    $"the clock goes back {back} times, first on line {report.Faults.First(fault => fault.Kind == LogFaultKind.ClockBack).Line}: {report.Apart.Count} rows with {report.Apart.WaterM3:0.0} m3 are counted apart. "
                )
                : "";
        if (told.Count == 0)
        {
            return back > 0
                ? Judged(
                    "logs/clock",
                    false,
                    apart + "No light is logged, so the clock cannot be held against the sun",
                    (back, 0, "")
                )
                : Unchecked("logs/clock", "no light is logged, so the clock cannot be held against the sun");
        }

        var worst = told.MaxBy(week => Math.Abs(week.ClockOffMin!.Value))!.ClockOffMin!.Value;
        var says =
            off.Count > 0
                ? Invariant(
                    $"in {off.Count} weeks, first in that of {off[0].From:yyyy-MM-dd}, the middle of the day's light is up to {Math.Abs(worst):0} min {(worst > 0 ? "later" : "earlier")} by the log's clock than the sun's noon: set the clock to the site's standard time"
                )
                : "the middle of the day's light agrees with the sun's noon";
        return Judged("logs/clock", back == 0 && off.Count == 0, apart + says, (Math.Abs(worst), limitMin, "min"));
    }

    private static Finding Water(LogReport report)
    {
        var (water, expected) = (report.Weeks.Sum(week => week.WaterM3), report.Weeks.Sum(week => week.ExpectedM3));
        if (!report.Columns.Contains(LogColumn.Flow) || expected <= 0)
        {
            return Unchecked("logs/water", "no flow is logged in hours in which some was to be expected");
        }

        var worst = report.Weeks.Where(week => week.WaterShare is not null).MinBy(week => week.WaterShare)!;
        return Judged(
            "logs/water",
            water >= LeastWaterShare * expected,
            Invariant(
                $"{water:0} m3 came, {expected:0} m3 were to be expected by {report.Basis}; least in the week of {worst.From:yyyy-MM-dd}, {worst.WaterShare * 100:0} %"
            ),
            (water / expected * 100, LeastWaterShare * 100, "%")
        );
    }

    private static Finding Units(LogReport report)
    {
        var pumped = report
            .Weeks.Where(week => week.PumpRatio is not null)
            .Select(week => week.PumpRatio!.Value)
            .Order()
            .ToList();
        var ratio =
            pumped.Count > 0 ? pumped[pumped.Count / 2]
            : report.Weeks.Sum(week => week.ExpectedM3) is > 0 and var expected
                ? report.Weeks.Sum(week => week.WaterM3) / expected
            : 1;
        var likely = ratio > 0 ? LogUnits.Likely(ratio, report.FlowUnit) : null;
        return Judged(
            "logs/units",
            likely is null,
            likely is null
                ? "the figures are of the size of the station's"
                : Invariant(
                    $"flow is {ratio:0.###} times what the station gives at the power told, all the time: is column {report.FlowPlace} of the heading, 'flow {report.FlowUnit}', in {likely}?"
                ),
            (ratio, 1, "")
        );
    }

    private static Finding Dust(LogReport report)
    {
        if (report.Soiling is not { } dust)
        {
            return Unchecked(
                "logs/soiling",
                "dust cannot be told: light and power must be logged for six weeks, in light that the pump can use up"
            );
        }

        var washed =
            dust.WashedWeeks.Count > 0
                ? $"; washed, by hand or rain, in the week of {string.Join(", ", dust.WashedWeeks.Select(week => Invariant($"{report.Weeks[0].From.AddDays((int)(7 * week)):yyyy-MM-dd}")))}"
                : "; never washed in this time: if washing changes nothing, look for shade and ageing";
        return Judged(
            "logs/soiling",
            dust.LostShare < SoiledShare,
            Invariant(
                $"the array gives {dust.LostShare * 100:0.0} % less in the last two weeks than when it was clean; between washings it changes by {dust.PerWeekRatio * 100:+0.00;-0.00;0.00} % a week{washed}"
            ),
            (dust.LostShare * 100, SoiledShare * 100, "%")
        );
    }

    private static Finding Pump(LogReport report)
    {
        var told = report.Weeks.Where(week => week.PumpRatio is not null).ToList();
        if (report.PumpTrend is not { } trend)
        {
            return Unchecked("logs/pump", "wear cannot be told: flow and power must be logged for six weeks");
        }

        var span = (told[^1].From.DayNumber - told[0].From.DayNumber) / 7.0;
        var change = trend.ChangeRatio * span;
        var first = told.Take(LastWeeks).Average(week => week.PumpRatio!.Value);
        var isWorn = change <= WornRatio && trend.ChanceShare < WornChanceShare;
        var level = report.Columns.Contains(LogColumn.Level)
            ? ""
            : "; the level in the well is not logged, so a falling level may do the same";
        var says =
            isWorn
                ? Invariant(
                    $"at the same power the pump gives {-change * 100:0.0} % less after {span:0} weeks than at first: worn wheels, a leaking riser or a blocked strainer{level}"
                )
            : first < WeakRatio
                ? Invariant(
                    $"from the first week the pump gives {(1 - first) * 100:0} % less than the design's at the same power: look at riser, valves and direction of turning{level}"
                )
            : Invariant($"at the same power the pump gives the same water over {span:0} weeks");
        return Judged("logs/pump", !isWorn && first >= WeakRatio, says, (change * 100, WornRatio * 100, "%"));
    }

    // The quietest night of a week leaks what it loses beyond what the design's pattern draws in those hours.
    private static Finding Leak(Design design, LogReport report)
    {
        var told = report.Weeks.Where(week => week.NightLossM3PerH is not null).TakeLast(LastWeeks).ToList();
        if (told.Count == 0)
        {
            return Unchecked(
                "logs/leak",
                "leaks cannot be told: the height of the water in the tank is not logged through the nights"
            );
        }

        var drawn = NightDrawM3PerH(design);
        var limit = LeakShare * design.Demand.M3PerDay.Average() / 24;
        var leaks = told.Select(week => week.NightLossM3PerH!.Value - drawn).ToList();
        var leak = leaks.Order().ElementAt(leaks.Count / 2);
        return Judged(
            "logs/leak",
            leak < limit,
            Invariant(
                $"in the quietest nights of the last {told.Count} weeks the tank lost {leak * 1000:0} L/h beyond the {drawn * 1000:0} L/h that are drawn then, {leak * 24:0.0} m3 a day: look at taps, pipes, washout and the tank's joints when it is much"
            ),
            (leak, limit, "m3/h")
        );
    }

    private static double NightDrawM3PerH(Design design)
    {
        var draws = design.Demand.HourM3;
        return Enumerable
            .Range(0, YearCalendar.HourCount)
            .Where(hour => hour % 24 is >= 22 or < 4)
            .Average(hour => draws[hour]);
    }

    private static Finding Back(Design design, LogReport report)
    {
        var told = report.Weeks.Where(week => week.NightFlowM3PerH is not null).TakeLast(LastWeeks).ToList();
        if (told.Count == 0)
        {
            return Unchecked("logs/back", "flow at night is not logged: a check valve that leaks cannot be told");
        }

        var flow = told.Select(week => week.NightFlowM3PerH!.Value).Order().ElementAt(told.Count / 2);
        var limit = BackflowShare * design.Sizing.Table.FullFlowM3PerH;
        return Judged(
            "logs/back",
            flow < limit,
            flow < limit
                ? "no water runs at night while the pump stands"
                : Invariant(
                    $"{flow:0.00} m3/h run at night while the pump stands: the check valve leaks, or the meter's zero is off"
                ),
            (flow, limit, "m3/h")
        );
    }

    private static Finding Rest(Design design, LogReport report)
    {
        var told = report.Weeks.Where(week => week.RestM is not null).ToList();
        if (told.Count == 0)
        {
            return Unchecked("logs/rest", "the level in the well before pumping is not logged");
        }

        var deepest = told.MaxBy(week => week.RestM)!;
        return Judged(
            "logs/rest",
            deepest.RestM <= design.Source.RestDryM + 0.5,
            Invariant(
                $"the water before pumping stands deepest, at {deepest.RestM:0.0} m, in the week of {deepest.From:yyyy-MM-dd}; the design counts with {design.Source.RestDryM:0.0} m in the dry season"
            ),
            (deepest.RestM!.Value, design.Source.RestDryM + 0.5, "m")
        );
    }
}
