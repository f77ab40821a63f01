using CsCheck;

namespace Shaduf.Store.Tests;

/// <summary>What a store must do, whichever database keeps it.</summary>
public abstract class StoreTests
{
    private const string Brief = "# A first visit.\nstation:\n  name: Spring farm # as told\n";

    /// <summary>An empty store and the way to open it again.</summary>
    protected abstract StoreSetting Fresh();

    private async Task<StationStore> OpenAsync() => await Opened(Fresh());

    private static async Task<StationStore> Opened(StoreSetting setting) =>
        await StationStore.OpenAsync(setting, TimeProvider.System, TestContext.Current.CancellationToken);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_station_is_read_back_to_the_letter_after_the_store_was_opened_again()
    {
        var setting = Fresh();
        var added = await (await Opened(setting)).AddAsync("Spring farm", Brief, stop: Stop);
        Assert.Equal(added, await (await Opened(setting)).ReadAsync(added.Id, Stop));
        Assert.Equal(Brief, added.Text);
    }

    [Fact]
    public async Task A_station_that_is_not_there_is_null() =>
        Assert.Null(await (await OpenAsync()).ReadAsync(Guid.NewGuid(), Stop));

    [Fact]
    public async Task An_edit_stands_in_the_journal_and_in_the_text()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("Spring farm", Brief, stop: Stop);
        var outcome = await store.EditAsync(seen, Brief.Replace("Spring", "Autumn"), "station.name", stop: Stop);
        Assert.True(outcome.IsKept);
        Assert.Equal(1, outcome.Now.EditNumber);
        Assert.Equal(outcome.Now, await store.ReadAsync(seen.Id, Stop));
        var line = Assert.Single(await store.JournalAsync(seen.Id, stop: Stop));
        Assert.Equal((1, "station.name"), (line.Number, line.What));
        Assert.Equal(outcome.Now.Text, line.Edit.Apply(Brief));
    }

    [Fact]
    public async Task An_edit_that_changes_nothing_leaves_no_line()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("Spring farm", Brief, stop: Stop);
        Assert.Equal(0, (await store.EditAsync(seen, Brief, "nothing", stop: Stop)).Now.EditNumber);
        Assert.Empty(await store.JournalAsync(seen.Id, stop: Stop));
    }

    [Fact]
    public async Task Of_two_windows_on_one_station_the_second_is_told_and_overwrites_nothing()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("Spring farm", Brief, stop: Stop);
        var first = await store.EditAsync(seen, Brief + "# one\n", "first window", stop: Stop);
        var second = await store.EditAsync(seen, Brief + "# two\n", "second window", stop: Stop);
        Assert.False(second.IsKept);
        Assert.Equal(first.Now, second.Now);
        Assert.Equal(first.Now, await store.ReadAsync(seen.Id, Stop));
    }

    [Fact]
    public async Task Of_many_windows_that_edit_at_once_exactly_one_is_kept_each_time()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("Spring farm", Brief, stop: Stop);
        for (var round = 0; round < 5; round++)
        {
            var now = seen;
            var outcomes = await Task.WhenAll(
                Enumerable
                    .Range(0, 8)
                    .Select(window =>
                        Task.Run(
                            () => store.EditAsync(now, $"{Brief}# {round} {window}\n", $"window {window}", stop: Stop),
                            Stop
                        )
                    )
            );
            var kept = Assert.Single(outcomes, outcome => outcome.IsKept).Now;
            Assert.All(outcomes, outcome => Assert.Equal(kept, outcome.Now));
            seen = kept;
        }

        Assert.Equal(5, (await store.JournalAsync(seen.Id, stop: Stop)).Count);
    }

    [Fact]
    public async Task The_journal_leads_from_the_first_text_to_the_last_and_back()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("Spring farm", Brief, stop: Stop);
        var texts = Gen.Char["ab #:\nä水"].Array[0, 40].Array[30].Single();
        foreach (var text in texts)
        {
            seen = (await store.EditAsync(seen, new(text), "any", stop: Stop)).Now;
        }

        var journal = await store.JournalAsync(seen.Id, stop: Stop);
        Assert.Equal(seen.Text, journal.Aggregate(Brief, (text, line) => line.Edit.Apply(text)));
        Assert.Equal(Brief, journal.Reverse().Aggregate(seen.Text, (text, line) => line.Edit.Inverse.Apply(text)));
        Assert.Equal(journal.Count, seen.EditNumber);
        Assert.Equal(journal.Skip(10), await store.JournalAsync(seen.Id, 10, Stop));
    }

    [Fact]
    public async Task Every_saved_version_can_be_brought_back_and_what_came_after_stays_in_the_journal()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("Spring farm", Brief, stop: Stop);
        var first = await store.Versions.SaveAsync(seen.Id, "as surveyed", Stop);
        seen = (await store.EditAsync(seen, "other: 1\n", "other", stop: Stop)).Now;
        var second = await store.Versions.SaveAsync(seen.Id, "as offered", Stop);
        Assert.Equal([second, first], await store.Versions.ListAsync(seen.Id, Stop));
        Assert.Equal((1, "as surveyed", 0), (first.Number, first.Note, first.EditNumber));

        var back = await store.Versions.RestoreAsync(seen, 1, Stop);
        Assert.Equal((true, Brief, 2), (back.IsKept, back.Now.Text, back.Now.EditNumber));
        Assert.Equal("other: 1\n", (await store.Versions.RestoreAsync(back.Now, 2, Stop)).Now.Text);
        Assert.Equal(3, (await store.JournalAsync(seen.Id, stop: Stop)).Count);
    }

    [Fact]
    public async Task Versions_saved_at_once_get_numbers_of_their_own()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("Spring farm", Brief, stop: Stop);
        var saved = await Task.WhenAll(
            Enumerable.Range(0, 6).Select(i => Task.Run(() => store.Versions.SaveAsync(seen.Id, $"{i}", Stop), Stop))
        );
        Assert.Equal([1, 2, 3, 4, 5, 6], saved.Select(version => version.Number).Order());
    }

    [Fact]
    public async Task A_version_that_was_not_saved_is_told()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("Spring farm", Brief, stop: Stop);
        var told = await Assert.ThrowsAsync<StoreException>(() => store.Versions.RestoreAsync(seen, 4, Stop));
        Assert.Contains("no version 4", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stations_are_listed_last_edited_first_and_those_put_away_apart()
    {
        var store = await OpenAsync();
        var a = await store.AddAsync("A", Brief, stop: Stop);
        var b = await store.AddAsync("B", Brief, stop: Stop);
        await store.EditAsync(a, Brief + "# later\n", "remark", stop: Stop);
        Assert.Equal(["A", "B"], (await store.ListAsync(false, Stop)).Select(entry => entry.Name));
        await store.ArchiveAsync(a.Id, true, Stop);
        Assert.Equal(b.Id, Assert.Single(await store.ListAsync(false, Stop)).Id);
        Assert.Equal(
            (a.Id, true, 1),
            Assert.Single(await store.ListAsync(true, Stop)) is var put
                ? (put.Id, put.IsArchived, put.EditNumber)
                : default
        );
        await store.ArchiveAsync(a.Id, false, Stop);
        Assert.Equal(2, (await store.ListAsync(false, Stop)).Count);
    }

    [Fact]
    public async Task A_copy_has_the_text_and_the_files_and_goes_its_own_way()
    {
        var store = await OpenAsync();
        var from = await store.AddAsync("A", Brief, [new("weather.csv", [1, 2, 3])], Stop);
        var copy = await store.CopyAsync(from.Id, "A, with a larger tank", Stop);
        await store.EditAsync(copy, "changed: 1\n", "change", stop: Stop);
        Assert.Equal(from, await store.ReadAsync(from.Id, Stop));
        Assert.Equal([1, 2, 3], Assert.Single(await store.Files.ListAsync(copy.Id, Stop)).Bytes);
    }

    [Fact]
    public async Task A_file_put_again_takes_the_place_of_the_first()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("A", Brief, stop: Stop);
        foreach (var bytes in new byte[][] { [1], [2, 3], [2, 3] })
        {
            seen = (await store.EditAsync(seen, Brief, "weather", [Weather(bytes)], Stop)).Now;
        }

        Assert.Equal(2, seen.EditNumber);
        Assert.Equal([2, 3], Assert.Single(await store.Files.ListAsync(seen.Id, Stop)).Bytes);
    }

    [Fact]
    public async Task An_edit_of_text_and_files_is_taken_back_and_done_again_as_one()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("A", Brief, [new("weather.csv", [1])], Stop);
        var changes = new[] { Weather([2]), FileChange.Put(new("card.yaml", [7])) };
        var edited = (await store.EditAsync(seen, Brief + "# more\n", "rate", changes, Stop)).Now;
        Assert.Equal(["card.yaml 7", "weather.csv 2"], await FilesAsync(store, seen.Id));
        var back = (await store.TakeBackAsync(edited, 1, "undo", Stop)).Now;
        Assert.Equal((Brief, 2), (back.Text, back.EditNumber));
        Assert.Equal(["weather.csv 1"], await FilesAsync(store, seen.Id));
        var again = (await store.TakeBackAsync(back, 2, "redo", Stop)).Now;
        Assert.Equal((edited.Text, 3), (again.Text, again.EditNumber));
        Assert.Equal(["card.yaml 7", "weather.csv 2"], await FilesAsync(store, seen.Id));
        Assert.Equal([null, 1, 2], (await store.JournalAsync(seen.Id, stop: Stop)).Select(line => line.TakesBack));
    }

    [Fact]
    public async Task A_version_is_brought_back_with_the_files_of_its_day()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("A", Brief, [new("weather.csv", [1])], Stop);
        await store.Versions.SaveAsync(seen.Id, "first", Stop);
        seen = (await store.EditAsync(seen, Brief, "weather", [Weather([2])], Stop)).Now;
        seen = (await store.EditAsync(seen, Brief, "card", [FileChange.Put(new("card.yaml", [7]))], Stop)).Now;
        seen = (await store.EditAsync(seen, Brief, "weather", [new("weather.csv", null)], Stop)).Now;
        await store.Versions.SaveAsync(seen.Id, "second", Stop);
        Assert.Equal(["card.yaml 7"], await FilesAsync(store, seen.Id));
        seen = (await store.Versions.RestoreAsync(seen, 1, Stop)).Now;
        Assert.Equal(["weather.csv 1"], await FilesAsync(store, seen.Id));
        await store.Versions.RestoreAsync(seen, 2, Stop);
        Assert.Equal(["card.yaml 7"], await FilesAsync(store, seen.Id));
    }

    [Fact]
    public async Task A_file_put_by_a_second_window_that_saw_an_older_station_is_not_kept()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("A", Brief, stop: Stop);
        await store.EditAsync(seen, Brief, "first window", [Weather([1])], Stop);
        Assert.False((await store.EditAsync(seen, Brief, "second window", [Weather([2])], Stop)).IsKept);
        Assert.Equal(["weather.csv 1"], await FilesAsync(store, seen.Id));
    }

    private static FileChange Weather(byte[] bytes) => FileChange.Put(new("weather.csv", bytes));

    private static async Task<IEnumerable<string>> FilesAsync(StationStore store, Guid id) =>
        (await store.Files.ListAsync(id, Stop)).Select(file => $"{file.Name} {string.Join(' ', file.Bytes)}");

    [Fact]
    public async Task A_name_is_changed_and_one_without_letters_or_too_long_is_refused()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("A", Brief, stop: Stop);
        await store.RenameAsync(seen.Id, "  <b>B & C</b> ", Stop);
        Assert.Equal("<b>B & C</b>", (await store.ReadAsync(seen.Id, Stop))!.Name);
        foreach (var name in new[] { "", "  ", new string('a', 81), "a\0b" })
        {
            await Assert.ThrowsAsync<ArgumentException>(() => store.RenameAsync(seen.Id, name, Stop));
            await Assert.ThrowsAsync<ArgumentException>(() => store.AddAsync(name, Brief, stop: Stop));
        }
    }

    [Fact]
    public async Task A_text_that_no_reader_takes_is_refused_and_the_last_one_stays()
    {
        var store = await OpenAsync();
        var seen = await store.AddAsync("A", Brief, stop: Stop);
        foreach (var text in new[] { new string('a', StationStore.LongestText + 1), "a\0b" })
        {
            await Assert.ThrowsAsync<ArgumentException>(() => store.EditAsync(seen, text, "paste", stop: Stop));
        }

        Assert.Equal(seen, await store.ReadAsync(seen.Id, Stop));
    }

    [Fact]
    public async Task A_station_that_is_gone_is_told()
    {
        var store = await OpenAsync();
        StationText none = new(Guid.NewGuid(), "none", "", 0);
        await Assert.ThrowsAsync<StoreException>(() => store.EditAsync(none, "a", "b", stop: Stop));
        await Assert.ThrowsAsync<StoreException>(() => store.ArchiveAsync(none.Id, true, Stop));
        await Assert.ThrowsAsync<StoreException>(() => store.CopyAsync(none.Id, "copy", Stop));
        await Assert.ThrowsAsync<StoreException>(() => store.Versions.SaveAsync(none.Id, "note", Stop));
        await Assert.ThrowsAsync<StoreException>(() => store.TakeBackAsync(none, 1, "undo", Stop));
    }
}
