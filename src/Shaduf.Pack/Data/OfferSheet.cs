using Shaduf.Money;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>How the bill comes to the prices that stand in the client's offer, section by section.</summary>
internal static class OfferSheet
{
    /// <summary>Writes the sheet.</summary>
    /// <param name="sheet">The spreadsheet.</param>
    /// <param name="design">The design.</param>
    /// <param name="bill">Where the figures of the sheet Quantities stand.</param>
    public static async Task WriteAsync(Sheet sheet, Design design, BillRows bill)
    {
        await sheet.StartAsync(
            "Offer",
            $"{design.Brief.Head.Name}: the sections of the bill as they stand in the offer, with their part of contingency, overhead and profit, in {design.Bill.Currency}",
            ("section", 34),
            ("its lines", 16),
            ("price", 16)
        );
        var first = sheet.NextRow;
        var shared = design.Bill.Lines.GroupBy(line => line.Quantity.Section).Where(IsShared).ToList();
        var last = first + shared.Count - 1;
        var net = Invariant($"(Quantities!G{bill.Total}-Quantities!G{bill.Tax}{Less(bill)})");
        foreach (var (section, line) in shared.Zip(OfferPaper.Lines(design)))
        {
            var row = sheet.NextRow;
            var (from, to) = bill.Sections[section.Key];
            var share = Invariant($"ROUND({net}*B{row}/SUM(B${first}:B${last}),{design.Bill.MinorDigits})");
            var rest = row == first ? net : Invariant($"{net}-SUM(C{first}:C{row - 1})");
            await sheet.RowAsync(
                new(line.Name),
                sheet.Computed(Invariant($"SUM(Quantities!G{from}:G{to})"), section.Sum(each => each.Amount ?? 0)),
                sheet.Computed(row < last ? share : rest, line.Price)
            );
        }

        if (bill.Provisional is { } provisional)
        {
            await RowAsync(sheet, OfferPaper.Lines(design)[^1].Name, provisional, design.Offer.Provisional);
        }

        await RowAsync(sheet, "tax", bill.Tax, design.Offer.Tax);
        await sheet.RowAsync(
            sheet.Bold("price, all in"),
            new(""),
            sheet.Computed(Invariant($"SUM(C{first}:C{sheet.NextRow - 1})"), design.Offer.Total, isTotal: true)
        );
    }

    private static bool IsShared(IGrouping<BillSection, BillLine> section) =>
        section.Key != BillSection.ProvisionalSums;

    private static string Less(BillRows bill) => bill.Provisional is { } row ? Invariant($"-Quantities!G{row}") : "";

    private static async Task RowAsync(Sheet sheet, string name, int row, decimal value) =>
        await sheet.RowAsync(new(name), new(""), sheet.Computed(Invariant($"Quantities!G{row}"), value));
}
