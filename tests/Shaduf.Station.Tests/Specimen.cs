namespace Shaduf.Station.Tests;

/// <summary>A brief with few cards and prices that stay as they are when the examples change.</summary>
internal static class Specimen
{
    public static string Folder { get; } = Path.Combine(Examples.Root, "tests", "Shaduf.Station.Tests", "Specimen");

    public static string Brief { get; } = File.ReadAllText(Path.Combine(Folder, "station.yaml"));

    public static string Prices { get; } = File.ReadAllText(Path.Combine(Folder, "prices.yaml"));

    public static IReadOnlyDictionary<string, string> Cards { get; } =
        Directory
            .EnumerateFiles(Path.Combine(Folder, "cards"))
            .ToDictionary(path => Path.GetFileNameWithoutExtension(path), File.ReadAllText);
}
