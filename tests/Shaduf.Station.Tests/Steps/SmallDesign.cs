using System.Collections.Concurrent;
using System.Text.Json.Nodes;

namespace Shaduf.Station.Tests;

/// <summary>The small station, read and designed, with changes; each brief is designed once for all tests.</summary>
internal static class SmallDesign
{
    private static readonly ConcurrentDictionary<string, Lazy<Design>> s_designs = new(StringComparer.Ordinal);

    public static StationFile File(Action<JsonNode>? change = null) => Read(Text(change));

    public static Design Of(Action<JsonNode>? change = null) =>
        s_designs.GetOrAdd(Text(change), text => new(() => DesignRun.Run(Read(text)))).Value;

    private static string Text(Action<JsonNode>? change)
    {
        var brief = SmallStation.Brief();
        change?.Invoke(brief);
        return brief.ToJsonString();
    }

    private static StationFile Read(string text)
    {
        using var scratch = new Scratch();
        return scratch.Read(text);
    }
}
