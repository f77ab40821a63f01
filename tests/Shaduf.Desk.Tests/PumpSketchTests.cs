using Shaduf.Station;

namespace Shaduf.Desk.Tests;

public sealed class PumpSketchTests
{
    private const string Points = """
        0.00	113.0	0
        1.2;  108.9;  31
        2,4 m3/h 98.5 m 48 %
        3.6 82.0 53
        4.8 58.9 45
        """;

    [Fact]
    public void Pasted_points_give_a_card_whose_curve_runs_through_them()
    {
        var sketch = new PumpSketch { Points = Points, ["name"] = "own-3x90" };
        var (card, faults) = sketch.Read();
        Assert.Empty(faults);
        Assert.Equal("own-3x90", card!.Name);
        Assert.False(card.IsPlanningData);
        foreach (var (flow, head) in sketch.Told)
        {
            Assert.Equal(head, card.Curve.HeadM(flow / 3600, 1), 2.0);
        }
    }

    [Theory]
    [InlineData("1 2", "line 1: '1 2' has 2 numbers")]
    [InlineData("<script>alert(1)</script>", "has 1 numbers")]
    [InlineData("1 2 3", "curve")]
    public void Nonsense_is_told_and_gives_no_card(string points, string says)
    {
        var (card, faults) = new PumpSketch { Points = points, ["name"] = "own" }.Read();
        Assert.Null(card);
        Assert.Contains(faults, fault => fault.Contains(says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("mass", "heavy", "mass")]
    [InlineData("name", "", "name")]
    [InlineData("motorPower", "2 kW }\nevil: yes", "motorPower")]
    public void A_wrong_field_is_named(string field, string value, string told)
    {
        var (card, faults) = new PumpSketch
        {
            Points = Points,
            ["name"] = "own",
            [field] = value,
        }.Read();
        Assert.Null(card);
        Assert.Contains(faults, fault => fault.StartsWith(told, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_card_that_is_taken_stands_beside_the_brief_and_on_its_shelf()
    {
        await using var kept = new OpenStore();
        var store = await kept.StoreAsync();
        var station = await store.AddAsync(
            "A",
            Starters.Example("homestead").Text,
            stop: TestContext.Current.CancellationToken
        );
        using var bench = new Workbench(store, new());
        await bench.OpenAsync(station.Id);
        Assert.Null(await new PumpSketch { Points = Points, ["name"] = "own-3x90" }.TakeAsync(bench));
        Assert.Equal("own-3x90.yaml", bench.Brief!.Value("ownCards[1].file"));
        var until = DateTime.UtcNow.AddMinutes(5);
        while (bench.Step is not null && DateTime.UtcNow < until)
        {
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }

        Assert.Empty(bench.Errors);
        Assert.NotNull(bench.Design!.File.Shelf.Find<PumpCard>("own-3x90"));
        Assert.Null(await RateSheet.SetAsync(bench, ("own-3x90", "nr"), "4321.5"));
        Assert.Contains(
            "item: own-3x90, unit: nr, rate: 4321.5",
            await bench.TextOfAsync("prices.yaml"),
            StringComparison.Ordinal
        );
        Assert.Equal("prices.yaml", bench.Brief!.Value("prices"));
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("1,5")]
    [InlineData("1e99")]
    [InlineData("")]
    [InlineData("free")]
    public void A_rate_that_is_no_rate_is_told(string typed) => Assert.NotNull(RateSheet.Fault(typed));
}
