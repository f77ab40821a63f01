namespace Shaduf.Money;

/// <summary>One item to buy, for all lines of the bill together, in pieces as they are sold.</summary>
/// <param name="Item">Key of the item.</param>
/// <param name="What">What it is, in plain words; what its lines say of it, one after the other where they differ.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="NeededUnits">Units that the bill asks for.</param>
/// <param name="SoldUnits">Units in one piece as it is sold.</param>
/// <param name="PieceCount">Pieces to buy.</param>
/// <param name="Supplier">Who sells it; empty when the book names nobody.</param>
/// <param name="Codes">Lines of the bill that ask for it.</param>
/// <param name="Cost">What the pieces cost; null when the book has no rate.</param>
public sealed record Purchase(
    string Item,
    string What,
    string Unit,
    decimal NeededUnits,
    decimal SoldUnits,
    int PieceCount,
    string Supplier,
    IReadOnlyList<string> Codes,
    decimal? Cost
)
{
    /// <summary>Units bought.</summary>
    public decimal BoughtUnits => PieceCount * SoldUnits;

    /// <summary>Units left over when all is built.</summary>
    public decimal LeftUnits => BoughtUnits - NeededUnits;

    /// <summary>Adds up what must be bought; pieces are whole.</summary>
    /// <param name="bill">The priced bill.</param>
    /// <param name="book">Where sold sizes and suppliers stand.</param>
    /// <param name="isBought">Whether a line is bought, and not work or a service.</param>
    /// <returns>The purchases by supplier, those without one last, in order of the bill.</returns>
    /// <source>pieces = quantity over the size sold, rounded up; common practice, no source</source>
    public static IReadOnlyList<Purchase> Of(Bill bill, PriceBook book, Func<QuantityLine, bool> isBought) =>
        [
            .. bill
                .Lines.Where(line => isBought(line.Quantity))
                .GroupBy(line => line.Quantity.Item)
                .Select(lines => Of([.. lines], book.Rates.GetValueOrDefault(lines.Key), book.MinorDigits))
                .OrderBy(each => each.Supplier.Length == 0)
                .ThenBy(each => each.Supplier, StringComparer.Ordinal),
        ];

    private static Purchase Of(IReadOnlyList<BillLine> lines, Rate? rate, int minorDigits)
    {
        var first = lines[0].Quantity;
        var needed = lines.Sum(line => (decimal)line.Quantity.Quantity);
        var sold = rate?.SoldUnits ?? (BillUnit.IsWhole(first) ? 1 : needed);
        var pieces = sold > 0 ? (int)Math.Ceiling(needed / sold) : 0;
        return new(
            first.Item,
            string.Join("; ", lines.Select(line => line.Quantity.Description).Distinct()),
            first.Unit,
            needed,
            sold,
            pieces,
            rate?.Supplier ?? "",
            [.. lines.Select(line => line.Code)],
            rate is null ? null : Math.Round(pieces * sold * rate.Amount, minorDigits, MidpointRounding.AwayFromZero)
        );
    }
}
