using System.Collections.Concurrent;
using System.Text;
using System.Text.Json.Nodes;
using Shaduf.Station;

namespace Shaduf.Pack.Tests;

/// <summary>The packs of the examples, made once for all tests.</summary>
public sealed class ExamplePacks
{
    public static readonly DateOnly Today = new(2026, 1, 31);

    // Made once for the whole assembly, though each class has its own fixture.
    private static readonly ConcurrentDictionary<string, Lazy<Made>> All = [];

    // One folder for the whole run, taken away at its end.
    private static readonly Lazy<string> Scratch = new(() =>
    {
        var folder = Directory.CreateTempSubdirectory("pack-tests-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        return folder;
    });

    public static TheoryData<string> Names { get; } =
    ["hilltop-village", "market-garden", "homestead", "river-terrace", "plain-school"];

    public static string Root
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder.FullName, "Shaduf.slnx")))
            {
                folder = folder.Parent!;
            }

            return folder.FullName;
        }
    }

    public Made this[string name] => All.GetOrAdd(name, key => new(() => Make(BriefOf(key)))).Value;

    public static string NewFolder() =>
        Directory.CreateDirectory(Path.Combine(Scratch.Value, Path.GetRandomFileName())).FullName;

    public static string BriefOf(string name) => Path.Combine(Root, "examples", name, "station.yaml");

    public static Made Make(string brief)
    {
        var design = DesignRun.Run(StationFile.Read(brief));
        var stamp = Stamp.Of(design, "0.0.0-test", Today);
        var files = PackWriter.FilesAsync(design, stamp).GetAwaiter().GetResult();
        return new(design, stamp, files.ToDictionary(file => file.Name, file => file.Bytes));
    }

    /// <summary>A brief like an example's with some text replaced, written into a folder of its own.</summary>
    public static string Changed(string name, params (string From, string To)[] changes)
    {
        var text = File.ReadAllText(BriefOf(name))
            .Replace("../cards", Path.Combine(Root, "examples", "cards"), StringComparison.Ordinal)
            .Replace("../prices", Path.Combine(Root, "examples", "prices"), StringComparison.Ordinal);
        foreach (var (from, to) in changes)
        {
            Assert.Contains(from, text);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }

        var path = Path.Combine(NewFolder(), "station.yaml");
        File.WriteAllText(path, text);
        return path;
    }

    public sealed record Made(Design Design, Stamp Stamp, IReadOnlyDictionary<string, byte[]> Files)
    {
        public JsonNode Json { get; } = JsonNode.Parse(Encoding.UTF8.GetString(Files["design.json"]))!;

        public IReadOnlyList<Scene> Pages { get; } = EngineerBook.Pages(Design, Stamp);
    }
}
