using Microsoft.EntityFrameworkCore;

namespace Shaduf.Store;

/// <summary>
/// Keeps stations: each edit is written to the journal, and the journal to the disk, before it is confirmed. Nothing is
/// ever overwritten silently: who edits names the last edit that he saw, and is told when it is no longer the last.
/// Safe to use from several threads.
/// </summary>
public sealed class StationStore
{
    /// <summary>Longest brief that is kept [characters]: what the reader of briefs accepts.</summary>
    public const int LongestText = 256 * 1024;

    private const int LongestName = 80;

    private readonly StoreDoor door;

    private StationStore(StoreDoor door)
    {
        this.door = door;
        Versions = new(door, this);
        Files = new(door);
    }

    /// <summary>Saved versions.</summary>
    public StationVersions Versions { get; }

    /// <summary>Files beside the briefs.</summary>
    public StationFiles Files { get; }

    /// <summary>Opens the store; a new one is made, an older one is brought up to date after a backup.</summary>
    /// <param name="setting">Where it is.</param>
    /// <param name="clock">The time written beside edits.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>The store.</returns>
    /// <exception cref="StoreException">It cannot be opened or written, or a newer version of the program wrote it.</exception>
    public static async Task<StationStore> OpenAsync(
        StoreSetting setting,
        TimeProvider clock,
        CancellationToken stop = default
    )
    {
        var opened = new StoreDoor(setting, clock);
        await opened.OpenAsync(stop);
        return new(opened);
    }

    /// <summary>The stations, last edited first.</summary>
    /// <param name="archived">Those that are put away, or those that are not.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>One entry for each.</returns>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    public Task<IReadOnlyList<StationEntry>> ListAsync(bool archived, CancellationToken stop = default) =>
        door.Run<IReadOnlyList<StationEntry>>(async tables =>
            [
                .. (
                    await tables
                        .Stations.AsNoTracking()
                        .Where(row => row.IsArchived == archived)
                        .OrderByDescending(row => row.ChangedTicks)
                        .ThenBy(row => row.Name)
                        .Select(row => new
                        {
                            row.Id,
                            row.Name,
                            row.IsArchived,
                            row.EditNumber,
                            row.MadeTicks,
                            row.ChangedTicks,
                        })
                        .ToListAsync(stop)
                ).Select(row => new StationEntry(
                    row.Id,
                    row.Name,
                    row.IsArchived,
                    row.EditNumber,
                    StoreDoor.Time(row.MadeTicks),
                    StoreDoor.Time(row.ChangedTicks)
                )),
            ]
        );

    /// <summary>Adds a station.</summary>
    /// <param name="name">Its name in the list, 1 to 80 characters.</param>
    /// <param name="text">Its brief.</param>
    /// <param name="files">Files beside it: their plain names and bytes.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>The station.</returns>
    /// <exception cref="ArgumentException">The name is empty or too long, or the text is too long.</exception>
    /// <exception cref="StoreException">The store cannot be written.</exception>
    public Task<StationText> AddAsync(
        string name,
        string text,
        IReadOnlyList<StationAttachment>? files = null,
        CancellationToken stop = default
    )
    {
        Require(name, text);
        return door.Run(async tables =>
        {
            var now = door.Now();
            var row = new StationRow
            {
                Id = Guid.CreateVersion7(StoreDoor.Time(now)),
                Name = name.Trim(),
                Text = text,
                MadeTicks = now,
                ChangedTicks = now,
            };
            tables.Add(row);
            foreach (var file in files ?? [])
            {
                tables.Add(file.Row(row.Id, now));
            }

            await tables.SaveChangesAsync(stop);
            return Told(row);
        });
    }

    /// <summary>A station as it is kept now.</summary>
    /// <param name="id">Which.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>The station; null when there is none of that number.</returns>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    public Task<StationText?> ReadAsync(Guid id, CancellationToken stop = default) =>
        door.Run(async tables =>
            await tables.Stations.AsNoTracking().SingleOrDefaultAsync(row => row.Id == id, stop) is { } row
                ? Told(row)
                : null
        );

    /// <summary>Changes a station's brief and the files beside it. When the task ends well the edit is on the disk.</summary>
    /// <param name="seen">The station as the editor saw it.</param>
    /// <param name="text">The brief as it shall be.</param>
    /// <param name="what">What the edit does, in a few words, for the journal.</param>
    /// <param name="files">Files that the edit changes; left out for none.</param>
    /// <param name="stop">Ends the wait; a cancelled edit may or may not be kept.</param>
    /// <returns>The station with the edit in it; or, when somebody edited since, theirs, and nothing was changed.</returns>
    /// <exception cref="ArgumentException">The text is too long.</exception>
    /// <exception cref="StoreException">There is no such station, or the store cannot be written.</exception>
    public Task<EditOutcome> EditAsync(
        StationText seen,
        string text,
        string what,
        IReadOnlyList<FileChange>? files = null,
        CancellationToken stop = default
    )
    {
        Require(seen.Name, text);
        return ChangedAsync(
            seen,
            (tables, row) => Journal.WriteAsync(tables, row, text, (what, null), files ?? [], door.Now()),
            stop
        );
    }

