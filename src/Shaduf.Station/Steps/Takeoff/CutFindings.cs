using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the cut plans.</summary>
internal static class CutFindings
{
    /// <summary>Whether the bars are the cheapest, and which lengths could not be thought of.</summary>
    /// <param name="design">The design so far.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Design design)
    {
        var plans = design.Takeoff.BarPlans;
        var open = plans.Where(plan => !plan.Plan.IsProven).ToList();
        yield return new(
            "workshop/cut-plan",
            open.Count == 0 ? FindingStatus.Holds : FindingStatus.Look,
            open.Count == 0
                ? Invariant($"the bars of {plans.Count} sections are proved to be the cheapest for square cuts")
                : $"not proved to be the cheapest: {string.Join("; ", open.Select(plan => $"{plan.Section.Name} {CutPlans.Proof(plan.Plan)}"))}",
            open.Count,
            0,
            "sections",
            "bound by column generation"
        );
        if (CutPlans.Troubles(design.Works.SawnLots, design.Brief.Rack.Workshop) is { Count: > 0 } troubles)
        {
            yield return new(
                "workshop/cut-order",
                FindingStatus.Stop,
                $"left out of the cut plan and of the bill: {string.Join(' ', troubles)}",
                troubles.Count,
                0,
                "parts",
                "the cards' bars, the saw's kerf and the end trim of the brief"
            );
        }

        var rates = design.File.Prices.Rates;
        var workshop = design.Brief.Rack.Workshop;
        string[] unpriced =
        [
            .. workshop
                .OtherBars.Where(bar => plans.Any(plan => plan.Section.Name == bar.Section))
                .Where(bar => !rates.ContainsKey(bar.Item) || !rates.ContainsKey(bar.Section))
                .Select(bar => bar.Item),
        ];
        if (unpriced.Length > 0)
        {
            yield return new(
                "workshop/other-bars",
                FindingStatus.Look,
                $"bars left out of the cut plan because the price book has no rate for them or for the card's bar: {string.Join(", ", unpriced)}",
                unpriced.Length,
                0,
                "lengths",
                design.File.Prices.Name
            );
        }
    }
}
