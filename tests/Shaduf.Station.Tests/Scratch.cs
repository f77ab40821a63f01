using System.Text;

namespace Shaduf.Station.Tests;

/// <summary>A folder of one test with a brief, cards and prices; gone when the test ends.</summary>
internal sealed class Scratch : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("shaduf-").FullName;

    public string BriefPath => Path.Combine(folder, "station.yaml");

    public string PathOf(string name) => Path.Combine(folder, name);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>Writes a file into the folder.</summary>
    public void Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PathOf(name))!);
        // A text cut in the middle of a character is written with a mark in its place, as editors do.
        File.WriteAllBytes(PathOf(name), Encoding.UTF8.GetBytes(text));
    }

    /// <summary>Writes the specimen's cards, some changed or, with no text, left out.</summary>
    public void WriteCards(params IEnumerable<(string Name, string? Text)> changes)
    {
        var cards = Specimen.Cards.ToDictionary(card => card.Key, card => (string?)card.Value);
        foreach (var (name, text) in changes)
        {
            cards[name] = text;
        }

        foreach (var (name, text) in cards)
        {
            if (text is not null)
            {
                Write($"cards/{name}.yaml", text);
            }
        }
    }

    /// <summary>Reads a brief; its cards and prices are those of the specimen unless others were written here.</summary>
    public StationFile Read(string text)
    {
        if (!Directory.Exists(PathOf("cards")))
        {
            var shelf = Path.Combine(Specimen.Folder, "cards");
            text = text.Replace("cards: cards", $"cards: {shelf}", StringComparison.Ordinal)
                .Replace("\"cards\":\"cards\"", $"\"cards\":\"{shelf}\"", StringComparison.Ordinal);
        }

        if (!File.Exists(PathOf("prices.yaml")))
        {
            Write("prices.yaml", Specimen.Prices);
        }

        Write("station.yaml", text);
        return StationFile.Read(BriefPath);
    }

    /// <summary>What is wrong with a brief, each error without the brief's path.</summary>
    public IReadOnlyList<string> Errors(string text) => Errors(() => Read(text));

    /// <summary>What is wrong, each error without the brief's path and folder.</summary>
    public IReadOnlyList<string> Errors(Action read)
    {
        var bad = Assert.Throws<BadInputException>(read);
        Assert.NotEmpty(bad.Errors);
        Assert.All(bad.Errors, error => Assert.DoesNotContain('\n', error.ToString()));
        return
        [
            .. bad.Errors.Select(error =>
                error
                    .ToString()
                    .Replace(BriefPath + ":", "", StringComparison.Ordinal)
                    .Replace(folder + "/", "", StringComparison.Ordinal)
            ),
        ];
    }
}
