using Shaduf.Money;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Sheets of the spreadsheet about the offer, buying, the build-up of rates and how the price is paid.</summary>
internal static class OfficeSheets
{
    /// <summary>Writes the sheets.</summary>
    /// <param name="sheet">The spreadsheet.</param>
    /// <param name="design">The design.</param>
    /// <param name="bill">Where the figures of the sheet Quantities stand.</param>
    public static async Task WriteAsync(Sheet sheet, Design design, BillRows bill)
    {
        await OfferSheet.WriteAsync(sheet, design, bill);
        await PurchasesAsync(sheet, design);
        await RatesAsync(sheet, design);
        await PaymentAsync(sheet, design, bill.Total);
    }

    private static async Task PurchasesAsync(Sheet sheet, Design design)
    {
        await sheet.StartAsync(
            "Purchases",
            $"{design.Brief.Head.Name}: what to buy from whom, in the sizes that are sold, in {design.Bill.Currency}",
            ("supplier", 22),
            ("item", 18),
            ("what", 46),
            ("unit", 6),
            ("needed", 10),
            ("in one piece", 11),
            ("pieces", 9),
            ("left over", 10),
            ("rate", 12),
            ("cost", 14),
            ("lines of the bill", 24)
        );
        var first = sheet.NextRow;
        var purchases = design.Office.Purchases;
        foreach (var each in purchases)
        {
            var row = sheet.NextRow;
            await sheet.RowAsync(
                new(each.Supplier.Length > 0 ? each.Supplier : "nobody named"),
                new(each.Item),
                sheet.Text(each.What),
                new(each.Unit),
                sheet.Number((double)each.NeededUnits),
                sheet.Number((double)each.SoldUnits),
                sheet.Computed(Invariant($"ROUNDUP(E{row}/F{row}-0.000000001,0)"), each.PieceCount),
                sheet.Computed(Invariant($"G{row}*F{row}-E{row}"), each.LeftUnits),
                design.File.Prices.Rates.TryGetValue(each.Item, out var rate)
                    ? sheet.Money(rate.Amount)
                    : new("no rate"),
                each.Cost is { } cost
                    ? sheet.Computed(Invariant($"ROUND(G{row}*F{row}*I{row},{design.Bill.MinorDigits})"), cost)
                    : new("no rate"),
                sheet.Text(string.Join(", ", each.Codes))
            );
        }

        await sheet.RowAsync(
            new(""),
            new(""),
            sheet.Bold("all purchases"),
            new(""),
            new(""),
            new(""),
            new(""),
            new(""),
            new(""),
            sheet.Computed(
                Invariant($"SUM(J{first}:J{sheet.NextRow - 1})"),
                purchases.Sum(each => each.Cost ?? 0),
                isTotal: true
            )
        );
    }

    private static async Task RatesAsync(Sheet sheet, Design design)
    {
        await sheet.StartAsync(
            "Rates",
            $"{design.Brief.Head.Name}: rates that are built up, or quoted in another currency, in {design.Bill.Currency}",
            ("item", 20),
            ("part", 22),
            ("kind", 12),
            ("quantity", 11),
            ("rate", 12),
            ("amount", 14)
        );
        var used = design.Bill.Lines.Select(line => line.Quantity.Item).ToHashSet();
        var rates = design.File.Prices.Rates;
        foreach (var item in used.ToList())
        {
            AddParts(rates, item, used);
        }

        foreach (var rate in rates.Values.Where(rate => used.Contains(rate.Item)))
        {
            if (rate.BuildUp is { } build)
            {
                await BuildAsync(sheet, rate, build);
            }
            else if (rate.Quoted is { } quoted)
            {
                var row = sheet.NextRow;
                await sheet.RowAsync(
                    sheet.Bold(rate.Item),
                    new(Invariant($"quoted in {quoted.Currency}, exchange of {quoted.Exchange.Date}")),
                    new("exchange"),
                    sheet.Number((double)quoted.Amount),
                    sheet.Rate(quoted.Exchange.Amount),
                    sheet.Computed(Invariant($"ROUND(D{row}*E{row},4)"), rate.Amount)
                );
            }
        }
    }

