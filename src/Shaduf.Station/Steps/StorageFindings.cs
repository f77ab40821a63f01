using Shaduf.Sun;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the tank: does it carry a day over, how long does it last, where does too much water go.</summary>
internal static class StorageFindings
{
    // Water above the lip of the overflow when it carries the full flow; common practice, no source.
    private const double OverflowHeadM = 0.10;

    // Sizes of pipe by bore [mm]; the overflow is one size above the inlet at least, from memory.
    private static readonly double[] BoresMm = [32, 40, 50, 65, 80, 100, 125, 150, 200, 250, 300];

    /// <summary>The findings.</summary>
    /// <param name="design">The design so far.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Design design)
    {
        var dayM3 = design.Demand.M3PerDay.Max();
        yield return new(
            "tank/autonomy",
            FindingStatus.Holds,
            "days for which the full tank carries the largest demand with no pumping at all",
            dayM3 > 0 ? design.Choice.UsefulM3 / dayM3 : null,
            null,
            "days",
            "useful volume over demand"
        );
        if (MassCurveM3(design) is { } neededM3)
        {
            yield return new(
                "tank/mass-curve",
                design.Choice.UsefulM3 >= neededM3 ? FindingStatus.Holds : FindingStatus.Look,
                Invariant(
                    $"useful volume against what carries the whole demand of the mean day of {YearCalendarNames.Months[design.Year.WorstMonth]} from its hours of sun to its hours of draw; the year run decides"
                ),
                design.Choice.UsefulM3,
                neededM3,
                "m3",
                "Rippl 1883, mass curve; supply and draw of the year run"
            );
        }

        if (Overflow(design) is { } overflow)
        {
            yield return overflow;
        }

        if (design.Works.Taps.Heads.Count > 0)
        {
            yield return Stand(design);
        }
    }

    // The pumpable hours of the mean day, not what a full tank turned away.
    private static double? MassCurveM3(Design design)
    {
        var month = design.Year.WorstMonth;
        var (supply, draw) = (new double[24], new double[24]);
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            if (YearCalendar.MonthOf(hour) == month)
            {
                supply[hour % 24] += design.Sizing.Table.FlowM3PerH(design.Trace.ArrayW[hour]);
                draw[hour % 24] += design.Demand.HourM3[hour];
            }
        }

        var (supplied, drawn) = (supply.Sum(), draw.Sum());
        return supplied > 0 && drawn > 0
            ? MassCurve.UsefulShare([.. supply.Select(each => each / supplied)], [.. draw.Select(each => each / drawn)])
                * drawn
                / YearCalendar.DaysInMonth[month]
            : null;
    }

    private static Finding? Overflow(Design design)
    {
        var flow = design.Sizing.Table.FullFlowM3PerH / 3600;
        var boreMm = BoresMm.FirstOrDefault(bore =>
            bore > design.Choice.Lift.Main.BoreMm && Water.Overflow.FlowM3PerS(bore / 1000, OverflowHeadM) >= flow
        );
        return flow > 0
            ? new(
                "tank/overflow",
                boreMm > 0 ? FindingStatus.Holds : FindingStatus.Look,
                boreMm > 0
                    ? Invariant(
                        $"an overflow of {boreMm:0} mm bore carries the full flow away with {OverflowHeadM * 100:0} cm of water over its lip: lead it to a safe place in sight, with a screen, lip below the rim by that and 5 cm more"
                    )
                    : "no common pipe carries the full flow away: two overflows are needed",
                boreMm > 0 ? Water.Overflow.FlowM3PerS(boreMm / 1000, OverflowHeadM) * 3600 : 0,
                flow * 3600,
                "m3/h",
                "weir and orifice, from memory"
            )
            : null;
    }

    // Each metre of stand is a metre at every tap that no break-pressure tank parts from it.
    private static Finding Stand(Design design)
    {
        var standM = design.Brief.Tank.StandM;
        var taps = design.Works.Taps;
        var lowest = taps.OnTheTank.MinBy(tap => tap.ResidualM - tap.WantedM);
        var neededM = lowest is null ? 0 : Math.Max(0, standM + lowest.WantedM - lowest.ResidualM);
        return new(
            "tank/stand",
            standM >= neededM ? FindingStatus.Holds : FindingStatus.Look,
            lowest is null || neededM <= 0
                ? "no stand is needed: the ground at the tank gives every tap its head"
                : Invariant(
                    $"height of the tank's floor against what '{lowest.Name}' needs for {lowest.WantedM:0} m of head with all taps open; a larger pipe to it may need less"
                ),
            standM,
            neededM,
            "m",
            "Jordan 1984: 5 m at least"
        );
    }
}
