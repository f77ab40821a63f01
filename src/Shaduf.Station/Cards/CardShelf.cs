namespace Shaduf.Station;

/// <summary>All cards that a brief may use, by name.</summary>
/// <param name="Cards">The cards in order of name.</param>
public sealed record CardShelf(IReadOnlyList<Card> Cards)
{
    /// <summary>The cards of one kind, in order of name.</summary>
    /// <typeparam name="T">The kind.</typeparam>
    /// <returns>The cards.</returns>
    public IReadOnlyList<T> All<T>()
        where T : Card => [.. Cards.OfType<T>()];

    /// <summary>A card by kind and name.</summary>
    /// <typeparam name="T">The kind.</typeparam>
    /// <param name="name">Its name.</param>
    /// <returns>The card, or null when there is none.</returns>
    public T? Find<T>(string name)
        where T : Card => Cards.OfType<T>().FirstOrDefault(card => card.Name == name);

    /// <summary>Reads every <c>*.yaml</c> file of a folder.</summary>
    /// <param name="folder">The folder's path.</param>
    /// <param name="shownAs">How the folder is named in errors.</param>
    /// <returns>The shelf.</returns>
    /// <exception cref="BadInputException">The folder cannot be read, a card is wrong, or two have the same name.</exception>
    public static CardShelf Read(string folder, string shownAs)
    {
        var cards = new List<Card>();
        var errors = new List<FileError>();
        foreach (var path in Paths(folder, shownAs))
        {
            var shown = $"{shownAs}/{Path.GetFileName(path)}";
            try
            {
                cards.Add(ReadOne(log => YamlFile.Read(path, log).Top, shown, cards));
            }
            catch (BadInputException bad)
            {
                errors.AddRange(bad.Errors);
            }
        }

        return errors.Count == 0
            ? new([.. cards.OrderBy(card => card.Name, StringComparer.Ordinal)])
            : throw new BadInputException(errors);
    }

    /// <summary>Reads one card by itself.</summary>
    /// <param name="text">The card.</param>
    /// <param name="shownAs">How it is named in errors.</param>
    /// <returns>The card.</returns>
    /// <exception cref="BadInputException">The card is wrong.</exception>
    public static Card ReadText(string text, string shownAs) =>
        ReadOne(log => YamlFile.Parse(log, System.Text.Encoding.UTF8.GetBytes(text)), shownAs, []);

    /// <summary>The shelf with one more card from a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="shownAs">How it is named in errors.</param>
    /// <returns>The larger shelf.</returns>
    /// <exception cref="BadInputException">The card is wrong, or its name is taken.</exception>
    internal CardShelf With(string path, string shownAs) =>
        new([
            .. Cards
                .Append(ReadOne(log => YamlFile.Read(path, log).Top, shownAs, Cards))
                .OrderBy(card => card.Name, StringComparer.Ordinal),
        ]);

    // Names are their own across all kinds: the price book knows an item by its name alone.
    private static Card ReadOne(Func<FieldLog, YamlMap> read, string shownAs, IReadOnlyList<Card> others)
    {
        var log = new FieldLog(shownAs);
        var fields = FieldMap.Reading(read(log), log);
        var card = CardReader.Read(fields);
        if (
            card is not null
            && (others.Any(other => other.Name == card.Name) || PriceItems.General.ContainsKey(card.Name))
        )
        {
            fields.Complain(
                "name",
                $"'{card.Name}' is already the name of another card or item",
                "a name of its own is accepted"
            );
        }

        log.ThrowIfAny();
        return card!;
    }

    private static IReadOnlyList<string> Paths(string folder, string shownAs)
    {
        try
        {
            return [.. Directory.EnumerateFiles(folder, "*.yaml").Order(StringComparer.Ordinal)];
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException([
                new(shownAs, 1, 1, "file", "the folder cannot be read", "a folder that this user may read is accepted"),
            ]);
        }
    }
}
