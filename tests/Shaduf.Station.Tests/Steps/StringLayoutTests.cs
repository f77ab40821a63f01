using CsCheck;

namespace Shaduf.Station.Tests;

/// <summary>Every module belongs to one string, and the wires go from neighbour to neighbour's neighbour and back.</summary>
public sealed class StringLayoutTests
{
    private static readonly Gen<RackGrid> Grid = Gen.Select(
        Gen.Int[1, 3],
        Gen.Int[1, 14],
        Gen.Int[1, 4],
        (rows, columns, racks) => new RackGrid(rows, columns, racks)
    );

    [Fact]
    public void Places_are_each_taken_once_and_lie_side_by_side() =>
        Grid.Sample(grid =>
        {
            var places = StringLayout.Places(grid).ToList();
            Assert.Equal(grid.ModuleCount, places.Distinct().Count());
            Assert.All(
                places.Zip(places.Skip(1)),
                pair =>
                    Assert.Equal(
                        1,
                        Math.Abs(pair.First.Column - pair.Second.Column)
                            + Math.Abs(Above(grid, pair.First) - Above(grid, pair.Second))
                    )
            );
        });

    [Fact]
    public void Leapfrog_takes_every_module_once_and_ends_beside_its_start() =>
        Gen.Select(Grid, Gen.Int[1, 40])
            .Sample(
                (grid, count) =>
                {
                    var path = StringLayout.Places(grid).Take(count).ToList();
                    var order = StringLayout.Leapfrog(path);
                    Assert.Equal(path.Order(ByPlace), order.Order(ByPlace));
                    Assert.Equal(path[0], order[0]);
                    Assert.Equal(path[Math.Min(1, path.Count - 1)], order[^1]);
                    var place = path.Index().ToDictionary(each => each.Item, each => each.Index);
                    Assert.All(
                        order.Zip(order.Skip(1)),
                        pair => Assert.InRange(Math.Abs(place[pair.First] - place[pair.Second]), 1, 2)
                    );
                }
            );

    [Theory]
    [InlineData(1, "0")]
    [InlineData(2, "0 1")]
    [InlineData(5, "0 2 4 3 1")]
    [InlineData(6, "0 2 4 5 3 1")]
    public void Leapfrog_by_hand(int count, string order) =>
        Assert.Equal(
            order,
            string.Join(
                ' ',
                StringLayout.Leapfrog([.. StringLayout.Places(new(1, count, 1))]).Select(place => place.Column)
            )
        );

    [Fact]
    public void The_strings_of_a_design_share_out_its_modules()
    {
        var design = SmallDesign.Of();
        var layout = design.Works.Electrics.Layout;
        Assert.Equal(design.Choice.StringCount, layout.Strings.Count);
        Assert.All(layout.Strings, route => Assert.Equal(design.Choice.SeriesCount, route.Order.Count));
        Assert.Equal(design.Choice.ModuleCount, layout.Strings.SelectMany(route => route.Order).Distinct().Count());
        Assert.All(layout.Strings, route => Assert.InRange(route.HomeM, 2, 60));
        Assert.InRange(layout.LongestJumpM, 0, 6);
    }

    private static int Above(RackGrid grid, ModulePlace place) => (place.Rack * grid.Rows) + place.Row;

    private static Comparer<ModulePlace> ByPlace { get; } =
        Comparer<ModulePlace>.Create((a, b) => (a.Rack, a.Row, a.Column).CompareTo((b.Rack, b.Row, b.Column)));
}
