namespace Shaduf.Money;

/// <summary>The rate of one item.</summary>
/// <param name="Item">Key of the item.</param>
/// <param name="Unit">Unit that the rate is for.</param>
/// <param name="Amount">Price of one unit, not negative, in the book's currency.</param>
/// <param name="Remark">Where the rate comes from, or what it holds.</param>
public sealed record Rate(string Item, string Unit, decimal Amount, string Remark)
{
    /// <summary>Who sells it; empty when nobody is named.</summary>
    public string Supplier { get; init; } = "";

    /// <summary>Date of the rate where it is not the book's.</summary>
    public string? Date { get; init; }

    /// <summary>The rate as it was quoted, where that is not the book's currency.</summary>
    public Quoted? Quoted { get; init; }

    /// <summary>How many units one piece holds as it is sold: 100 for a coil of 100 m; null where a single unit is sold.</summary>
    public decimal? SoldUnits { get; init; }

    /// <summary>What the rate is built up from; null where it was quoted as a whole.</summary>
    public UnitRate? BuildUp { get; init; }
}

/// <summary>A rate in another currency.</summary>
/// <param name="Amount">Price of one unit.</param>
/// <param name="Currency">Its currency.</param>
/// <param name="Exchange">What one unit of that currency was worth in the book's.</param>
public sealed record Quoted(decimal Amount, string Currency, Exchange Exchange);

/// <summary>What one unit of another currency is worth in the book's.</summary>
/// <param name="Currency">The other currency.</param>
/// <param name="Amount">Its worth, above zero.</param>
/// <param name="Date">The day on which it was worth that.</param>
public sealed record Exchange(string Currency, decimal Amount, string Date);

/// <summary>Rates in one currency on one date.</summary>
/// <param name="Name">Name of the book.</param>
/// <param name="Currency">Currency code.</param>
/// <param name="MinorDigits">Decimals of the currency's smallest coin, 0 to 4.</param>
/// <param name="Date">Date of the rates.</param>
/// <param name="Rates">The rates by item.</param>
public sealed record PriceBook(
    string Name,
    string Currency,
    int MinorDigits,
    string Date,
    IReadOnlyDictionary<string, Rate> Rates
);
