using System.Globalization;
using Shaduf.Money;

namespace Shaduf.Station;

/// <summary>Reads a price book: one currency, a date, and a rate with its unit for each item. YAML, CSV or XLSX.</summary>
internal static class PriceBookReader
{
    private static IReadOnlyList<(string Word, string Unit)> Units { get; } =
    [.. new[] { "nr", "m", "m2", "m3", "kg", "t", "L", "h", "d", "wk", "set", "sum" }.Select(unit => (unit, unit))];

    /// <summary>Reads a price book's file.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="shownAs">How it is named in errors.</param>
    /// <param name="shelf">The cards, whose units the rates must have; null to leave that unchecked.</param>
    /// <returns>The price book.</returns>
    /// <exception cref="BadInputException">The file is missing or wrong.</exception>
    public static PriceBook ReadFile(string path, string shownAs, CardShelf? shelf)
    {
        var log = new FieldLog(shownAs);
        var top = Path.GetExtension(path).ToUpperInvariant() switch
        {
            ".CSV" => PriceTable.OfCsv(path, log),
            ".XLSX" => PriceTable.OfSpreadsheet(path, log),
            _ => YamlFile.Read(path, log).Top,
        };
        var fields = FieldMap.Reading(top, log);
        var (book, given) = ReadAll(fields);
        if (shelf is not null && fields.AreSound("rates"))
        {
            PriceItems.Check(fields, given, shelf);
        }

        log.ThrowIfAny();
        return book;
    }

    /// <summary>Reads the fields of a price book.</summary>
    /// <param name="top">The top mapping.</param>
    /// <returns>The price book.</returns>
    public static PriceBook Read(FieldMap top) => ReadAll(top).Book;

    private static (PriceBook Book, IReadOnlyList<GivenRate> Given) ReadAll(FieldMap top)
    {
        var name = top.Text("name", "Name of the price book.");
        var currency = top.Text("currency", "Currency, as printed.", 12);
        var digits = top.Count("minorDigits", 0, 4, "Decimals of the currency.");
        var date = top.OptionalDate("date", "Date of the rates, as 2026-03-01.");
        var exchanges = top.Items(
            "exchange",
            0,
            20,
            "What one unit of another currency is worth in the book's: no rate in that currency is taken without it.",
            ReadExchange
        );
        var rates = top.Items("rates", 1, 2000, "The rates.", fields => RateReader.Read(fields, Units));
        top.Done();
        RefuseDoubles(top, rates);
        var settled = top.AreSound("rates", "exchange", "currency")
            ? RateBuilder.Of(top, rates, currency, exchanges)
            : [];
        var book = new PriceBook(
            name,
            currency,
            digits,
            date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "undated",
            settled.DistinctBy(rate => rate.Item).ToDictionary(rate => rate.Item)
        );
        return (book, rates);
    }

    /// <summary>The published schema of a price book.</summary>
    /// <returns>JSON Schema, draft 2020-12, indented.</returns>
    public static string Schema() => SchemaText.Of("price book", "A Shaduf price book.", fields => Read(fields));

    private static Exchange ReadExchange(FieldMap fields)
    {
        var exchange = new Exchange(
            fields.Text("currency", "The other currency.", 12),
            (decimal)fields.Number("rate", 1e-6, 1e9, "What one unit of it is worth in the book's currency."),
            fields
                .OptionalDate("date", "The day on which it was worth that.")
                ?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
                ?? ""
        );
        if (fields.AreSound("date") && exchange.Date.Length == 0)
        {
            fields.Complain("date", "the exchange has no date", "'date: 2026-03-01' is needed");
        }

        fields.Done();
        return exchange;
    }

    private static void RefuseDoubles(FieldMap top, IReadOnlyList<GivenRate> rates)
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
}
