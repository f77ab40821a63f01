using Shaduf.Money;
using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The bill and the offer's total as tables.</summary>
internal static class BillTables
{
    public static IEnumerable<Block> Quantities(Design design)
    {
        yield return new Heading(1, "Quantities and cost");
        yield return new Paragraph(
            $"Rates: {design.File.Prices.Name}, {design.File.Prices.Date}, in {design.Bill.Currency}. The spreadsheet of the pack holds the same lines with live formulas and the origin of each."
        );
        var rows = new List<TableRow>();
        foreach (var section in design.Bill.Lines.GroupBy(line => line.Quantity.Section))
        {
            rows.Add(TableRow.Section($"{(char)section.Key}  {SectionName(section.Key)}"));
            rows.AddRange(
                section.Select(line =>
                    TableRow.Of(
                        line.Code,
                        line.Quantity.Description,
                        line.Quantity.Unit,
                        Invariant($"{line.Quantity.Quantity:0.##}"),
                        line.UnitRate is { } rate ? Invariant($"{rate:#,0.00}") : "no rate",
                        line.Amount is { } amount ? Invariant($"{amount:#,0.00}") : "-"
                    )
                )
            );
        }

        var offer = design.Offer;
        foreach (var (name, amount) in OfferLines(offer))
        {
            rows.Add(TableRow.Total("", name, "", "", "", Invariant($"{amount:#,0.00}")));
        }

        yield return new Table(
            [
                new("item", 0.6),
                new("description", 4),
                new("unit", 0.5),
                new("quantity", 0.9, HorizontalAnchor.Right),
                new("rate", 1, HorizontalAnchor.Right),
                new("amount", 1.2, HorizontalAnchor.Right),
            ],
            rows
        )
        {
            SizeMm = Lettering.SmallMm,
        };
        if (!design.Bill.Complete)
        {
            yield return new Notice(
                FindingStatus.Look,
                $"The total is incomplete: no rate for {string.Join(", ", design.Bill.Unpriced)}."
            );
        }
    }

    public static IEnumerable<(string Name, decimal Amount)> OfferLines(Offer offer) =>
        [
            ("direct cost", offer.Direct),
            ("preliminaries: section A", offer.Preliminaries),
            ("contingency", offer.Contingency),
            ("overhead", offer.Overhead),
            ("profit", offer.Profit),
            .. offer.Provisional > 0
                ? [("provisional sums: section L", offer.Provisional)]
                : Array.Empty<(string, decimal)>(),
            ("tax", offer.Tax),
            ("offer", offer.Total),
        ];

    public static string SectionName(BillSection section) =>
        section switch
        {
            BillSection.General => "General",
            BillSection.SourceAndPump => "Source and pump",
            BillSection.PipesAndTank => "Pipes, valves, tank",
            BillSection.ArrayAndElectrics => "Modules and electrics",
            BillSection.Steelwork => "Steelwork",
            BillSection.Ground => "Ground and concrete",
            BillSection.LightAndEarthing => "Light, earthing, lightning",
            BillSection.FenceAndGate => "Fence and gate",
            BillSection.TapsAndDrainage => "Taps and drainage",
            BillSection.Commissioning => "Commissioning",
            _ => "Provisional sums",
        };
}
