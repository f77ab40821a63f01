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
    }
}
