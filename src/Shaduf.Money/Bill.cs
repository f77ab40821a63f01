using Shaduf.Working;

namespace Shaduf.Money;

/// <summary>One line of the bill.</summary>
/// <param name="Code">Section letter and number in the section: <c>E2</c>.</param>
/// <param name="Quantity">The quantity, rounded to the place of its unit.</param>
/// <param name="UnitRate">Price of one unit; null when the book has none.</param>
/// <param name="Amount">Quantity times rate in whole minor units; null when the book has no rate.</param>
public sealed record BillLine(string Code, QuantityLine Quantity, decimal? UnitRate, decimal? Amount);

/// <summary>A priced takeoff.</summary>
/// <param name="Currency">Currency of all amounts.</param>
/// <param name="MinorDigits">Decimals of the amounts.</param>
/// <param name="Lines">The lines by section, in the takeoff's order within a section.</param>
/// <param name="Unpriced">Items without a rate, each once; they are not in the sum.</param>
/// <param name="Direct">Sum of the amounts of the priced lines, those of sections A and L left out.</param>
public sealed record Bill(
    string Currency,
    int MinorDigits,
    IReadOnlyList<BillLine> Lines,
    IReadOnlyList<string> Unpriced,
    decimal Direct
)
{
    /// <summary>Sum of the amounts of section A: what the site costs whatever is built on it.</summary>
    public decimal Preliminaries { get; init; }

    /// <summary>Sum of the amounts of section L: work that is not yet defined, spent on instruction only.</summary>
    public decimal Provisional { get; init; }

    /// <summary>Whether every line has a price.</summary>
    public bool Complete => Unpriced.Count == 0;

    /// <summary>
    /// Prices a takeoff. Quantities are first rounded, half away from zero: m, m2, kg, L, h, d to 0.1, m3 to 0.01, t to
    /// 0.001; nr, set, wk and sum must be whole; a quantity above zero is at least one such place. Amounts are rounded to
    /// the currency's minor unit, half away from zero, and the sums are those of the rounded amounts.
    /// </summary>
    /// <param name="takeoff">The measured quantities.</param>
    /// <param name="book">The rates.</param>
    /// <returns>The bill; an item without a rate is listed in <see cref="Unpriced"/> and never priced as zero.</returns>
    /// <exception cref="ArgumentException">A unit unknown or not the book's, a quantity negative, NaN or not whole where it must be, a negative rate, a section unknown; the message names the item.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The book's minor digits are not 0 to 4.</exception>
    /// <source>common practice, no source</source>
    public static Bill Price(IReadOnlyList<QuantityLine> takeoff, PriceBook book)
    {
        Within.RequireCount(book.MinorDigits, 0, 4);
        var lines = takeoff
            .GroupBy(line => line.Section)
            .OrderBy(section => section.Key)
            .SelectMany(section => section.Select((line, index) => Price(line, index + 1, book)))
            .ToList();
        return new(
            book.Currency,
            book.MinorDigits,
            lines,
            [.. lines.Where(line => line.Amount is null).Select(line => line.Quantity.Item).Distinct()],
            Sum(line => line.Quantity.Section is not (BillSection.General or BillSection.ProvisionalSums))
        )
        {
            Preliminaries = Sum(line => line.Quantity.Section == BillSection.General),
            Provisional = Sum(line => line.Quantity.Section == BillSection.ProvisionalSums),
        };

        decimal Sum(Func<BillLine, bool> isOfIt) => lines.Where(isOfIt).Sum(line => line.Amount ?? 0);
    }

    private static BillLine Price(QuantityLine line, int number, PriceBook book)
    {
        if (!Enum.IsDefined(line.Section))
        {
            throw new ArgumentException(
                $"Item {line.Item}: the bill has no section {(int)line.Section}.",
                nameof(line)
            );
        }

        var quantity = BillUnit.Rounded(line);
        var rate = line.AgreedSum ?? RateOf(line, book)?.Amount;
        if (rate < 0)
        {
            throw new ArgumentException($"Item {line.Item}: the rate is negative.", nameof(book));
        }

        return new(
            FormattableString.Invariant($"{(char)line.Section}{number}"),
            line with
            {
                Quantity = (double)quantity,
                NetQuantity = line.NetQuantity == line.Quantity ? (double)quantity : line.NetQuantity,
            },
            rate,
            rate is null ? null : Math.Round(quantity * rate.Value, book.MinorDigits, MidpointRounding.AwayFromZero)
        );
    }

    private static Rate? RateOf(QuantityLine line, PriceBook book)
    {
        var rate = book.Rates.GetValueOrDefault(line.Item);
        if (rate is not null && rate.Unit != line.Unit)
        {
            throw new ArgumentException(
                $"Item {line.Item} is measured in {line.Unit} and priced in {rate.Unit}.",
                nameof(line)
            );
        }

        return rate;
    }
}
