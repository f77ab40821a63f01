using System.Text.Json.Nodes;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

/// <summary>What stops a rack of any example, in the wind that it knows or in one that is too much for it, is told what would hold; written into the brief it holds.</summary>
public sealed class ExampleAdviceTests
{
    public static TheoryData<string, int?> Cases { get; } =
    [
        .. Examples.Names.SelectMany(name =>
            new int?[] { null, 38 }.Select(wind => new TheoryDataRow<string, int?>(name, wind))
        ),
    ];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Advice_written_into_the_brief_holds(string example, int? windMPerS)
    {
        var brief = Brief(example, windMPerS);
        var design = Designed(brief);
        var stops = Stops(design).ToList();
        Assert.All(
            stops,
            stop => Assert.True(stop.Says.Contains("would hold") || stop.Says.Contains("engineer"), stop.Says)
        );
        if (design.Works.RackChoice.Taken.Holds)
        {
            Assert.Empty(stops);
            return;
        }

        var advice = design.Works.RackChoice.Others.FirstOrDefault(each => each.Holds);
        Assert.NotNull(advice);
        foreach (var change in advice.Instead.Split(", "))
        {
            Write(brief, change.Split(": ")[0], change.Split(": ")[1]);
        }

        var applied = Designed(brief);
        Assert.True(applied.Works.RackChoice.Taken.Holds);
        Assert.Empty(Stops(applied).Select(stop => stop.Says));
    }

    // A rack whose wind is unknown has no stop, only a plan: it is looked at as what it is.
    private static IEnumerable<Finding> Stops(Design design) =>
        design.Findings.Where(finding =>
            finding.Status == FindingStatus.Stop
            && (finding.Id.StartsWith("rack/", StringComparison.Ordinal) || IsFooting(finding.Id))
        );

    private static bool IsFooting(string id) =>
        id.StartsWith("ground/", StringComparison.Ordinal)
        && id is not ("ground/soil" or "ground/water" or "ground/edge");

    private static JsonNode Brief(string example, int? windMPerS)
    {
        var brief = YamlJson.Of(Examples.TextOf(example));
        brief["cards"] = Examples.Cards;
        brief["prices"] = Examples.Prices;
        if (brief["site"]!["weather"] is { } file)
        {
            brief["site"]!["weather"] = Path.Combine(Path.GetDirectoryName(Examples.PathOf(example))!, (string)file!);
        }

        if (windMPerS is { } speed)
        {
            brief["site"]!["wind"] = new JsonObject
            {
                ["speed"] = $"{speed} m/s",
                ["averaging"] = "10 min",
                ["returnPeriod"] = "50 years",
                ["from"] = "test",
            };
        }

        return brief;
    }

    private static void Write(JsonNode brief, string field, string value)
    {
        var path = field.Split('.');
        brief[path[0]] ??= new JsonObject();
        brief[path[0]]![path[1]] = value;
    }

    private static Design Designed(JsonNode brief)
    {
        using var scratch = new Scratch();
        scratch.Write("station.yaml", brief.ToJsonString());
        return DesignRun.Run(StationFile.Read(scratch.BriefPath));
    }
}
