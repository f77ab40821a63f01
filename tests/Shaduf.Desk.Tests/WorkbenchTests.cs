using Shaduf.Station;
using Shaduf.Store;

namespace Shaduf.Desk.Tests;

public sealed class WorkbenchTests : IAsyncLifetime
{
    private static readonly TimeSpan s_patience = TimeSpan.FromMinutes(5);

    private readonly OpenStore kept = new();
    private readonly Digests digests = new();
    private StationStore store = null!;
    private StationText station = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        store = await kept.StoreAsync();
        station = await store.AddAsync("Dry farm", Starters.Example("homestead").Text, stop: Stop);
    }

    public ValueTask DisposeAsync() => kept.DisposeAsync();

    private async Task<Workbench> OpenedAsync()
    {
        var bench = new Workbench(store, digests);
        Assert.True(await bench.OpenAsync(station.Id));
        return bench;
    }

    // Until the last edit's run is over.
    private static async Task SettledAsync(Workbench bench)
    {
        var until = DateTime.UtcNow + s_patience;
        while (bench.Step is not null)
        {
            Assert.True(DateTime.UtcNow < until, $"still at {bench.Step}");
            await Task.Delay(20, Stop);
        }
    }

    [Fact]
    public async Task A_station_that_is_not_there_is_not_opened()
    {
        using var bench = new Workbench(store, digests);
        Assert.False(await bench.OpenAsync(Guid.NewGuid()));
    }

    [Fact]
    public async Task An_edit_changes_its_field_only_stands_in_the_journal_and_moves_the_figures()
    {
        using var bench = await OpenedAsync();
        await SettledAsync(bench);
        var before = bench.Now!;
        await bench.SetAsync("uses.people.count", "22");
        await SettledAsync(bench);
        Assert.Equal(station.Text.Replace("count: 11,", "count: 22,"), bench.Station!.Text);
        Assert.Equal("uses.people.count", Assert.Single(await store.JournalAsync(station.Id, stop: Stop)).What);
        Assert.Equal(before, bench.Before);
        Assert.True(bench.Now!.DemandM3PerDay > before.DemandM3PerDay);
        Assert.NotNull(Shown.Change(before, bench.Now));
        Assert.Equal(bench.Now, digests.Of(station.Id, 1));
        Assert.Null(digests.Of(station.Id, 0));
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("-5")]
    [InlineData("{ a: b }")]
    [InlineData("1e400")]
    public async Task Nonsense_in_a_field_is_told_beside_it_and_the_last_design_stays(string nonsense)
    {
        using var bench = await OpenedAsync();
        await SettledAsync(bench);
        var design = bench.Design;
        await bench.SetAsync("uses.people.count", nonsense);
        await SettledAsync(bench);
        Assert.Equal("uses.people.count", Assert.Single(bench.Errors).Field);
        Assert.Same(design, bench.Design);
        Assert.Equal(nonsense, bench.Brief!.Value("uses.people.count"));
        await bench.UndoAsync();
        await SettledAsync(bench);
        Assert.Empty(bench.Errors);
        Assert.Equal(station.Text, bench.Station!.Text);
    }

    [Fact]
    public async Task A_page_pasted_into_a_number_is_told_and_nothing_is_lost()
    {
        using var bench = await OpenedAsync();
        await bench.SetAsync("uses.people.count", string.Concat(Enumerable.Repeat("a line of a page\n", 20_000)));
        Assert.Contains("Not taken", bench.Message, StringComparison.Ordinal);
        Assert.Equal("uses.people.count", bench.MessageField);
        Assert.Equal(station, await store.ReadAsync(station.Id, Stop));
    }

    [Fact]
    public async Task Edits_are_taken_back_and_done_again_without_limit()
    {
        using var bench = await OpenedAsync();
        for (var count = 12; count < 42; count++)
        {
            await bench.SetAsync("uses.people.count", $"{count}");
        }

        for (var i = 0; i < 30; i++)
        {
            await bench.UndoAsync();
        }

        Assert.Equal(station.Text, bench.Station!.Text);
        Assert.False(bench.CanUndo);
        for (var i = 0; i < 30; i++)
        {
            await bench.RedoAsync();
        }

        Assert.Equal("41", bench.Brief!.Value("uses.people.count"));
        Assert.False(bench.CanRedo);
        Assert.Equal(90, bench.Station!.EditNumber);
    }

    [Fact]
    public async Task A_rate_is_an_edit_that_is_taken_back_even_after_the_page_was_opened_again()
    {
        using (var bench = await OpenedAsync())
        {
            await SettledAsync(bench);
            var line = bench.Design!.Bill.Lines.First(each => each.UnitRate is > 0);
            var item = (line.Quantity.Item, line.Quantity.Unit);
            var edits = new[] { "17", "18.5" }.Select(rate => RateSheet.SetAsync(bench, item, rate));
            Assert.Equal([null, null], await Task.WhenAll(edits));
            await SettledAsync(bench);
            Assert.Equal(18.5m, RateOf(bench, line.Code));
            Assert.Equal(2, bench.Station!.EditNumber);
        }

        using var again = await OpenedAsync();
        await again.UndoAsync();
        await SettledAsync(again);
        Assert.Contains(17m, again.Design!.Bill.Lines.Select(line => line.UnitRate ?? 0));
        await again.UndoAsync();
        Assert.Equal(station.Text, again.Station!.Text);
        Assert.Empty(await store.Files.ListAsync(station.Id, Stop));
        Assert.False(again.CanUndo);
    }

    private static decimal? RateOf(Workbench bench, string code) =>
        bench.Design!.Bill.Lines.First(line => line.Code == code).UnitRate;

    [Fact]
    public async Task Alternatives_are_designed_beside_the_station_and_leave_it_as_it_is()
    {
        using var bench = await OpenedAsync();
        await SettledAsync(bench);
        var ways = bench.Alternatives;
        ways.Add("as it stands", station.Text);
        ways.Add("the same again", station.Text);
        ways.Add("more people", bench.Brief!.With("uses.people.count", "22").Text);
        ways.Add("nonsense", bench.Brief!.With("uses.people.count", "many").Text);
        ways.Add("one too many", bench.Brief!.With("uses.people.count", "23").Text);
        var until = DateTime.UtcNow + s_patience;
        while (ways.All.Any(way => way.Design is null && way.Trouble is null))
        {
            Assert.True(DateTime.UtcNow < until, "an alternative is still being designed");
            await Task.Delay(20, Stop);
        }

        Assert.Equal(["as it stands", "more people", "nonsense"], ways.All.Select(way => way.Label));
        Assert.Equal(bench.Design!.Offer.Total, ways.All[0].Design!.Offer.Total);
        Assert.NotEqual(bench.Now!.DemandM3PerDay, Digest.Of(ways.All[1].Design!).DemandM3PerDay);
        Assert.Contains("many", ways.All[2].Trouble, StringComparison.Ordinal);
        Assert.Equal(0, bench.Station!.EditNumber);
        ways.Remove(station.Text);
        Assert.Equal(["more people", "nonsense"], ways.All.Select(way => way.Label));
    }

    [Fact]
    public async Task A_new_edit_after_one_taken_back_ends_what_could_be_done_again()
    {
        using var bench = await OpenedAsync();
        await bench.SetAsync("uses.people.count", "12");
        await bench.UndoAsync();
        await bench.SetAsync("uses.growth", "1 %/year");
        Assert.False(bench.CanRedo);
        Assert.True(bench.CanUndo);
    }

    [Fact]
    public async Task Another_windows_edit_is_shown_and_not_overwritten()
    {
        using var here = await OpenedAsync();
        using var there = await OpenedAsync();
        await there.SetAsync("uses.people.count", "12");
        await here.SetAsync("uses.growth", "1 %/year");
        Assert.Contains("Another window", here.Message, StringComparison.Ordinal);
        Assert.Equal(there.Station, here.Station);
        await here.SetAsync("uses.growth", "1 %/year");
        Assert.Null(here.Message);
        Assert.Equal(("12", "1 %/year"), (here.Brief!.Value("uses.people.count"), here.Brief!.Value("uses.growth")));
    }

    [Fact]
    public async Task Items_are_added_and_left_out()
    {
        using var bench = await OpenedAsync();
        await bench.AddAsync("uses.livestock", [("animal", "sheep"), ("count", "5")]);
        Assert.Equal("sheep", bench.Brief!.Value("uses.livestock[4].animal"));
        await bench.RemoveAsync("uses.livestock[1]", bench.Station!.EditNumber);
        Assert.Equal("goat", bench.Brief!.Value("uses.livestock[1].animal"));
        await bench.SetAsync("tank.stand", "");
        Assert.Null(bench.Brief!.Value("tank.stand"));
    }

    [Fact]
    public async Task Leaving_an_item_out_twice_at_once_takes_one_and_tells_the_other()
    {
        using var bench = await OpenedAsync();
        var seen = bench.Station!.EditNumber;
        await bench.RemoveAsync("uses.livestock[1]", seen);
        await bench.RemoveAsync("uses.livestock[1]", seen);
        Assert.Equal(2, bench.Brief!.ItemCount("uses.livestock"));
        Assert.Contains("the list had changed meanwhile", bench.Message, StringComparison.Ordinal);
        Assert.Null(bench.MessageField);
    }

    [Theory]
    [InlineData("null", "says nothing")]
    [InlineData("~", "says nothing")]
    [InlineData(300, "300 characters")]
    public async Task An_item_that_cannot_be_is_told_beside_its_list(object count, string told)
    {
        using var bench = await OpenedAsync();
        var value = count as string ?? new string('7', (int)count);
        await bench.AddAsync("uses.livestock", [("animal", "goat"), ("count", value)]);
        Assert.Contains(told, bench.Message, StringComparison.Ordinal);
        Assert.Equal("uses.livestock", bench.MessageField);
        Assert.Equal(3, bench.Brief!.ItemCount("uses.livestock"));
    }

    [Fact]
    public async Task A_text_that_is_not_yaml_is_told_with_its_place()
    {
        station = await store.AddAsync("Broken", "a: [1\nb: 2\n", stop: Stop);
        using var bench = await OpenedAsync();
        Assert.Null(bench.Brief);
        Assert.NotEmpty(bench.Errors);
        await bench.SetAsync("a", "1");
        Assert.Equal("a: [1\nb: 2\n", (await store.ReadAsync(station.Id, Stop))!.Text);
    }

    [Fact]
    public async Task Edits_quicker_than_the_store_are_all_kept_in_their_order()
    {
        using var bench = await OpenedAsync();
        await Task.WhenAll(Enumerable.Range(20, 8).Select(count => bench.SetAsync("uses.people.count", $"{count}")));
        Assert.Null(bench.Message);
        Assert.Equal("27", bench.Brief!.Value("uses.people.count"));
        Assert.Equal(8, (await store.ReadAsync(station.Id, Stop))!.EditNumber);
    }
}
