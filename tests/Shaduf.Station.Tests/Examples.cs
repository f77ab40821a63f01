namespace Shaduf.Station.Tests;

/// <summary>The stations in examples/, as text and as designed.</summary>
internal static class Examples
{
    public static string Root { get; } = RootAbove(AppContext.BaseDirectory);

    public static string Cards { get; } = Path.Combine(Root, "examples", "cards");

    public static string Prices { get; } = Path.Combine(Root, "examples", "prices", "planning.yaml");

    public static IReadOnlyList<string> Names { get; } =
    ["hilltop-village", "market-garden", "homestead", "river-terrace", "plain-school"];

    private static readonly Dictionary<string, Lazy<Design>> s_designs = Names.ToDictionary(
        name => name,
        name => new Lazy<Design>(() => DesignRun.Run(StationFile.Read(PathOf(name))))
    );

    public static string PathOf(string name) => Path.Combine(Root, "examples", name, "station.yaml");

    public static string TextOf(string name) => File.ReadAllText(PathOf(name));

    /// <summary>The design of an example, made once.</summary>
    public static Design DesignOf(string name) => s_designs[name].Value;

    private static string RootAbove(string folder) =>
        File.Exists(Path.Combine(folder, "Shaduf.slnx")) ? folder : RootAbove(Path.GetDirectoryName(folder)!);
}
