namespace Shaduf.Station.Tests;

public sealed class InputHashTests
{
    private sealed record Row(string Name, double? LengthM, IReadOnlyList<Row> Below)
    {
        public Row? Circle { get; set; }
    }

    [Fact]
    public void Equal_records_made_apart_have_the_same_hash() =>
        Assert.Equal(InputHash.Of(Tree(1.5)), InputHash.Of(Tree(1.5)));

    [Theory]
    [InlineData(1.5000001)]
    [InlineData(-1.5)]
    [InlineData(0)]
    public void Another_figure_deep_inside_gives_another_hash(double lengthM) =>
        Assert.NotEqual(InputHash.Of(Tree(1.5)), InputHash.Of(Tree(lengthM)));

    [Fact]
    public void Order_place_and_kind_count()
    {
        object?[][] all =
        [
            ["a", "b"],
            ["b", "a"],
            ["ab"],
            ["ab", null],
            [1.0],
            [1],
            ["1"],
            [new double[] { 1 }],
            [new object[] { 1.0 }],
            [new[] { new[] { 1 }, [2] }],
            [new[] { new[] { 1, 2 } }],
            [RackType.SlideIn],
            [SoilKind.Rock],
        ];
        Assert.Equal(all.Length, all.Select(each => InputHash.Of(each)).Distinct().Count());
    }

    [Fact]
    public void Every_part_of_a_brief_counts()
    {
        var brief = StationFile.Read(Examples.PathOf("hilltop-village")).Brief;
        Brief[] all =
        [
            brief,
            brief with
            {
                Head = brief.Head with { Name = "other" },
            },
            brief with
            {
                Site = brief.Site with { ElevationM = brief.Site.ElevationM + 1e-9 },
            },
            brief with
            {
                Rack = brief.Rack with { Lines = 1 },
            },
            brief with
            {
                Taps = null,
            },
        ];
        Assert.Equal(all.Length, all.Select(each => InputHash.Of(each)).Distinct().Count());
    }

    [Fact]
    public void What_refers_to_itself_is_refused()
    {
        var row = Tree(1);
        row.Circle = row;
        Assert.Throws<ArgumentException>(() => InputHash.Of(row));
    }

    private static Row Tree(double lengthM) => new("root", null, [new("leaf", 2, []), new("leaf", lengthM, [])]);
}
