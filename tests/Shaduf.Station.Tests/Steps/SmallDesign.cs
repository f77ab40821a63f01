using System.Text.Json.Nodes;

namespace Shaduf.Station.Tests;

/// <summary>The small station, read and designed, with changes.</summary>
internal static class SmallDesign
{
    public static StationFile File(Action<JsonNode>? change = null)
    {
        using var scratch = new Scratch();
        var brief = SmallStation.Brief();
        change?.Invoke(brief);
        return scratch.Read(brief.ToJsonString());
    }

    public static Design Of(Action<JsonNode>? change = null) => DesignRun.Run(File(change));
}
