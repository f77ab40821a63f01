using System.Security.Cryptography;
using System.Text;
using Shaduf.Money;

namespace Shaduf.Station;

/// <summary>A brief with the cards and prices that it uses, read and held against one another.</summary>
/// <param name="Brief">The brief.</param>
/// <param name="Shelf">Its cards.</param>
/// <param name="Prices">Its price book.</param>
/// <param name="Hash">
/// SHA-256 of the brief's bytes, followed by the weather file's own SHA-256 when it names one and by the bytes of the file
/// of the site book when it names one; first twelve hexadecimal digits.
/// </param>
public sealed record StationFile(Brief Brief, CardShelf Shelf, PriceBook Prices, string Hash)
{
    /// <summary>Date of the documents: the brief's, else the day on which it was read.</summary>
    public DateOnly Dated { get; init; } = Brief.Head.Issued ?? DateOnly.FromDateTime(DateTime.Today);

    /// <summary>Values of the brief that are not plain ASCII: whether they can be drawn, fonts decide.</summary>
    public IReadOnlyList<BriefWord> Words { get; init; } = [];

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
        var log = new FieldLog(path);
        var (bytes, top) = YamlFile.Read(path, log);
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        return Held(log, bytes, top, new(folder, Path.GetDirectoryName(path) ?? "", null));
    }

    /// <summary>Reads a brief that is being written, with its cards and prices.</summary>
    /// <param name="text">The brief.</param>
    /// <param name="folder">The folder in which it would lie, with the files that it names.</param>
    /// <returns>What was read.</returns>
    /// <exception cref="BadInputException">Anything in the brief, a card or the price book is wrong; all of it is listed.</exception>
    public static StationFile Of(string text, string folder) => Of(text, folder, null);

    /// <summary>The same; cards and prices whose files have not changed are not read again.</summary>
    /// <param name="text">The brief.</param>
    /// <param name="folder">The folder in which it would lie, with the files that it names.</param>
    /// <param name="memory">Where they are remembered; null for nowhere.</param>
    /// <returns>What was read.</returns>
    /// <exception cref="BadInputException">Anything in the brief, a card or the price book is wrong; all of it is listed.</exception>
    public static StationFile Of(string text, string folder, FileMemory? memory)
    {
        var log = new FieldLog("station.yaml");
        var bytes = Encoding.UTF8.GetBytes(text);
        return Held(log, bytes, YamlFile.Parse(log, bytes), new(folder, "", memory));
    }

    // The brief's folder, how it is named in errors, and what is remembered of its files.
    private sealed record Beside(string Folder, string Shown, FileMemory? Memory)
    {
        public T Read<T>(string path, object? with, Func<T> read)
            where T : class => Memory is null ? read() : Memory.Of(path, with, read);
    }

    private static StationFile Held(FieldLog log, byte[] bytes, YamlMap top, Beside at)
    {
        var (folder, shown) = (at.Folder, at.Shown);
        var fields = FieldMap.Reading(top, log);
        var brief = BriefReader.Read(fields);
        var shelf = Tried(log, () => ShelfOf(fields, at) is { } all ? WithOwn(fields, at, all) : null);
        var prices = Tried(log, () => PricesOf(fields, at, shelf));
        var record = Tried(log, () => RecordOf(fields, brief.Site, at));
        brief = record is null ? brief : brief with { Site = brief.Site.With(record) };
        MeasuredLimits.Check(fields, brief.Measured, brief.Source);
        var export = Tried(log, () => Exported(fields, brief, folder, shown));
        brief = brief with { Measured = export?.Measured ?? brief.Measured };
        if (shelf is not null)
        {
            CardNames.Check(top, brief, shelf, log);
            BriefLimits.Check(fields, brief, shelf);
        }

        log.ThrowIfAny();
        byte[] whole = [.. bytes, .. Encoding.ASCII.GetBytes(record?.Hash ?? ""), .. export?.Bytes ?? []];
        return new(brief, shelf!, prices!, Convert.ToHexStringLower(SHA256.HashData(whole))[..12])
        {
            Words = BriefWord.Of(top),
        };
    }

    /// <summary>The published schema of the brief.</summary>
    /// <returns>JSON Schema, draft 2020-12, indented.</returns>
    public static string Schema() =>
        SchemaText.Of("station.yaml", "A Shaduf brief.", fields => BriefReader.Read(fields));

    /// <summary>The kinds of card, each with its published schema.</summary>
    /// <returns>The word in the field <c>card</c>, and JSON Schema, draft 2020-12, indented.</returns>
    public static IReadOnlyList<(string Kind, string Schema)> CardSchemas() =>
        [.. CardReader.Kinds.Select(kind => (kind.Word, CardReader.Schema(kind.Word)))];

    /// <summary>The published schema of a price book.</summary>
    /// <returns>JSON Schema, draft 2020-12, indented.</returns>
    public static string PriceBookSchema() => PriceBookReader.Schema();

    // Null, with the reason noted, when there are no cards to hold anything against.
    private static CardShelf? ShelfOf(FieldMap fields, Beside at)
    {
        var named = fields.OptionalText("cards", "");
        if (!fields.AreSound("cards"))
        {
            return null;
        }

        if (named is null)
        {
            return at.Read(ShippedCards, null, () => CardShelf.Read(ShippedCards, "cards"));
        }

        var path = Path.Combine(at.Folder, named);
        if (!Directory.Exists(path))
        {
            fields.Complain("cards", $"there is no folder '{named}' beside the brief", "a folder of cards is accepted");
            return null;
        }

        return at.Read(path, null, () => CardShelf.Read(path, Shown(at.Shown, named)));
    }

    private static CardShelf? WithOwn(FieldMap fields, Beside at, CardShelf shelf)
    {
        if (!fields.AreSound("ownCards"))
        {
            return null;
        }

        foreach (var (i, named) in BriefReader.OwnCards(fields).Index())
        {
            var path = Path.Combine(at.Folder, named);
            if (!File.Exists(path))
            {
                fields.Complain(
                    $"ownCards[{i + 1}].file",
                    $"there is no file '{named}' beside the brief",
                    "the file of a card is accepted"
                );
                return null;
            }

            var before = shelf;
            shelf = at.Read(path, before, () => before.With(path, Shown(at.Shown, named)));
        }

        return shelf;
    }

    private static PriceBook? PricesOf(FieldMap fields, Beside at, CardShelf? shelf)
    {
        var named = fields.OptionalText("prices", "");
        if (!fields.AreSound("prices"))
        {
            return null;
        }

        if (named is null)
        {
            return at.Read(
                ShippedPrices,
                shelf,
                () => PriceBookReader.ReadFile(ShippedPrices, "prices/planning.yaml", shelf)
            );
        }

        var path = Path.Combine(at.Folder, named);
        if (!File.Exists(path))
        {
            fields.Complain("prices", $"there is no file '{named}' beside the brief", "a price book is accepted");
            return null;
        }

        return at.Read(path, shelf, () => PriceBookReader.ReadFile(path, Shown(at.Shown, named), shelf));
    }

    private static WeatherRecord? RecordOf(FieldMap fields, SiteBrief site, Beside at)
    {
        if (site.WeatherFile is not { } named || !fields.AreSound("site"))
        {
            return null;
        }

        var path = Path.Combine(at.Folder, named);
        if (!File.Exists(path))
        {
            fields.Complain(
                "site.weather",
                $"there is no file '{named}' beside the brief",
                "a weather file is accepted"
            );
            return null;
        }

        return at.Read(
            path,
            site.Place,
            () => Station.WeatherFile.Read(path, named, Shown(at.Shown, named), site.Place)
        );
    }

    // A file of the site book holds the same fields as 'measured'; JSON is YAML.
    private static Export? Exported(FieldMap fields, Brief brief, string folder, string shownFolder)
    {
        var named = fields.OptionalText("measuredFrom", "");
        if (named is null || !fields.AreSound("measuredFrom"))
        {
            return null;
        }

        if (fields.Has("measured"))
        {
            fields.Complain("measuredFrom", "stands beside measured", "one of the two is accepted");
        }

        var path = Path.Combine(folder, named);
        if (!File.Exists(path))
        {
            fields.Complain(
                "measuredFrom",
                $"there is no file '{named}' beside the brief",
                "a file exported from the site book is accepted"
            );
            return null;
        }

        var measured = MeasuredReader.ReadFile(path, Shown(shownFolder, named), brief.Source);
        if (measured?.Station is { } other && other != brief.Head.Name)
        {
            fields.Complain(
                "measuredFrom",
                $"the file is of the station '{other}'",
                $"a file of '{brief.Head.Name}' is accepted"
            );
        }

        return measured is null ? null : new(measured, File.ReadAllBytes(path));
    }

    private sealed record Export(MeasuredBrief Measured, byte[] Bytes);

    // A path that opens from where the user stands.
    private static string Shown(string shownFolder, string named) => Path.Combine(shownFolder, named);

    private static T? Tried<T>(FieldLog log, Func<T?> read)
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
