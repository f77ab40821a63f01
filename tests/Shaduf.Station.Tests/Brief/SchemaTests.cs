using System.Collections.Concurrent;
using System.Text.Json;
using Json.Schema;

namespace Shaduf.Station.Tests;

/// <summary>The published schemas are those of the code, and the files that come with the program are valid by them.</summary>
public sealed class SchemaTests
{
    private static readonly ConcurrentDictionary<string, JsonSchema> s_read = [];

    public static TheoryData<string> Briefs => [.. Examples.Names];

    public static TheoryData<string> Cards =>
        [.. Directory.EnumerateFiles(Examples.Cards, "*.yaml").Select(path => Path.GetFileNameWithoutExtension(path))];

    [Fact]
    public void The_published_schemas_are_those_of_the_code()
    {
        Approved.Same("docs/schema/station.schema.json", StationFile.Schema());
        Approved.Same("docs/schema/prices.schema.json", StationFile.PriceBookSchema());
        foreach (var (kind, schema) in StationFile.CardSchemas())
        {
            Approved.Same($"docs/schema/card-{kind}.schema.json", schema);
        }
    }

    [Fact]
    public void Every_published_schema_is_one_of_these() =>
        Assert.Equal(
            StationFile
                .CardSchemas()
                .Select(card => $"card-{card.Kind}.schema.json")
                .Append("design.schema.json")
                .Append("prices.schema.json")
                .Append("station.schema.json")
                .Order(StringComparer.Ordinal),
            Directory
                .EnumerateFiles(Path.Combine(Examples.Root, "docs", "schema"))
                .Select(path => Path.GetFileName(path))
                .Order(StringComparer.Ordinal)
        );

    [Theory]
    [MemberData(nameof(Briefs))]
    public void Every_example_is_valid(string name) => AssertValid(StationFile.Schema(), Examples.TextOf(name));

    [Theory]
    [MemberData(nameof(Briefs))]
    public void Every_example_leads_an_editor_to_the_schema(string name)
    {
        const string leads = "# yaml-language-server: $schema=";
        var first = Examples.TextOf(name).Split('\n')[0];
        Assert.StartsWith(leads, first, StringComparison.Ordinal);
        var path = Path.Combine(Path.GetDirectoryName(Examples.PathOf(name))!, first[leads.Length..]);
        Assert.Equal(StationFile.Schema(), File.ReadAllText(path));
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Every_card_is_valid(string name)
    {
        var text = File.ReadAllText(Path.Combine(Examples.Cards, $"{name}.yaml"));
        var kind = (string)YamlJson.Of(text)["card"]!;
        AssertValid(StationFile.CardSchemas().Single(card => card.Kind == kind).Schema, text);
    }

    [Fact]
    public void The_price_book_is_valid() =>
        AssertValid(StationFile.PriceBookSchema(), File.ReadAllText(Examples.Prices));

    [Theory]
    [InlineData("depth: 110 m", "dept: 110 m")]
    [InlineData("depth: 110 m", "depth: 110")]
    [InlineData("depth: 110 m", "depth: 110 L")]
    [InlineData("depth: 110 m", "depth: 110,5 m")]
    [InlineData("  latitude: -2.10 deg\n", "")]
    [InlineData("fence: yes", "fence: perhaps")]
    [InlineData("rows: choose", "rows: 9")]
    [InlineData("soil: clay", "soil: mud")]
    [InlineData("people: { count: 980, each: 20 L/d }", "people: 980")]
    public void A_brief_that_is_refused_is_not_valid(string right, string wrong)
    {
        using var scratch = new Scratch();
        var text = Specimen.Brief.Replace(right, wrong, StringComparison.Ordinal);
        Assert.NotEmpty(scratch.Errors(text));
        Assert.False(IsValid(StationFile.Schema(), text));
    }

    [Theory]
    [InlineData(
        "wind:\n    speed: 26 m/s\n    averaging: 10 min\n    returnPeriod: 50 years\n    from: national map, open flat country",
        "wind: unknown"
    )]
    [InlineData("soil: clay", "soil: unknown")]
    [InlineData("soil: clay", "soil:")]
    [InlineData("place: Orelo ridge, Tavoland", "place:")]
    [InlineData("depth: 110 m", "depth: unknown")]
    [InlineData("depth: 110 m", "depth: 0.11 km")]
    [InlineData("latitude: -2.10 deg", "latitude: -2.1")]
    [InlineData("school: { count: 260, each: 5 L/d }", "school: unknown")]
    public void A_brief_that_is_taken_is_valid(string one, string other)
    {
        using var scratch = new Scratch();
        var text = Specimen.Brief.Replace(one, other, StringComparison.Ordinal);
        Assert.Equal("Hilltop village", scratch.Read(text).Brief.Head.Name);
        AssertValid(StationFile.Schema(), text);
    }

    private static void AssertValid(string schema, string yaml) => Assert.True(IsValid(schema, yaml), yaml);

    private static bool IsValid(string schema, string yaml) =>
        s_read
            .GetOrAdd(schema, text => JsonSchema.FromText(text))
            .Evaluate(JsonSerializer.SerializeToElement(YamlJson.Of(yaml)), new() { OutputFormat = OutputFormat.Flag })
            .IsValid;
}
