using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the programme of the works.</summary>
internal static class ProgrammeFindings
{
    private const double ManDayH = 8;

    // Longer, and a crew is too small for the work: judgement, no source.
    private const double LongDays = 60;

    /// <summary>How long the labour of the bill takes the people there are, were none of them ever idle.</summary>
    /// <param name="design">The design with its takeoff.</param>
    /// <returns>The finding.</returns>
    public static IEnumerable<Finding> Of(Design design)
    {
        var manDays = design.Takeoff.Lines.Where(line => line.Item == Labour.Item).Sum(line => line.Quantity);
        var (people, hours) = (design.Survey["crew-people"], design.Survey["work-hours"]);
        var days = manDays * ManDayH / (people * hours);
        var waits = Math.Max(design.Survey["steel-wait"], design.Survey["goods-wait"]);
        yield return new(
            "programme/labour",
            days <= LongDays ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"the bill has {manDays:0} man-days of eight hours: at least {days:0} working days for {people:0} people of {hours:0.#} h; steel and goods take up to {waits:0} days to arrive, and concrete a week to cure; the programme says when what is done"
            ),
            days,
            LongDays,
            "d",
            "labour of the bill; beyond 60 days a larger crew is cheaper than its camp: judgement, no source"
        );
        if (design.Office.Forecast is { } forecast)
        {
            yield return Kept(design, forecast);
        }
    }

    private static Finding Kept(Design design, StationProgramme forecast)
    {
        var late = (forecast.Finish - design.Programme.Finish).TotalDays;
        var jumped =
            forecast.OutOfOrder.Count == 0
                ? ""
                : $"; begun too early: {string.Join(", ", forecast.OutOfOrder.Select(pair => $"{pair.Begun} before {pair.NotDone}"))}";
        return new(
            "programme/kept",
            late <= 0 && forecast.OutOfOrder.Count == 0 ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"by the report of {design.Brief.Progress!.On:d MMMM yyyy} the station is handed over on {forecast.Finish:d MMMM yyyy}, {Math.Abs(late):0} days {(late > 0 ? "later" : "earlier")} than planned{jumped}"
            ),
            late,
            0,
            "d",
            "what is left goes on from the day of the report, with the same people"
        );
    }
}
