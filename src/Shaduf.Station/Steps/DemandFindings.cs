using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the demand.</summary>
internal static class DemandFindings
{
    // Sphere Handbook 2018, water supply standard 2.1.
    private const double LeastLPerDay = 15;

    /// <summary>What the demand comes to, and whether it is served on its peak day and by enough taps.</summary>
    /// <param name="design">The design so far.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Design design)
    {
        var demand = design.Demand;
        yield return new(
            "demand/peak",
            FindingStatus.Holds,
            Invariant($"largest demand, in {YearCalendarNames.Months[demand.PeakMonth]}, losses included"),
            demand.M3PerDay[demand.PeakMonth],
            null,
            "m3/d",
            "brief and table of defaults"
        );
        yield return PeakDay(design);
        foreach (var heads in design.Brief.Uses.People)
        {
            if (design.Survey.LitresOf(heads) is var litres && litres < LeastLPerDay)
            {
                yield return new(
                    "demand/least",
                    FindingStatus.Look,
                    $"{heads.Name} receive less than the least amount in an emergency",
                    litres,
                    LeastLPerDay,
                    "L/d",
                    "Sphere Handbook 2018, water supply standard 2.1"
                );
            }
        }

        if (Taps(design) is { } taps)
        {
            yield return taps;
        }
    }

    private static Finding PeakDay(Design design)
    {
        var month = design.Demand.PeakMonth;
        var thereM3 = design.Choice.UsefulM3 + design.Months[month].PumpableM3PerDay;
        var holds = design.Demand.PeakDayM3 <= thereM3;
        return new(
            "demand/peak-day",
            holds ? FindingStatus.Holds : FindingStatus.Look,
            holds
                ? "water asked for on the peak day, against a full tank and what a mean day of that month pumps"
                : "the peak day asks for more than a full tank and a mean day's pumping: some go short on that day",
            design.Demand.PeakDayM3,
            thereM3,
            "m3",
            "peak day 1.1 to 1.3 times the mean day, IRC Technical Paper Series 40 style; from memory"
        );
    }

    private static Finding? Taps(Design design)
    {
        var survey = design.Survey;
        var people = Population.GeometricCount(
            design.Brief.Uses.People.Where(heads => survey.LitresOf(heads) <= AtStandpostL).Sum(heads => heads.Count),
            survey["growth"],
            survey["design-years"]
        );
        if (design.Brief.Taps is not { } line || people < 1)
        {
            return null;
        }

        var needed = Water.PeakDay.TapCount(people);
        var holds = line.Taps.Count >= needed;
        return new(
            "demand/taps",
            holds ? FindingStatus.Holds : FindingStatus.Look,
            holds
                ? Invariant($"taps for {people:0} people in the design year")
                : Invariant($"too few taps for {people:0} people in the design year: they will queue, or double them"),
            line.Taps.Count,
            needed,
            "",
            "Sphere Handbook 2018, water supply standard 2.1: 250 people a tap that runs eight hours a day"
        );
    }

    // Who uses more has water at home.
    private const double AtStandpostL = 35;
}
