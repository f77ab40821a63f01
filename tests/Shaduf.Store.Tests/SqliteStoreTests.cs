using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Shaduf.Store.Tests;

public sealed class SqliteStoreTests : StoreTests, IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("shaduf-store-").FullName;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    protected override StoreSetting Fresh() =>
        StoreSetting.Of(Path.Combine(folder, $"{Guid.NewGuid():N}", "stations.db"));

    [Fact]
    public void Left_out_the_store_lies_in_the_users_data_folder() =>
        Assert.EndsWith(Path.Combine("shaduf", "stations.db"), StoreSetting.Of(" ").File, StringComparison.Ordinal);

    [Fact]
    public void A_setting_that_is_no_connection_is_told() =>
        Assert.Contains(
            "SHADUF_STORE",
            Assert.Throws<StoreException>(() => StoreSetting.Of("Hst=somewhere")).Message,
            StringComparison.Ordinal
        );

    [Fact]
    public async Task Edits_are_written_ahead_and_synced_before_they_are_confirmed()
    {
        var setting = Fresh();
        await StationStore.OpenAsync(setting, TimeProvider.System, Stop);
        await using var tables = setting.Open();
        Assert.Equal("wal", await Pragma(tables, "journal_mode"));
        Assert.Equal("2", await Pragma(tables, "synchronous"));
    }

    [Fact]
    public async Task Opening_makes_a_copy_that_can_be_opened_and_keeps_the_last_twenty()
    {
        var setting = Fresh();
        var store = await StationStore.OpenAsync(setting, TimeProvider.System, Stop);
        var station = await store.AddAsync("A", "a: 1\n", stop: Stop);
        for (var i = 0; i < 22; i++)
        {
            await StationStore.OpenAsync(setting, TimeProvider.System, Stop);
        }

        var copies = Directory.GetFiles(Path.Combine(Path.GetDirectoryName(setting.File)!, "backups"));
        Assert.Equal(20, copies.Length);
        var copy = await StationStore.OpenAsync(StoreSetting.Of(copies[0]), TimeProvider.System, Stop);
        Assert.Equal(station, await copy.ReadAsync(station.Id, Stop));
    }

    [Fact]
    public async Task A_store_of_a_newer_version_is_refused_and_left_as_it_is()
    {
        var setting = Fresh();
        await StationStore.OpenAsync(setting, TimeProvider.System, Stop);
        await using (var tables = setting.Open())
        {
            await tables.Database.ExecuteSqlRawAsync(
                "INSERT INTO \"__EFMigrationsHistory\" VALUES ('29991231000000_Later', '99.0.0')",
                Stop
            );
        }

        var told = await Assert.ThrowsAsync<StoreException>(() =>
            StationStore.OpenAsync(setting, TimeProvider.System, Stop)
        );
        Assert.Contains("newer version", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_no_store_is_told_and_left_as_it_is()
    {
        var setting = Fresh();
        Directory.CreateDirectory(Path.GetDirectoryName(setting.File)!);
        var letter = new string('x', 5000);
        await File.WriteAllTextAsync(setting.File!, letter, Stop);
        var told = await Assert.ThrowsAsync<StoreException>(() =>
            StationStore.OpenAsync(setting, TimeProvider.System, Stop)
        );
        Assert.Contains("backups", told.Message, StringComparison.Ordinal);
        Assert.Equal(letter, await File.ReadAllTextAsync(setting.File!, Stop));
    }

    [Fact]
    public async Task A_folder_in_the_place_of_the_file_is_told()
    {
        var setting = Fresh();
        Directory.CreateDirectory(setting.File!);
        await Assert.ThrowsAsync<StoreException>(() => StationStore.OpenAsync(setting, TimeProvider.System, Stop));
    }

    [Fact]
    public async Task On_a_full_disk_the_edit_is_refused_in_plain_words_and_the_last_text_stays()
    {
        var setting = Fresh();
        var store = await StationStore.OpenAsync(setting, TimeProvider.System, Stop);
        var seen = await store.AddAsync("A", "a: 1\n", stop: Stop);
        await using var tables = setting.Open();

        // A database that may grow no more behaves as one on a full disk: the connection is the pool's, so is its limit.
        await tables.Database.OpenConnectionAsync(Stop);
        await tables.Database.ExecuteSqlRawAsync("PRAGMA max_page_count=1", Stop);
        await tables.Database.CloseConnectionAsync();
        var told = await Assert.ThrowsAsync<StoreException>(() =>
            store.EditAsync(seen, new string('b', 200_000), "paste", stop: Stop)
        );
        Assert.Contains("full", told.Message, StringComparison.Ordinal);
        Assert.Equal(seen, await store.ReadAsync(seen.Id, Stop));
    }

    private static async Task<string> Pragma(StoreContext tables, string name)
    {
        var connection = tables.Database.GetDbConnection();
        await connection.OpenAsync(Stop);
        await using var command = connection.CreateCommand();
        command.CommandText = $"PRAGMA {name}";
        return $"{await command.ExecuteScalarAsync(Stop)}";
    }
}