    /// <summary>Takes one edit back, text and files, as one more edit.</summary>
    /// <param name="seen">The station as the editor saw it.</param>
    /// <param name="number">Number of the edit: the last one that was not taken back, or one that took another back.</param>
    /// <param name="what">For the journal.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>As for an edit.</returns>
    /// <exception cref="ArgumentException">What that edit wrote no longer stands there.</exception>
    /// <exception cref="StoreException">There is no such station or edit, or the store cannot be written.</exception>
    public Task<EditOutcome> TakeBackAsync(
        StationText seen,
        int number,
        string what,
        CancellationToken stop = default
    ) =>
        ChangedAsync(
            seen,
            async (tables, row) =>
            {
                var edit =
                    await tables
                        .Edits.AsNoTracking()
                        .SingleOrDefaultAsync(each => each.StationId == row.Id && each.Number == number, stop)
                    ?? throw new StoreException($"This station has no edit {number}.");
                var text = new TextEdit(edit.Start, edit.Inserted, edit.Removed).Apply(row.Text);
                var files = await Journal.BackAsync(tables, row.Id, number - 1, number);
                await Journal.WriteAsync(tables, row, text, (what, number), files, door.Now());
            },
            stop
        );

    /// <summary>The journal of a station, oldest first.</summary>
    /// <param name="id">Which.</param>
    /// <param name="after">Edits up to this number are left out; 0 for all.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>One line for each edit.</returns>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    public Task<IReadOnlyList<JournalLine>> JournalAsync(Guid id, int after = 0, CancellationToken stop = default) =>
        door.Run(tables => Journal.ReadAsync(tables, id, after, stop));

    /// <summary>Copies a station with its files, without its journal and versions.</summary>
    /// <param name="id">Which.</param>
    /// <param name="name">Name of the copy, 1 to 80 characters.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="StoreException">There is no such station, or the store cannot be written.</exception>
    public async Task<StationText> CopyAsync(Guid id, string name, CancellationToken stop = default)
    {
        var from = await ReadAsync(id, stop) ?? throw StoreDoor.Missing();
        return await AddAsync(name, from.Text, await Files.ListAsync(id, stop), stop);
    }

    /// <summary>Puts a station away, or takes it out again; nothing of it is lost.</summary>
    /// <param name="id">Which.</param>
    /// <param name="archived">Away, or out.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>When it is done.</returns>
    /// <exception cref="StoreException">There is no such station, or the store cannot be written.</exception>
    public Task ArchiveAsync(Guid id, bool archived, CancellationToken stop = default) =>
        door.Run(async tables =>
        {
            var row = await StoreDoor.FoundAsync(tables, id, stop);
            row.IsArchived = archived;
            await tables.SaveChangesAsync(stop);
            return true;
        });

    /// <summary>Changes a station's name in the list.</summary>
    /// <param name="id">Which.</param>
    /// <param name="name">The name, 1 to 80 characters.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>When it is done.</returns>
    /// <exception cref="ArgumentException">The name is empty or too long.</exception>
    /// <exception cref="StoreException">There is no such station, or the store cannot be written.</exception>
    public Task RenameAsync(Guid id, string name, CancellationToken stop = default)
    {
        Require(name, "");
        return door.Run(async tables =>
        {
            var row = await StoreDoor.FoundAsync(tables, id, stop);
            row.Name = name.Trim();
            await tables.SaveChangesAsync(stop);
            return true;
        });
    }

    internal Task<EditOutcome> ChangedAsync(
        StationText seen,
        Func<StoreContext, StationRow, Task> change,
        CancellationToken stop
    ) =>
        door.Run(async tables =>
        {
            var row = await StoreDoor.FoundAsync(tables, seen.Id, stop);
            if (row.EditNumber != seen.EditNumber)
            {
                return new(false, Told(row));
            }

            await change(tables, row);
            return await KeptAsync(tables, row, stop);
        });

    // Whoever wrote between our reading and our writing is seen by the database itself: the edit's number is taken then.
    private static async Task<EditOutcome> KeptAsync(StoreContext tables, StationRow row, CancellationToken stop)
    {
        try
        {
            await tables.SaveChangesAsync(stop);
            return new(true, Told(row));
        }
        catch (DbUpdateException trouble)
            when (trouble is DbUpdateConcurrencyException || StoreTrouble.IsTaken(trouble))
        {
            tables.ChangeTracker.Clear();
            return new(false, Told(await StoreDoor.FoundAsync(tables, row.Id, stop)));
        }
    }

    private static StationText Told(StationRow row) => new(row.Id, row.Name, row.Text, row.EditNumber);

    private static void Require(string name, string text)
    {
        if (string.IsNullOrWhiteSpace(name) || name.Trim().Length > LongestName || name.Any(char.IsControl))
        {
            throw new ArgumentException($"A name has 1 to {LongestName} characters.", nameof(name));
        }

        if (text.Length > LongestText || text.Contains('\0'))
        {
            throw new ArgumentException(
                $"A brief is text of at most {LongestText / 1024} thousand characters.",
                nameof(text)
            );
        }
    }
}
