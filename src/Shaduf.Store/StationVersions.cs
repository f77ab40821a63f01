using Microsoft.EntityFrameworkCore;

namespace Shaduf.Store;

/// <summary>The versions of a station that were saved by name; each stays and can be brought back.</summary>
public sealed class StationVersions
{
    private readonly StoreDoor door;
    private readonly StationStore store;

    internal StationVersions(StoreDoor door, StationStore store) => (this.door, this.store) = (door, store);

    /// <summary>Saves the station as a version that stays.</summary>
    /// <param name="id">Which.</param>
    /// <param name="note">What to remember about it.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>The version.</returns>
    /// <exception cref="StoreException">There is no such station, or the store cannot be written.</exception>
    public async Task<SavedVersion> SaveAsync(Guid id, string note, CancellationToken stop = default)
    {
        while (true)
        {
            if (await door.Run(tables => TriedAsync(tables, id, note, stop)) is { } saved)
            {
                return saved;
            }
        }
    }

    /// <summary>The saved versions of a station, newest first.</summary>
    /// <param name="id">Which.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>One entry for each.</returns>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    public Task<IReadOnlyList<SavedVersion>> ListAsync(Guid id, CancellationToken stop = default) =>
        door.Run<IReadOnlyList<SavedVersion>>(async tables =>
            [
                .. (
                    await tables
                        .Versions.AsNoTracking()
                        .Where(row => row.StationId == id)
                        .OrderByDescending(row => row.Number)
                        .ToListAsync(stop)
                ).Select(Told),
            ]
        );

    /// <summary>Brings a saved version back with the files that lay beside it, as one more edit: what came after it stays in the journal.</summary>
    /// <param name="seen">The station as the editor saw it.</param>
    /// <param name="number">Number of the version.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>As for an edit.</returns>
    /// <exception cref="StoreException">There is no such version, or the store cannot be written.</exception>
    public async Task<EditOutcome> RestoreAsync(StationText seen, int number, CancellationToken stop = default)
    {
        var version =
            await door.Run(tables =>
                tables
                    .Versions.AsNoTracking()
                    .SingleOrDefaultAsync(row => row.StationId == seen.Id && row.Number == number, stop)
            ) ?? throw new StoreException($"This station has no version {number}.");
        return await store.ChangedAsync(
            seen,
            async (tables, row) =>
            {
                var files = await Journal.BackAsync(tables, row.Id, version.EditNumber, row.EditNumber);
                var line = ($"version {number} brought back", (int?)null);
                await Journal.WriteAsync(tables, row, version.Text, line, files, door.Now());
            },
            stop
        );
    }

    // Null when another window took the number first.
    private async Task<SavedVersion?> TriedAsync(StoreContext tables, Guid id, string note, CancellationToken stop)
    {
        var row = await StoreDoor.FoundAsync(tables, id, stop);
        var last = await tables.Versions.Where(each => each.StationId == id).MaxAsync(each => (int?)each.Number, stop);
        var version = new VersionRow
        {
            StationId = id,
            Number = (last ?? 0) + 1,
            EditNumber = row.EditNumber,
            Note = note,
            Text = row.Text,
            AtTicks = door.Now(),
        };
        tables.Add(version);
        try
        {
            await tables.SaveChangesAsync(stop);
            return Told(version);
        }
        catch (DbUpdateException trouble) when (StoreTrouble.IsTaken(trouble))
        {
            return null;
        }
    }

    private static SavedVersion Told(VersionRow row) =>
        new(row.Number, row.Note, row.EditNumber, StoreDoor.Time(row.AtTicks));
}
