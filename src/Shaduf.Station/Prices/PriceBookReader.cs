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
    /// <param name="shelf">The cards, whose units the rates must have; null to leave that unchecked.</param>
    /// <returns>The price book.</returns>
    /// <exception cref="BadInputException">The file is missing or wrong.</exception>
    public static PriceBook ReadFile(string path, string shownAs, CardShelf? shelf)
    {
        var log = new FieldLog(shownAs);
        var fields = FieldMap.Reading(YamlFile.Read(path, log).Top, log);
        var book = Read(fields);
        if (shelf is not null && fields.AreSound("rates"))
        {
            PriceItems.Check(fields, book, shelf);
        }

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
        RefuseDoubles(top, rates);
        top.Done();
        return new(
            name,
            currency,
            digits,
            date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "undated",
            rates.DistinctBy(rate => rate.Item).ToDictionary(rate => rate.Item)
        );
    }

    /// <summary>The published schema of a price book.</summary>
    /// <returns>JSON Schema, draft 2020-12, indented.</returns>
    public static string Schema() => SchemaText.Of("price book", "A Shaduf price book.", fields => Read(fields));

    private static void RefuseDoubles(FieldMap top, IReadOnlyList<Rate> rates)
    {
        var items = new HashSet<string>();
        foreach (var (i, rate) in rates.Index())
        {
            if (top.AreSound("rates") && !items.Add(rate.Item))
            {
                top.Complain(
                    $"rates[{i + 1}].item",
                    $"'{rate.Item}' has a rate already",
                    "one rate an item is accepted"
                );
            }
        }
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
