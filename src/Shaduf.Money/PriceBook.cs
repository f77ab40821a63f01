namespace Shaduf.Money;

/// <summary>The rate of one item.</summary>
/// <param name="Item">Key of the item.</param>
/// <param name="Unit">Unit that the rate is for.</param>
/// <param name="Amount">Price of one unit, not negative, in the book's currency.</param>
/// <param name="Remark">Where the rate comes from, or what it holds.</param>
public sealed record Rate(string Item, string Unit, decimal Amount, string Remark);

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
