using System.Text;
using System.Text.Json.Nodes;
using Json.Schema;

namespace Shaduf.Pack.Tests;

/// <summary>The designs of the examples are those accepted, and match the published schema.</summary>
public sealed class AcceptedDesignTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    public static TheoryData<string> Names => ExamplePacks.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void The_design_is_the_accepted_one(string name) =>
        Accepted(
            $"tests/Shaduf.Pack.Tests/Pack/Accepted/{name}.design.json",
            Encoding.UTF8.GetString(packs[name].Files["design.json"])
        );

    [Fact]
    public void The_published_schema_is_that_of_the_code() =>
        Accepted("docs/schema/design.schema.json", DesignJson.Schema());

    [Theory]
    [MemberData(nameof(Names))]
    public void The_design_matches_its_schema(string name)
    {
        var schema = JsonSchema.FromText(DesignJson.Schema());
        var result = schema.Evaluate(
            System.Text.Json.JsonDocument.Parse(packs[name].Files["design.json"]).RootElement,
            new() { OutputFormat = OutputFormat.List }
        );
        Assert.True(result.IsValid);
        var broken = JsonNode.Parse(packs[name].Files["design.json"])!.AsObject();
        broken.Remove("choice");
        Assert.False(schema.Evaluate(System.Text.Json.JsonSerializer.SerializeToElement(broken)).IsValid);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_promised_names_are_there(string name)
    {
        var json = packs[name].Json;
        foreach (
            var field in new[]
            {
                "pump",
                "drive",
                "module",
                "moduleCount",
                "seriesCount",
                "stringCount",
                "tiltDeg",
                "azimuthDeg",
                "tankM3",
            }
        )
        {
            Assert.NotNull(json["choice"]![field]);
        }

        Assert.Equal(12, json["water"]!["months"]!.AsArray().Count);
        Assert.All(
            json["water"]!["months"]!.AsArray(),
            month => Assert.True((double)month!["supplyM3PerDay"]! <= (double)month["demandM3PerDay"]! + 1e-4)
        );
        Assert.All(
            json["rack"]!["parts"]!.AsArray(),
            part =>
                Assert.True(
                    (double)part!["lengthMm"]! > 0
                        && (int)part["count"]! > 0
                        && part["mark"] is not null
                        && part["section"] is not null
                )
        );
        Assert.True((double)json["rack"]!["massKg"]! > 0);
        Assert.True((decimal)json["money"]!["total"]! > 0);
        Assert.NotNull(json["money"]!["currency"]);
        foreach (var finding in json["findings"]!.AsArray())
        {
            Assert.All(
                new[] { "id", "status", "value", "limit", "unit", "source" },
                field => Assert.True(finding!.AsObject().ContainsKey(field))
            );
        }
    }

    // With SHADUF_ACCEPT=1 in the environment the accepted file is rewritten; the change is then read with git diff.
    private static void Accepted(string path, string text)
    {
        var accepted = Path.Combine(ExamplePacks.Root, path);
        if (Environment.GetEnvironmentVariable("SHADUF_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(accepted)!);
            File.WriteAllText(accepted, text);
        }

        var found = File.Exists(accepted) ? File.ReadAllText(accepted).ReplaceLineEndings("\n").Split('\n') : [];
        var lines = text.Split('\n');
        var first = Enumerable
            .Range(0, Math.Max(found.Length, lines.Length))
            .FirstOrDefault(i => found.ElementAtOrDefault(i) != lines.ElementAtOrDefault(i), -1);
        Assert.True(
            first < 0,
            $"{path}, line {first + 1}: accepted '{found.ElementAtOrDefault(first)?.Trim()}', made '{lines.ElementAtOrDefault(first)?.Trim()}'. If the change is meant, run with SHADUF_ACCEPT=1, read git diff, and note it in CHANGELOG.md under 'Numbers that changed'."
        );
    }
}
