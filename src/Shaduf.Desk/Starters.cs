using System.Text;
using Shaduf.Station;
using Shaduf.Store;

namespace Shaduf.Desk;

/// <summary>What a new station begins from: the starter, or one of the examples that come with the program.</summary>
internal static class Starters
{
    private static readonly string s_examples = Path.Combine(AppContext.BaseDirectory, "examples");

    /// <summary>Names of the examples.</summary>
    public static IReadOnlyList<string> Examples { get; } =
        Directory.Exists(s_examples)
            ?
            [
                .. Directory
                    .GetDirectories(s_examples)
                    .Where(folder => File.Exists(Path.Combine(folder, "station.yaml")))
                    .Select(folder => Path.GetFileName(folder))
                    .Order(StringComparer.Ordinal),
            ]
            : [];

    /// <summary>The starter brief under a name of its own.</summary>
    public static string Starter(string name)
    {
        using var reader = new StreamReader(
            typeof(Starters).Assembly.GetManifestResourceStream("starter.yaml")!,
            Encoding.UTF8
        );
        return BriefText.Of(reader.ReadToEnd()).With("station.name", name).Text;
    }

    /// <summary>An example with the files beside it. Its cards and prices are those that come with the program.</summary>
    public static (string Text, IReadOnlyList<StationAttachment> Files) Example(string name)
    {
        var folder = Path.Combine(s_examples, Examples.Single(each => each == name));
        var text = BriefText
            .Of(File.ReadAllText(Path.Combine(folder, "station.yaml")))
            .Without("cards")
            .Without("prices")
            .Text;
        return (
            text,
            [
                .. Directory
                    .GetFiles(folder)
                    .Where(file => Path.GetFileName(file) != "station.yaml")
                    .Select(file => new StationAttachment(Path.GetFileName(file), File.ReadAllBytes(file))),
            ]
        );
    }
}
