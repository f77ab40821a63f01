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
    /// <exception cref="BadInputException">A card is wrong, or two have the same kind and name.</exception>
    public static CardShelf Read(string folder, string shownAs)
    {
        var cards = new List<Card>();
        var errors = new List<FileError>();
        foreach (var path in Directory.EnumerateFiles(folder, "*.yaml").Order(StringComparer.Ordinal))
        {
            var shown = $"{shownAs}/{Path.GetFileName(path)}";
            try
            {
                var log = new FieldLog(shown);
                var card = CardReader.Read(FieldMap.Reading(YamlFile.Read(path, shown).Top, log));
                log.ThrowIfAny();
                if (card is null)
                {
                    errors.Add(new(shown, 1, 1, "card", "missing", "one of the kinds of card is accepted"));
                }
                else if (cards.Any(other => other.Name == card.Name && other.GetType() == card.GetType()))
                {
                    errors.Add(
                        new(
                            shown,
                            1,
                            1,
                            "name",
                            $"'{card.Name}' is already the name of another card",
                            "a name of its own is accepted"
                        )
                    );
                }
                else
                {
                    cards.Add(card);
                }
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
}
