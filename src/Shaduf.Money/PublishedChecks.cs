using Shaduf.Working;

namespace Shaduf.Money;

/// <summary>Which shipped kernel computes each quantity of the trade's published rows.</summary>
public static class PublishedChecks
{
    /// <summary>One check for each quantity that the published files of the trade name.</summary>
    public static IReadOnlyList<PublishedCheck> All { get; } =
    [
        new("money/bill", "direct", row => (double)FiveLines(row).Direct),
        new("money/unit-rate", "material", row => (double)OneSubtotal(row).Of(RateKind.Material)),
        new("money/unit-rate", "labour", row => (double)OneSubtotal(row).Of(RateKind.Labour)),
        new("money/unit-rate", "one-subtotal", row => (double)OneSubtotal(row).PerUnit),
        new("money/unit-rate", "running-total", row => (double)Compounded(row).PerUnit),
        new(
            "money/instalment",
            "instalment",
            row => row["principalAmount"] * Instalment.PaidShare(row["interestShare"], (int)row["periodCount"])
        ),
        new(
            "money/instalment",
            "owed",
            row =>
                row["principalAmount"]
                * Instalment.OwedShare(row["interestShare"], (int)row["periodCount"], (int)row["paidCount"])
        ),
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
        new("money/life-cycle-cost", "pipeline", row => (double)PipelineCost(row)),
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

    // What is left at the end is a renewal that brings money.
    private static decimal PipelineCost(PublishedCase row) =>
        LifeCycleCost.Cumulative(
            new(
                (decimal)row["capitalAmount"],
                (decimal)row["careAmount"],
                0,
                0,
                [new((int)row["yearCount"], -(decimal)row["salvageAmount"])]
            ),
            row["ratePerYear"],
            (int)row["yearCount"]
        )[^1];

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
                        new("", 2, [], [], (decimal)row["directAmount"])
                        {
                            Preliminaries = row.Inputs.ContainsKey("preliminariesAmount")
                                ? (decimal)row["preliminariesAmount"]
                                : 0,
                        },
                        new(row["contingencyShare"], row["overheadShare"], row["markupShare"], row["taxShare"])
                    )
                )
        );

    private static UnitRate OneSubtotal(PublishedCase row)
    {
        RateLine Line(RateKind kind, string name, string quantity) =>
            new(kind, name, (decimal)row[quantity], (decimal)row[$"{name}Amount"]);
        return UnitRate.Of(
            [
                Line(RateKind.Material, "cement", "cementBags"),
                Line(RateKind.Material, "sand", "sandM3"),
                Line(RateKind.Material, "stone", "stoneM3"),
                Line(RateKind.Labour, "mason", "masonDays"),
                Line(RateKind.Labour, "labour", "labourDays"),
            ],
            1,
            [new("water", 0.015), new("sundries", 0.03), new("overhead and profit", 0.15)],
            ShareBase.Lines
        );
    }

    private static UnitRate Compounded(PublishedCase row) =>
        UnitRate.Of(
            [
                new(RateKind.Labour, "mate", 1, (decimal)row["mateAmount"]),
                new(RateKind.Labour, "gang", 1, (decimal)row["gangAmount"]),
            ],
            (decimal)row["madeM3"],
            [
                new("water", row["waterShare"]),
                new("tools", 0, (decimal)row["toolsAmount"]),
                new("profit", row["profitShare"]),
            ]
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
