using System.Globalization;
using Shaduf.Money;

namespace Shaduf.Station;

/// <summary>Reads a price book: one currency, a date, and a rate with its unit for each item.</summary>
internal static class PriceBookReader
{
    private static IReadOnlyList<(string Word, string Unit)> Units { get; } =
    [.. new[] { "nr", "m", "m2", "m3", "kg", "t", "L", "h", "d", "set", "sum" }.Select(unit => (unit, unit))];

    /// <summary>Reads a price book's file.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="shownAs">How it is named in errors.</param>
    /// <returns>The price book.</returns>
    /// <exception cref="BadInputException">The file is missing or wrong.</exception>
    public static PriceBook ReadFile(string path, string shownAs)
    {
        var log = new FieldLog(shownAs);
        var book = Read(FieldMap.Reading(YamlFile.Read(path, shownAs).Top, log));
        log.ThrowIfAny();
        return book;
    }

    /// <summary>Reads the fields of a price book.</summary>
    /// <param name="top">The top mapping.</param>
    /// <returns>The price book.</returns>
    public static PriceBook Read(FieldMap top)
    {
        var name = top.Text("name", "Name of the price book.");
        var currency = top.Text("currency", "Currency, as printed.", 12);
        var digits = top.Count("minorDigits", 0, 4, "Decimals of the currency.");
        var date = top.OptionalDate("date", "Date of the rates, as 2026-03-01.");
        var rates = top.Items("rates", 1, 2000, "The rates.", ReadRate);
        foreach (var twice in rates.GroupBy(rate => rate.Item).Where(group => group.Count() > 1))
        {
            top.Complain("rates", $"'{twice.Key}' has {twice.Count()} rates", "one rate an item is accepted");
        }

        top.Done();
        return new(
            name,
            currency,
            digits,
            date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "undated",
            rates.DistinctBy(rate => rate.Item).ToDictionary(rate => rate.Item)
        );
    }

    private static Rate ReadRate(FieldMap fields)
    {
        var rate = new Rate(
            fields.Text("item", "Name of the item: a card's name, or one of the general items.", 40),
            Units[
                fields.OneOf("unit", [.. Units.Select((unit, i) => (unit.Word, i))], "Unit that the rate is for.")
            ].Unit,
            (decimal)fields.Number("rate", 0, 1e9, "Rate in the book's currency."),
            fields.OptionalText("remark", "Supplier, place, or what is included.", 120) ?? ""
        );
        fields.Done();
        return rate;
    }
}
