using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The bill as a sheet: every line and every total is a live formula with the figure that it comes to.</summary>
internal static class BillSheet
{
    /// <summary>Writes the sheet.</summary>
    /// <param name="sheet">The spreadsheet.</param>
    /// <param name="design">The design.</param>
    public static async Task WriteAsync(Sheet sheet, Design design)
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
            ("origin", 60)
        );
        var digits = design.Bill.MinorDigits;
        var first = sheet.NextRow;
        foreach (var section in design.Bill.Lines.GroupBy(line => line.Quantity.Section))
        {
            await sheet.RowAsync(sheet.Bold($"{(char)section.Key}"), sheet.Bold(BillTables.SectionName(section.Key)));
            foreach (var line in section)
            {
                var row = sheet.NextRow;
                await sheet.RowAsync(
                    new(line.Code),
                    new(line.Quantity.Item),
                    sheet.Text(line.Quantity.Description),
                    new(line.Quantity.Unit),
                    sheet.Number(line.Quantity.Quantity),
                    sheet.Money(line.UnitRate),
                    line.Amount is { } amount
                        ? sheet.Computed(Invariant($"ROUND(E{row}*F{row},{digits})"), amount)
                        : new("no rate"),
                    sheet.Text(line.Quantity.Origin)
                );
            }
        }

        await TotalsAsync(sheet, design, first, digits);
    }

    private static async Task TotalsAsync(Sheet sheet, Design design, int first, int digits)
    {
        var (offer, survey) = (design.Offer, design.Survey);
        var last = sheet.NextRow - 1;
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
        await Row("direct cost", null, Invariant($"SUM(G{first}:G{last})"), offer.Direct);
        (string Name, double Share, decimal Value)[] added =
        [
            ("contingency", survey["contingency"], offer.Contingency),
            ("overhead", survey["overhead"], offer.Overhead),
            ("profit", survey["markup"], offer.Profit),
            ("tax", survey["tax"], offer.Tax),
        ];
        foreach (var (name, share, value) in added)
        {
            var row = sheet.NextRow;
            await Row(name, share, Invariant($"ROUND(SUM(G{direct}:G{row - 1})*F{row},{digits})"), value);
        }

        await Row(
            offer.Complete ? "offer" : "offer, INCOMPLETE",
            null,
            Invariant($"SUM(G{direct}:G{sheet.NextRow - 1})"),
            offer.Total
        );
    }
}
