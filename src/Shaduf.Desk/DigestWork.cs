using System.Collections.Concurrent;
using Shaduf.Pack;
using Shaduf.Station;
using Shaduf.Store;
using StationEntry = Shaduf.Store.StationEntry;

namespace Shaduf.Desk;

/// <summary>Designs the stations of the list that were not designed since their last edit, one at a time, behind the pages.</summary>
/// <param name="store">Where the stations are kept.</param>
/// <param name="digests">Where their figures go.</param>
public sealed class DigestWork(StationStore store, Digests digests) : IAsyncDisposable
{
    private readonly CancellationTokenSource stop = new();
    private readonly Lock one = new();
    private Task last = Task.CompletedTask;
    private readonly ConcurrentDictionary<(Guid Id, int EditNumber), string> asked = new();

    /// <summary>Told when a station has its figures, or cannot have them.</summary>
    public event EventHandler? Changed;

    /// <summary>Why a station has no figures; null when it has them or waits for them.</summary>
    public string? TroubleOf(StationEntry entry) =>
        asked.TryGetValue((entry.Id, entry.EditNumber), out var why) && why.Length > 0 ? why : null;

    /// <summary>Asks for the figures of a station; once for each edit.</summary>
    public void Ask(StationEntry entry)
    {
        if (digests.Of(entry.Id, entry.EditNumber) is null && asked.TryAdd((entry.Id, entry.EditNumber), ""))
        {
            lock (one)
            {
                last = NextAsync(last, entry);
            }
        }
    }

    /// <summary>Ends the work, and is over when nothing reads the store any more.</summary>
    public async ValueTask DisposeAsync()
    {
        await stop.CancelAsync();
        await last;
        stop.Dispose();
    }

    private async Task NextAsync(Task before, StationEntry entry)
    {
        await before;
        await Task.Run(() => DesignAsync(entry));
    }

    private async Task DesignAsync(StationEntry entry)
    {
        using var beside = new BenchFolder();
        try
        {
            if (
                stop.IsCancellationRequested
                || await store.ReadAsync(entry.Id) is not { } station
                || digests.Of(station.Id, station.EditNumber) is not null
            )
            {
                return;
            }

            await beside.LayAsync(await store.Files.ListAsync(entry.Id));
            var design = DesignRun.Run(
                StationFile.Of(station.Text, beside.Path),
                _ => stop.Token.ThrowIfCancellationRequested()
            );
            digests.Keep(station, PackWriter.Legible(design));
        }
        catch (Exception trouble)
            when (trouble is BadInputException or StoreException or ArgumentException or InvalidOperationException)
        {
            asked[(entry.Id, entry.EditNumber)] = trouble.Message;
        }
        catch (OperationCanceledException)
        {
            return;
        }

        Changed?.Invoke(this, EventArgs.Empty);
    }
}
