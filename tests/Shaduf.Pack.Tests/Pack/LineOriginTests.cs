using System.Text.Json.Nodes;
using Shaduf.Station;

namespace Shaduf.Pack.Tests;

/// <summary>Every line of the bill can be traced, and what it is traced to is there.</summary>
public sealed class LineOriginTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void Every_line_leads_to_something_that_is_there(string name)
    {
        var pack = packs[name];
        var sheets = DrawingSheets.Of(pack.Design, pack.Stamp).Select(sheet => sheet.Name).ToHashSet();
        var marks = pack.Design.Works.SawnLots.SelectMany(lot => lot.Steel.Parts).Select(part => part.Mark).ToHashSet();
        var schema = JsonNode.Parse(StationFile.Schema())!;
        foreach (var line in pack.Json["quantities"]!.AsArray())
        {
            var origins = line!["origins"]!.AsArray();
            Assert.True(origins.Count > 0, $"{line["code"]} {line["item"]} leads nowhere");
            foreach (var origin in origins)
            {
                var (kind, id) = ((string)origin!["kind"]!, (string)origin["id"]!);
                var isThere = kind switch
                {
                    "part" => marks.Contains(id),
                    "card" => pack.Design.File.Shelf.Cards.Any(card => card.Name == id),
                    "data" => At(pack.Json, id, "") is not null,
                    "brief" => At(schema["properties"]!, id, "properties") is not null,
                    "labour" => Labour.Ids.Contains(id),
                    "sheet" => sheets.Contains(id),
                    "method" => File.Exists(Path.Combine(ExamplePacks.Root, "docs", "methods", $"{id}.md")),
                    _ => false,
                };
                Assert.True(isThere, $"{name}: {line["code"]} {line["item"]} leads to {kind} {id}, which is not there");
            }
        }
    }

    [Fact]
    public void A_bar_leads_to_the_marks_that_are_cut_from_it()
    {
        var pack = packs["homestead"];
        var bar = pack.Json["quantities"]!.AsArray().First(line => (string)line!["item"]! == "L35x4")!;
        var marks = bar["origins"]!.AsArray().Where(origin => (string)origin!["kind"]! == "part");
        var cut = pack.Design.Takeoff.BarPlans.Single(plan => plan.Section.Name == "L35x4").Plan;
        Assert.Equal(
            cut.Bars.SelectMany(each => each.Pieces)
                .Select(piece => piece.Mark.TrimEnd('a', 'b', 'c'))
                .Distinct()
                .Order(),
            marks.Select(origin => (string)origin!["id"]!).Order()
        );
    }

    private static JsonNode? At(JsonNode from, string path, string between)
    {
        var at = from;
        foreach (var (i, name) in path.Split('.').Index())
        {
            at = i > 0 && between.Length > 0 ? Group(at)?[between]?[name] : at?[name];
        }

        return at;
    }

    // A field that may be left out is described under 'anyOf'.
    private static JsonNode? Group(JsonNode? field) =>
        field?["properties"] is not null ? field : field?["anyOf"]?.AsArray().FirstOrDefault();
}
