using Microsoft.EntityFrameworkCore;

namespace Shaduf.Store;

/// <summary>The way to the tables: each piece of work opens them for itself, and troubles are told in plain words.</summary>
internal sealed class StoreDoor(StoreSetting setting, TimeProvider clock)
{
    /// <summary>The time of a row.</summary>
    public static DateTimeOffset Time(long ticks) => new(ticks, TimeSpan.Zero);

    /// <summary>The time for a row [ticks of UTC].</summary>
    public long Now() => clock.GetUtcNow().UtcTicks;

    /// <summary>A station that must be there.</summary>
    public static async Task<StationRow> FoundAsync(StoreContext tables, Guid id, CancellationToken stop) =>
        await tables.Stations.SingleOrDefaultAsync(row => row.Id == id, stop) ?? throw Missing();

    /// <summary>There is no such station.</summary>
    public static StoreException Missing() => new("There is no such station in this store.");

    /// <summary>Does a piece of work on the tables.</summary>
    /// <exception cref="StoreException">The database cannot do it.</exception>
    public async Task<T> Run<T>(Func<StoreContext, Task<T>> work)
    {
        try
        {
            await using var tables = setting.Open();
            return await work(tables);
        }
        catch (Exception trouble) when (StoreTrouble.Of(trouble) is { } told)
        {
            throw new StoreException(told, trouble);
        }
    }

    /// <summary>Makes or updates the tables; a file is copied first.</summary>
    public async Task OpenAsync(CancellationToken stop)
    {
        await Run(async tables =>
        {
            if (setting.File is { } file)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(file)!);
                await StoreBackup.MakeAsync(file, clock.GetUtcNow(), stop);
            }

            await RefuseNewerAsync(tables, stop);
            await tables.Database.MigrateAsync(stop);
            if (setting.File is not null)
            {
                // Readers go on while one writes; a commit is on the disk before it is confirmed.
                await tables.Database.ExecuteSqlRawAsync("PRAGMA journal_mode=WAL", stop);
            }

            return true;
        });
    }

    private static async Task RefuseNewerAsync(StoreContext tables, CancellationToken stop)
    {
        var known = tables.Database.GetMigrations();
        var applied = await tables.Database.CanConnectAsync(stop)
            ? await tables.Database.GetAppliedMigrationsAsync(stop)
            : [];
        if (applied.Except(known).FirstOrDefault() is { } newer)
        {
            throw new StoreException(
                $"A newer version of the program wrote this store ({newer}). Nothing was changed: update the program."
            );
        }
    }
}
