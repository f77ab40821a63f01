using Shaduf.Working;

namespace Shaduf.Money;

/// <summary>Which shipped kernel computes each quantity of the trade's published rows.</summary>
public static class PublishedChecks
{
    /// <summary>One check for each quantity that the published files of the trade name.</summary>
    public static IReadOnlyList<PublishedCheck> All { get; } =
    [
        new("money/bill", "direct", row => (double)FiveLines(row).Direct),
        Offered("overhead", offer => offer.Overhead),
        Offered("profit", offer => offer.Profit),
        Offered("tax", offer => offer.Tax),
        Offered("total", offer => offer.Total),
        new("money/mark-up", "margin", row => MarkUp.MarginShare(row["markUpShare"])),
        new("money/mark-up", "mark-up", row => MarkUp.Share(row["marginShare"])),
        new(
            "money/present-worth",
            "yearly",
            row => PresentWorth.YearlyFactor(row["ratePerYear"], (int)row["yearCount"])
        ),
        new("money/present-worth", "once", row => PresentWorth.OnceFactor(row["ratePerYear"], (int)row["year"])),
        new(
            "money/present-worth",
            "recovery",
            row => PresentWorth.RecoveryFactor(row["ratePerYear"], (int)row["yearCount"])
        ),
        new(
            "money/present-worth",
            "real-rate",
            row => 100 * PresentWorth.RealPerYear(row["nominalPerYear"], row["inflationPerYear"])
        ),
        new("money/life-cycle-cost", "solar", row => (double)SolarCost(row)[^1]),
        new("money/life-cycle-cost", "diesel", row => (double)DieselCost(row)[^1]),
        new(
            "money/life-cycle-cost",
            "break-even",
            row =>
                LifeCycleCost.BreakEvenYear(ExampleSolar(row["ratePerYear"], 16_000, 250, 2600), DieselCost(row)) ?? -1
        ),
    ];

    private static IReadOnlyList<decimal> SolarCost(PublishedCase row) =>
        ExampleSolar(
            row["ratePerYear"],
            (decimal)row["capitalAmount"],
            (decimal)row["careAmount"],
            (decimal)row["renewalAmount"]
        );

    private static IReadOnlyList<decimal> ExampleSolar(
        double ratePerYear,
        decimal capital,
        decimal care,
        decimal renewal
    ) => LifeCycleCost.Cumulative(new(capital, care, 0, 0, [new(8, renewal), new(16, renewal)]), ratePerYear, 20);

    private static IReadOnlyList<decimal> DieselCost(PublishedCase row)
    {
        Renewal[] sets = [.. new[] { 7, 14 }.Select(year => new Renewal(year, (decimal)row["setAmount"]))];
        Renewal[] overhauls =
        [
            .. new[] { 3, 6, 10, 13, 17 }.Select(year => new Renewal(year, (decimal)row["overhaulAmount"])),
        ];
        return LifeCycleCost.Cumulative(
            new(
                (decimal)row["capitalAmount"],
                (decimal)row["careAmount"],
                (decimal)(row["fuelL"] * row["litreAmount"]),
                row["risePerYear"],
                [.. sets, .. overhauls]
            ),
            row["ratePerYear"],
            (int)row["yearCount"]
        );
    }

    private static PublishedCheck Offered(string quantity, Func<Offer, decimal> take) =>
        new(
            "money/offer",
            quantity,
            row =>
                (double)take(
                    Offer.From(
                        new("", 2, [], [], (decimal)row["directAmount"]),
                        new(row["contingencyShare"], row["overheadShare"], row["markupShare"], row["taxShare"])
                    )
                )
        );

    private static Bill FiveLines(PublishedCase row)
    {
        (string Item, string Unit, double Quantity, double Rate)[] lines =
        [
            ("steel", "kg", row["steelKg"], row["steelAmountPerKg"]),
            ("sand", "m3", row["sandM3"], row["sandAmountPerM3"]),
            ("stone", "m3", row["stoneM3"], row["stoneAmountPerM3"]),
            ("first sum", "sum", 1, row["sum1Amount"]),
            ("second sum", "sum", 1, row["sum2Amount"]),
        ];
        return Bill.Price(
            [.. lines.Select(line => GroundLine(line.Item, line.Unit, line.Quantity))],
            new(
                "",
                "",
                2,
                "",
                lines.ToDictionary(line => line.Item, line => new Rate(line.Item, line.Unit, (decimal)line.Rate, ""))
            )
        );
    }

    private static QuantityLine GroundLine(string item, string unit, double quantity) =>
        new(item, BillSection.Ground, item, unit, quantity, "published row");
}
