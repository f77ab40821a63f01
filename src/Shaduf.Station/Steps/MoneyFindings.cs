using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>Findings on the money.</summary>
internal static class MoneyFindings
{
    /// <summary>Whether everything is priced and the budget holds.</summary>
    /// <param name="design">The design so far.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Design design)
    {
        var unpriced = design.Bill.Unpriced;
        yield return new(
            "money/complete",
            unpriced.Count == 0 ? FindingStatus.Holds : FindingStatus.Look,
            unpriced.Count == 0
                ? "every item has a rate"
                : $"the total is incomplete; no rate for: {string.Join(", ", unpriced)}",
            unpriced.Count,
            0,
            "items",
            design.File.Prices.Name
        );
        if (design.Brief.Money.Budget is { } budget)
        {
            yield return Finding.AtMost(
                "money/budget",
                (double)design.Offer.Total,
                budget,
                design.Offer.Currency,
                "the offer against what the client can pay",
                "brief"
            );
        }

        var planning = PlanningCards(design.Choice).ToList();
        yield return new(
            "cards/planning-data",
            planning.Count == 0 ? FindingStatus.Holds : FindingStatus.Look,
            planning.Count == 0
                ? "every card is a supplier's data sheet"
                : $"planning data, to be replaced by the supplier's data sheet before ordering: {string.Join(", ", planning)}",
            planning.Count,
            0,
            "cards",
            ""
        );
    }

    private static IEnumerable<string> PlanningCards(Choice choice) =>
        new Card[] { choice.Pump, choice.Drive, choice.Module, choice.Lift.Riser, choice.Lift.Main, choice.Tank }
            .Where(card => card.IsPlanningData)
            .Select(card => card.Name)
            .Distinct();
}