    private static void AddParts(IReadOnlyDictionary<string, Rate> rates, string item, HashSet<string> used)
    {
        foreach (var line in rates.GetValueOrDefault(item)?.BuildUp?.Lines ?? [])
        {
            if (used.Add(line.Item))
            {
                AddParts(rates, line.Item, used);
            }
        }
    }

    private static async Task BuildAsync(Sheet sheet, Rate rate, UnitRate build)
    {
        var first = sheet.NextRow;
        foreach (var line in build.Lines)
        {
            var row = sheet.NextRow;
            await sheet.RowAsync(
                new(rate.Item),
                new(line.Item),
                new(line.Kind.ToString().ToLowerInvariant()),
                sheet.Number((double)line.Quantity),
                sheet.Rate(line.UnitRate),
                sheet.Computed(Invariant($"D{row}*E{row}"), line.Amount)
            );
        }

        foreach (var (addition, amount) in build.Additions)
        {
            var row = sheet.NextRow;
            await sheet.RowAsync(
                new(rate.Item),
                new(addition.Name),
                new("on all before"),
                new(""),
                sheet.Percent(addition.Share),
                sheet.Computed(Invariant($"SUM(F{first}:F{row - 1})*E{row}"), amount)
            );
        }

        await sheet.RowAsync(
            sheet.Bold(rate.Item),
            sheet.Bold(Invariant($"rate of one {rate.Unit}")),
            new("all, of units"),
            sheet.Number((double)build.MadeUnits),
            new(""),
            sheet.Computed(
                Invariant($"ROUND(SUM(F{first}:F{sheet.NextRow - 1})/D{sheet.NextRow},4)"),
                rate.Amount,
                isTotal: true
            )
        );
    }

    private static async Task PaymentAsync(Sheet sheet, Design design, int totalRow)
    {
        await sheet.StartAsync(
            "Payment",
            $"{design.Brief.Head.Name}: how the price is paid, in {design.Bill.Currency}",
            ("stage", 44),
            ("share", 9),
            ("earned", 14),
            ("kept back", 14),
            ("paid", 14)
        );
        var (payment, digits) = (design.Office.Payment, design.Bill.MinorDigits);
        var total = Invariant($"Quantities!G{totalRow}");
        var retention = sheet.NextRow;
        await sheet.RowAsync(new("kept back of each payment"), sheet.Percent(design.Survey["retention"]));
        var first = sheet.NextRow;
        foreach (var (i, each) in payment.Payments.Index())
        {
            var row = sheet.NextRow;
            var earned =
                i + 1 < payment.Payments.Count ? Invariant($"ROUND({total}*B{row},{digits})")
                : i == 0 ? total
                : Invariant($"{total}-SUM(C{first}:C{row - 1})");
            await sheet.RowAsync(
                new(each.Stage.Name),
                sheet.Percent(each.Stage.Share),
                sheet.Computed(earned, each.Earned),
                sheet.Computed(Invariant($"ROUND(C{row}*B{retention},{digits})"), each.Retained),
                sheet.Computed(Invariant($"C{row}-D{row}"), each.Due)
            );
        }

        var last = sheet.NextRow - 1;
        await sheet.RowAsync(
            new("at handover, half of what was kept back"),
            new(""),
            new(""),
            new(""),
            sheet.Computed(Invariant($"ROUND(SUM(D{first}:D{last})/2,{digits})"), payment.AtCompletion)
        );
        await sheet.RowAsync(
            new(Invariant($"{design.Survey["defects"]:0} days after handover, the rest of it")),
            new(""),
            new(""),
            new(""),
            sheet.Computed(Invariant($"SUM(D{first}:D{last})-E{last + 1}"), payment.AtEnd)
        );
        await sheet.RowAsync(
            sheet.Bold("all of it"),
            new(""),
            new(""),
            new(""),
            sheet.Computed(Invariant($"SUM(E{first}:E{last + 2})"), design.Offer.Total, isTotal: true)
        );
    }
}
