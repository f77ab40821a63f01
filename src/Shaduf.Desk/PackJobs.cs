using System.Collections.Concurrent;
using Shaduf.Pack;
using Shaduf.Station;
using Shaduf.Store;
using Shaduf.Working;

namespace Shaduf.Desk;

/// <summary>A pack that is being made, or was made, for a station as it stood.</summary>
/// <param name="station">The station as it stood when it was asked for.</param>
public sealed class PackJob(StationText station) : IDisposable
{
    private readonly CancellationTokenSource stop = new();

    /// <summary>Told when it has got further.</summary>
    public event EventHandler? Changed;

    /// <summary>Which edit of the station it is of.</summary>
    public int EditNumber { get; } = station.EditNumber;

    /// <summary>What is being made; empty when it is over.</summary>
    public string Step { get; private set; } = "reading";

    /// <summary>Files that are made.</summary>
    public int MadeCount { get; private set; }

    /// <summary>Why it was not made; null while it is made and when it is there.</summary>
    public string? Trouble { get; private set; }

    /// <summary>The files when all of them are there; empty before.</summary>
    public IReadOnlyList<(string Name, byte[] Bytes)> Files { get; private set; } = [];

    /// <summary>Whether it is over, well or not.</summary>
    public bool IsOver => Step.Length == 0;

    /// <summary>Ends it.</summary>
    public void Stop() => stop.Cancel();

    public void Dispose() => stop.Dispose();

    /// <summary>The making of it.</summary>
    internal Task Work { get; private set; } = Task.CompletedTask;

    internal void Begin(StationStore store) => Work = Task.Run(() => RunAsync(store));

    private async Task RunAsync(StationStore store)
    {
        using var folder = new BenchFolder();
        try
        {
            await folder.LayAsync(await store.Files.ListAsync(station.Id, stop.Token));
            var design = PackWriter.Legible(DesignRun.Run(StationFile.Of(station.Text, folder.Path), At));
            var stamp = Stamp.Of(design, Downloads.Version, DateOnly.FromDateTime(DateTime.Today));
            Files = await PackWriter.FilesAsync(design, stamp, Made);
            Over(null);
        }
        catch (OperationCanceledException)
        {
            Over("stopped");
        }
        catch (BadInputException bad)
        {
            Over(bad.Message);
        }
        catch (Exception trouble) when (trouble is StoreException or IOException or InvalidOperationException)
        {
            Over(trouble.Message);
        }
    }

    private void At(string step)
    {
        stop.Token.ThrowIfCancellationRequested();
        Step = step;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    // Files are made side by side.
    private void Made(string name)
    {
        stop.Token.ThrowIfCancellationRequested();
        lock (stop)
        {
            (Step, MadeCount) = (name, MadeCount + 1);
        }

        Changed?.Invoke(this, EventArgs.Empty);
    }

    private void Over(string? trouble)
    {
        (Trouble, Step) = (trouble, "");
        Changed?.Invoke(this, EventArgs.Empty);
    }
}

/// <summary>The last pack of each station, made in the background.</summary>
/// <param name="store">Where the stations are kept.</param>
public sealed class PackJobs(StationStore store) : IAsyncDisposable
{
    // A pack is some megabytes.
    private const int MostKept = 12;

    private readonly ConcurrentDictionary<Guid, PackJob> jobs = new();

    /// <summary>The pack of a station; null when none was asked for.</summary>
    public PackJob? Of(Guid id) => jobs.GetValueOrDefault(id);

    /// <summary>Makes the pack of a station as it stands; one that is being made is ended.</summary>
    public PackJob Start(StationText station)
    {
        var job = new PackJob(station);
        if (jobs.TryRemove(station.Id, out var before))
        {
            before.Stop();
        }

        foreach (var (id, old) in jobs.Where(each => each.Value.IsOver).Take(Math.Max(0, jobs.Count - MostKept + 1)))
        {
            jobs.TryRemove(id, out _);
            old.Dispose();
        }

        jobs[station.Id] = job;
        job.Begin(store);
        return job;
    }

    /// <summary>Ends all of them, and is over when nothing reads the store any more.</summary>
    public async ValueTask DisposeAsync()
    {
        foreach (var job in jobs.Values)
        {
            job.Stop();
            await job.Work;
        }
    }
}
