using Shaduf.Money;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Where the figures of the sheet Quantities stand.</summary>
/// <param name="Sections">First and last row of the lines of each section.</param>
/// <param name="Provisional">Row of the provisional sums; null without any.</param>
/// <param name="Tax">Row of the tax.</param>
/// <param name="Total">Row of the total.</param>
internal sealed record BillRows(
    IReadOnlyDictionary<BillSection, (int First, int Last)> Sections,
    int? Provisional,
    int Tax,
    int Total
);

/// <summary>The bill as a sheet: every line and every total is a live formula with the figure that it comes to.</summary>
internal static class BillSheet
{
    /// <summary>Writes the sheet.</summary>
    /// <param name="sheet">The spreadsheet.</param>
    /// <param name="design">The design.</param>
    /// <returns>Where its figures stand.</returns>
    public static async Task<BillRows> WriteAsync(Sheet sheet, Design design)
    {
        await sheet.StartAsync(
            "Quantities",
            $"{design.Brief.Head.Name}: quantities, rates of {design.File.Prices.Name}, {design.File.Prices.Date}, in {design.Bill.Currency}",
            ("code", 7),
            ("item", 18),
            ("description", 46),
            ("unit", 6),
            ("quantity", 11),
            ("rate", 12),
            ("amount", 14),
            ("net, as built", 11),
            ("waste", 8),
            ("origin", 60),
            ("traced to", 50)
        );
        var first = sheet.NextRow;
        var (afterFirst, provisional) = (first, 0);
        var sections = new Dictionary<BillSection, (int, int)>();
        foreach (var section in design.Bill.Lines.GroupBy(line => line.Quantity.Section))
        {
            provisional = section.Key == BillSection.ProvisionalSums ? sheet.NextRow : provisional;
            await sheet.RowAsync(sheet.Bold($"{(char)section.Key}"), sheet.Bold(BillTables.SectionName(section.Key)));
            var firstLine = sheet.NextRow;
            foreach (var line in section)
            {
                await LineAsync(sheet, line, design);
            }

            sections[section.Key] = (firstLine, sheet.NextRow - 1);

            afterFirst = section.Key == BillSection.General ? sheet.NextRow : afterFirst;
        }

        return await TotalsAsync(
            sheet,
            design,
            sections,
            (first, afterFirst, provisional > 0 ? provisional : sheet.NextRow)
        );
    }

    private static async Task LineAsync(Sheet sheet, BillLine line, Design design)
    {
        var (row, digits) = (sheet.NextRow, design.Bill.MinorDigits);
        var quantity = line.Quantity;
        await sheet.RowAsync(
            new(line.Code),
            new(quantity.Item),
            sheet.Text(quantity.Description),
            new(quantity.Unit),
            sheet.Number(quantity.Quantity),
            sheet.Rate(line.UnitRate),
            line.Amount is { } amount
                ? sheet.Computed(Invariant($"ROUND(E{row}*F{row},{digits})"), amount)
                : new("no rate"),
            sheet.Number(Math.Round(quantity.NetQuantity, 3)),
            sheet.Percent(Math.Round(quantity.WasteShare, 4)),
            sheet.Text(quantity.Origin),
            sheet.Text(string.Join("; ", LineOrigins.Of(design, quantity).Select(origin => origin.Says)))
        );
    }

    private static async Task<BillRows> TotalsAsync(
        Sheet sheet,
        Design design,
        IReadOnlyDictionary<BillSection, (int First, int Last)> sections,
        (int First, int AfterGeneral, int Provisional) rows
    )
    {
        var (offer, survey, digits) = (design.Offer, design.Survey, design.Bill.MinorDigits);
        var direct = sheet.NextRow;
        async Task Row(string name, double? share, string formula, decimal value) =>
            await sheet.RowAsync(
                new(""),
                new(""),
                sheet.Bold(name),
                new(""),
                new(""),
                share is { } given ? sheet.Percent(given) : new(""),
                sheet.Computed(formula, value, isTotal: true)
            );
        await Row("direct cost", null, Invariant($"SUM(G{rows.AfterGeneral}:G{rows.Provisional - 1})"), offer.Direct);
        await Row(
            "preliminaries",
            null,
            Invariant($"SUM(G{rows.First}:G{rows.AfterGeneral - 1})"),
            offer.Preliminaries
        );
        await Row(
            "contingency",
            survey["contingency"],
            Invariant($"ROUND(G{direct}*F{direct + 2},{digits})"),
            offer.Contingency
        );
        async Task Added(string name, double share, decimal value)
        {
            var row = sheet.NextRow;
            await Row(name, share, Invariant($"ROUND(SUM(G{direct}:G{row - 1})*F{row},{digits})"), value);
        }

        await Added("overhead", survey["overhead"], offer.Overhead);
        await Added("profit", survey["markup"], offer.Profit);
        var isProvisional = rows.Provisional < direct;
        if (isProvisional)
        {
            var formula = Invariant($"SUM(G{rows.Provisional}:G{direct - 1})");
            await Row("provisional sums", null, formula, offer.Provisional);
        }

        await Added("tax", survey["tax"], offer.Tax);

        await Row(
            offer.Complete ? "offer" : "offer, INCOMPLETE",
            null,
            Invariant($"SUM(G{direct}:G{sheet.NextRow - 1})"),
            offer.Total
        );
        var total = sheet.NextRow - 1;
        return new(sections, isProvisional ? total - 2 : null, total - 1, total);
    }
}
