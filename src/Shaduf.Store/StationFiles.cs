using Microsoft.EntityFrameworkCore;

namespace Shaduf.Store;

/// <summary>The files that lie beside a station's brief: cards, a price book, a weather record, logs. They change by edits of the station.</summary>
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
}
