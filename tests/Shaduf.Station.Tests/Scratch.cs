namespace Shaduf.Station.Tests;

/// <summary>A folder of one test with a brief, cards and prices; gone when the test ends.</summary>
internal sealed class Scratch : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("shaduf-").FullName;

    public string BriefPath => Path.Combine(folder, "station.yaml");

    public string PathOf(string name) => Path.Combine(folder, name);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>Writes a file into the folder.</summary>
    public string Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PathOf(name))!);
        File.WriteAllText(PathOf(name), text);
        return PathOf(name);
    }

    /// <summary>A folder of cards: some of the examples' by name, and some written here.</summary>
    public string Shelf(IEnumerable<string> names, params IReadOnlyList<(string Name, string Text)> own)
    {
        foreach (var name in names)
        {
            Write($"cards/{name}.yaml", File.ReadAllText(Path.Combine(Examples.Cards, $"{name}.yaml")));
        }

        foreach (var (name, text) in own)
        {
            Write($"cards/{name}.yaml", text);
        }

        return PathOf("cards");
    }

    /// <summary>Reads a brief from text that names the cards and prices of the examples as they do.</summary>
    public StationFile Read(string text)
    {
        Write("station.yaml", Here(text));
        return StationFile.Read(BriefPath);
    }

    /// <summary>What is wrong with a brief, each error without the file's name.</summary>
    public IReadOnlyList<string> Errors(string text) => Errors(() => Read(text));

    /// <summary>What is wrong, each error without the scratch folder.</summary>
    public IReadOnlyList<string> Errors(Action read)
    {
        var bad = Assert.Throws<BadInputException>(read);
        Assert.NotEmpty(bad.Errors);
        Assert.All(bad.Errors, error => Assert.DoesNotContain('\n', error.ToString()));
        return [.. bad.Errors.Select(error => error.ToString().Replace(BriefPath + ":", "", StringComparison.Ordinal))];
    }

    // A folder 'cards' written here goes before that of the examples.
    private string Here(string text) =>
        text.Replace(
                "../cards",
                Directory.Exists(PathOf("cards")) ? "cards" : Examples.Cards,
                StringComparison.Ordinal
            )
            .Replace(
                "../prices/planning.yaml",
                File.Exists(PathOf("prices.yaml")) ? "prices.yaml" : Examples.Prices,
                StringComparison.Ordinal
            );
}
