using System.Security.Cryptography;
using Shaduf.Money;

namespace Shaduf.Station;

/// <summary>A brief with the cards and prices that it uses, read and held against one another.</summary>
/// <param name="Brief">The brief.</param>
/// <param name="Shelf">Its cards.</param>
/// <param name="Prices">Its price book.</param>
/// <param name="Hash">SHA-256 of the brief's bytes, first twelve hexadecimal digits.</param>
public sealed record StationFile(Brief Brief, CardShelf Shelf, PriceBook Prices, string Hash)
{
    /// <summary>Folder of the cards that come with the program.</summary>
    public static string ShippedCards { get; } = Path.Combine(AppContext.BaseDirectory, "cards");

    /// <summary>The planning price book that comes with the program.</summary>
    public static string ShippedPrices { get; } = Path.Combine(AppContext.BaseDirectory, "prices", "planning.yaml");

    /// <summary>Reads a brief with its cards and prices.</summary>
    /// <param name="path">The brief's path, shown in errors as given.</param>
    /// <returns>What was read.</returns>
    /// <exception cref="BadInputException">Anything in the brief, a card or the price book is wrong; all of it is listed.</exception>
    public static StationFile Read(string path)
    {
        var (bytes, top) = YamlFile.Read(path, path);
        var log = new FieldLog(path);
        var fields = FieldMap.Reading(top, log);
        var brief = BriefReader.Read(fields);
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        var shelf = Tried(log, () => ShelfOf(fields, folder));
        var prices = Tried(log, () => PricesOf(fields, folder));
        if (shelf is not null)
        {
            CardNames.Check(top, brief, shelf, log);
        }

        log.ThrowIfAny();
        return new(brief, shelf!, prices!, Convert.ToHexStringLower(SHA256.HashData(bytes))[..12]);
    }

    /// <summary>The published schema of the brief.</summary>
    /// <returns>JSON Schema, draft 2020-12, indented.</returns>
    public static string Schema() =>
        SchemaText.Of("station.yaml", "A Shaduf brief.", fields => BriefReader.Read(fields));

    private static CardShelf ShelfOf(FieldMap fields, string folder)
    {
        if (fields.OptionalText("cards", "") is not { } named)
        {
            return CardShelf.Read(ShippedCards, "cards");
        }

        var path = Path.Combine(folder, named);
        if (!Directory.Exists(path))
        {
            fields.Complain("cards", $"there is no folder '{named}' beside the brief", "a folder of cards is accepted");
            return new([]);
        }

        return CardShelf.Read(path, named);
    }

    private static PriceBook PricesOf(FieldMap fields, string folder)
    {
        if (fields.OptionalText("prices", "") is not { } named)
        {
            return PriceBookReader.ReadFile(ShippedPrices, "prices/planning.yaml");
        }

        var path = Path.Combine(folder, named);
        if (!File.Exists(path))
        {
            fields.Complain("prices", $"there is no file '{named}' beside the brief", "a price book is accepted");
            return new("", "", 2, "", new Dictionary<string, Rate>());
        }

        return PriceBookReader.ReadFile(path, named);
    }

    private static T? Tried<T>(FieldLog log, Func<T> read)
        where T : class
    {
        try
        {
            return read();
        }
        catch (BadInputException bad)
        {
            log.AddRange(bad.Errors);
            return null;
        }
    }
}
