using Shaduf.Working;
using static System.FormattableString;

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
            var held = Finding.AtMost(
                "money/budget",
                (double)design.Offer.Total,
                budget,
                design.Offer.Currency,
                "the offer against what the client can pay",
                "brief"
            );
            yield return held.Status == FindingStatus.Holds && !design.Offer.Complete
                ? held with
                {
                    Status = FindingStatus.Unchecked,
                    Says = "the offer against what the client can pay: the total is incomplete",
                }
                : held;
        }

        yield return Cash(design);
        yield return OverTheYears(design.LifeCycle);
        var passedOver = Unpriced(design).ToList();
        if (passedOver.Count > 0)
        {
            yield return new(
                "money/passed-over",
                FindingStatus.Look,
                $"no rate, so never chosen: {string.Join(", ", passedOver)}",
                passedOver.Count,
                0,
                "cards",
                design.File.Prices.Name
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

    private static Finding Cash(Design design)
    {
        var lowest = design.Office.Cash.Lowest;
        var own = (double)-(lowest?.Balance ?? 0);
        return new(
            "money/cash",
            own > 0 ? FindingStatus.Look : FindingStatus.Holds,
            own > 0
                ? Invariant(
                    $"most of the builder's own money in the work, on {lowest!.Day:d MMMM yyyy}: have it, or agree on earlier stages"
                )
                : "the client's stages always pay ahead of the work: most of the builder's own money in it",
            Math.Max(own, 0),
            0,
            design.Offer.Currency,
            "costs spread over their activities, stages of the offer; tax is passed on as it comes in"
        );
    }

    private static Finding OverTheYears(LifeCycle life) =>
        life switch
        {
            { Unpriced.Count: > 0 } => new(
                "money/life-cycle",
                FindingStatus.Unchecked,
                $"solar against a diesel set is not reckoned; no rate for: {string.Join(", ", life.Unpriced)}",
                life.Unpriced.Count,
                0,
                "items",
                ""
            ),
            { Diesel: null } => new(
                "money/life-cycle",
                FindingStatus.Unchecked,
                "solar against a diesel set is not reckoned: at rated speed the pump lifts no water here, or no set is large enough",
                null,
                null,
                "",
                ""
            ),
            _ => new(
                "money/life-cycle",
                life.BreakEvenYear is null ? FindingStatus.Look : FindingStatus.Holds,
                life.BreakEvenYear is null
                    ? Invariant(
                        $"within {life.YearCount} years solar does not become cheaper than a diesel set on the same duty"
                    )
                    : Invariant(
                        $"year by whose end solar has cost no more than a diesel set on the same duty, of {life.YearCount} years looked at; fuel price, rate and lives are local"
                    ),
                life.BreakEvenYear,
                life.YearCount,
                "year",
                "life-cycle cost; assumptions in the book"
            ),
        };

    private static IEnumerable<string> Unpriced(Design design) =>
        design
            .File.Shelf.Cards.Where(card => card is PumpCard or DriveCard or ModuleCard or TankCard)
            .Select(card => card.Name)
            .Where(name => !design.File.Prices.Rates.ContainsKey(name));

    private static IEnumerable<string> PlanningCards(Choice choice) =>
        new Card[] { choice.Pump, choice.Drive, choice.Module, choice.Lift.Foot.Card, choice.Tank }
            .Concat(choice.Lift.Lay.Reaches.Select(reach => reach.Pipe))
            .Where(card => card.IsPlanningData)
            .Select(card => card.Name)
            .Distinct();
}
