using Microsoft.EntityFrameworkCore;

namespace Shaduf.Store;

/// <summary>
/// The journal: each edit of a station's text and files with what stood there before, so that any of them can be taken
/// back and any earlier state be had again.
/// </summary>
internal static class Journal
{
    /// <summary>Changes a station and writes the line of it; nothing when nothing would change.</summary>
    /// <param name="tables">The tables; the caller saves them.</param>
    /// <param name="row">The station.</param>
    /// <param name="text">Its brief as it shall be.</param>
    /// <param name="line">What the edit does, and the edit that it takes back.</param>
    /// <param name="files">Files that change.</param>
    /// <param name="nowTicks">The time [ticks of UTC].</param>
    public static async Task WriteAsync(
        StoreContext tables,
        StationRow row,
        string text,
        (string What, int? TakesBack) line,
        IReadOnlyList<FileChange> files,
        long nowTicks
    )
    {
        var moved = await MovedAsync(tables, row.Id, files);
        var edit = TextEdit.Between(row.Text, text);
        if (moved.Count == 0 && edit is { Removed: "", Inserted: "" })
        {
            return;
        }

        (row.Text, row.ChangedTicks) = (text, nowTicks);
        row.EditNumber++;
        tables.Add(
            new EditRow
            {
                StationId = row.Id,
                Number = row.EditNumber,
                Start = edit.Start,
                Removed = edit.Removed,
                Inserted = edit.Inserted,
                What = line.What,
                TakesBack = line.TakesBack,
                AtTicks = nowTicks,
            }
        );
        foreach (var (file, change) in moved)
        {
            tables.Add(
                new FileEditRow
                {
                    StationId = row.Id,
                    Number = row.EditNumber,
                    Name = change.Name,
                    Before = file?.Bytes,
                    After = change.File?.Bytes,
                }
            );
            Lay(tables, row.Id, file, change, nowTicks);
        }
    }

    /// <summary>The lines of a station after an edit, oldest first.</summary>
    public static async Task<IReadOnlyList<JournalLine>> ReadAsync(
        StoreContext tables,
        Guid id,
        int after,
        CancellationToken stop
    ) =>
        [
            .. (
                await tables
                    .Edits.AsNoTracking()
                    .Where(row => row.StationId == id && row.Number > after)
                    .OrderBy(row => row.Number)
                    .ToListAsync(stop)
            ).Select(row => new JournalLine(
                row.Number,
                row.What,
                new(row.Start, row.Removed, row.Inserted),
                row.TakesBack,
                StoreDoor.Time(row.AtTicks)
            )),
        ];

    /// <summary>The changes that bring the files back to what they were after an edit.</summary>
    /// <param name="tables">The tables.</param>
    /// <param name="id">The station.</param>
    /// <param name="number">The edit; those after it are taken back.</param>
    /// <param name="last">The last edit that is taken back.</param>
    public static async Task<IReadOnlyList<FileChange>> BackAsync(StoreContext tables, Guid id, int number, int last) =>
        [
            .. (
                await tables
                    .FileEdits.AsNoTracking()
                    .Where(each => each.StationId == id && each.Number > number && each.Number <= last)
                    .OrderBy(each => each.Number)
                    .ToListAsync()
            )
                .DistinctBy(each => each.Name)
                .Select(each => new FileChange(each.Name, each.Before is { } bytes ? new(each.Name, bytes) : null)),
        ];

    // The files whose bytes really change, as they lie there now.
    private static async Task<List<(FileRow? File, FileChange Change)>> MovedAsync(
        StoreContext tables,
        Guid id,
        IReadOnlyList<FileChange> files
    )
    {
        var moved = new List<(FileRow?, FileChange)>();
        foreach (var change in files)
        {
            var file = await tables.Files.SingleOrDefaultAsync(each =>
                each.StationId == id && each.Name == change.Name
            );
            var isSame =
                file is null || change.File is null
                    ? file is null && change.File is null
                    : file.Bytes.AsSpan().SequenceEqual(change.File.Bytes);
            if (!isSame)
            {
                moved.Add((file, change));
            }
        }

        return moved;
    }

    private static void Lay(StoreContext tables, Guid id, FileRow? file, FileChange change, long nowTicks)
    {
        if (change.File is not { } laid)
        {
            tables.Remove(file!);
        }
        else if (file is null)
        {
            tables.Add(laid.Row(id, nowTicks));
        }
        else
        {
            (file.Bytes, file.AtTicks) = (laid.Bytes, nowTicks);
        }
    }
}
