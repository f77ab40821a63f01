using Microsoft.EntityFrameworkCore;

namespace Shaduf.Store;

/// <summary>The files that lie beside a station's brief: cards, a price book, a weather record, logs.</summary>
public sealed class StationFiles
{
    private readonly StoreDoor door;

    internal StationFiles(StoreDoor door) => this.door = door;

    /// <summary>The files beside a station's brief.</summary>
    /// <param name="id">Which station.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>Each with its bytes, by name.</returns>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    public Task<IReadOnlyList<StationAttachment>> ListAsync(Guid id, CancellationToken stop = default) =>
        door.Run<IReadOnlyList<StationAttachment>>(async tables =>
            [
                .. (
                    await tables
                        .Files.AsNoTracking()
                        .Where(row => row.StationId == id)
                        .OrderBy(row => row.Name)
                        .ToListAsync(stop)
                ).Select(row => new StationAttachment(row.Name, row.Bytes)),
            ]
        );

    /// <summary>Puts a file beside a station's brief, in place of one of the same name.</summary>
    /// <param name="id">Which station.</param>
    /// <param name="file">The file.</param>
    /// <param name="stop">Ends the wait.</param>
    /// <returns>When it is done.</returns>
    /// <exception cref="StoreException">There is no such station, or the store cannot be written.</exception>
    public Task PutAsync(Guid id, StationAttachment file, CancellationToken stop = default) =>
        door.Run(async tables =>
        {
            await StoreDoor.FoundAsync(tables, id, stop);
            if (
                await tables.Files.SingleOrDefaultAsync(row => row.StationId == id && row.Name == file.Name, stop) is
                { } row
            )
            {
                (row.Bytes, row.AtTicks) = (file.Bytes, door.Now());
            }
            else
            {
                tables.Add(file.Row(id, door.Now()));
            }

            await tables.SaveChangesAsync(stop);
            return true;
        });
}
