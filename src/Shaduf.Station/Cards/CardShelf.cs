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
                var log = new FieldLog(shown);
                var fields = FieldMap.Reading(YamlFile.Read(path, log).Top, log);
                var card = CardReader.Read(fields);

                // Across all kinds: the price book knows an item by its name alone.
                if (
                    card is not null
                    && (cards.Any(other => other.Name == card.Name) || PriceItems.General.ContainsKey(card.Name))
                )
                {
                    fields.Complain(
                        "name",
                        $"'{card.Name}' is already the name of another card or item",
                        "a name of its own is accepted"
                    );
                }

                log.ThrowIfAny();
                cards.Add(card!);
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
