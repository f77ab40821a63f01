using Shaduf.Station;

namespace Shaduf.Desk.Tests;

public sealed class FieldNodeTests
{
    [Fact]
    public void The_outline_begins_with_the_station_and_holds_every_field_of_every_example()
    {
        Assert.Equal("station", FieldNode.Brief[0].Name);
        foreach (var example in Starters.Examples)
        {
            foreach (var path in BriefText.Of(Starters.Example(example).Text).Paths)
            {
                IReadOnlyList<FieldNode> at = FieldNode.Brief;
                foreach (var step in path.Split('.'))
                {
                    var field = at.SingleOrDefault(field => field.Name == step.Split('[')[0]);
                    Assert.True(field is not null, $"{example}: no field {path} in the outline");
                    at = field.Fields;
                }
            }
        }
    }

    [Fact]
    public void A_field_says_what_it_is_and_what_it_takes()
    {
        var uses = FieldNode.Brief.Single(field => field.Name == "uses");
        Assert.Equal((FieldKind.Group, true), (uses.Kind, uses.IsRequired));
        Assert.All(Below(FieldNode.Brief), field => Assert.NotEmpty(field.About));
        Assert.Contains("unknown", Below(FieldNode.Brief).Single(field => field.Name == "recordLow").Words);
        Assert.Equal("record low", Below(FieldNode.Brief).Single(field => field.Name == "recordLow").Label);
    }

    private static IEnumerable<FieldNode> Below(IEnumerable<FieldNode> fields) =>
        fields.SelectMany(field => Below(field.Fields).Prepend(field));
}
