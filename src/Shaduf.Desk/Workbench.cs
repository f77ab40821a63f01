using Shaduf.Pack;
using Shaduf.Station;
using Shaduf.Store;

namespace Shaduf.Desk;

/// <summary>
/// One open station: its brief as it is edited, kept edit by edit, and the design that follows. A newer edit ends the
/// older run. What is shown is always a whole design: the last one that could be made.
/// </summary>
public sealed class Workbench(StationStore store, Digests digests) : IDisposable
{
    // As long as the reader of briefs takes a value.
    private const int LongestValue = 250;

    private readonly Stack<TextEdit> done = new();
    private readonly Stack<TextEdit> undone = new();
    private readonly string folder = Directory.CreateTempSubdirectory("shaduf-desk-").FullName;
    private CancellationTokenSource running = new();

    /// <summary>Told when anything that is shown has changed.</summary>
    public event EventHandler? Changed;

    /// <summary>The station as it is kept; null until it is opened.</summary>
    public StationText? Station { get; private set; }

    /// <summary>Its brief; null when its text is not YAML.</summary>
    public BriefText? Brief { get; private set; }

    /// <summary>The last design that could be made.</summary>
    public Design? Design { get; private set; }

    /// <summary>Its figures.</summary>
    public Digest? Now { get; private set; }

    /// <summary>The figures before the last edit.</summary>
    public Digest? Before { get; private set; }

    /// <summary>What is wrong with the brief as it stands.</summary>
    public IReadOnlyList<FileError> Errors { get; private set; } = [];

    /// <summary>What the person must know about the last edit; null for nothing.</summary>
    public string? Message { get; private set; }

    /// <summary>The field that the message is about; null when it is about the whole.</summary>
    public string? MessageField { get; private set; }

    /// <summary>The step that is being designed; null when nothing runs.</summary>
    public string? Step { get; private set; }

    /// <summary>Whether there is an edit to take back.</summary>
    public bool CanUndo => done.Count > 0;

    /// <summary>Whether there is an edit to do again.</summary>
    public bool CanRedo => undone.Count > 0;

    /// <summary>Opens a station and designs it.</summary>
    /// <returns>Whether there is such a station.</returns>
    public async Task<bool> OpenAsync(Guid id)
    {
        if (await store.ReadAsync(id) is not { } station)
        {
            return false;
        }

        foreach (var file in await store.Files.ListAsync(id))
        {
            await File.WriteAllBytesAsync(Path.Combine(folder, file.Name), file.Bytes);
        }

        Take(station);
        return true;
    }

    /// <summary>Writes a field, or leaves it out when the value is empty.</summary>
    public Task SetAsync(string path, string value)
    {
        if (value.Length > LongestValue)
        {
            Tell($"Not taken: {value.Length} characters; a field takes {LongestValue}. What stood there stays.", path);
            return Task.CompletedTask;
        }

        return ChangeAsync(brief => value.Trim().Length == 0 ? brief.Without(path) : brief.With(path, value), path);
    }

    /// <summary>Leaves a field or an item out.</summary>
    public Task RemoveAsync(string path) => ChangeAsync(brief => brief.Without(path), $"{path} left out");

    /// <summary>Adds an item to a list.</summary>
    public Task AddAsync(string path, IReadOnlyList<(string Name, string Value)> fields) =>
        ChangeAsync(brief => brief.WithItem(path, fields), $"{path}: one more");

    /// <summary>Takes the last edit back.</summary>
    public Task UndoAsync() => AgainAsync(done, undone, "undo");

    /// <summary>Does the edit again that was taken back last.</summary>
    public Task RedoAsync() => AgainAsync(undone, done, "redo");

    public void Dispose()
    {
        running.Cancel();
        running.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    private async Task ChangeAsync(Func<BriefText, BriefText> change, string what)
    {
        if (Brief is not { } brief || Station is not { } seen)
        {
            return;
        }

        string text;
        try
        {
            text = change(brief).Text;
        }
        catch (Exception trouble) when (trouble is ArgumentException or BadInputException)
        {
            Tell(trouble.Message, what);
            return;
        }

        var edit = TextEdit.Between(seen.Text, text);
        if (edit is not { Removed: "", Inserted: "" } && await KeepAsync(seen, text, what))
        {
            done.Push(edit);
            undone.Clear();
        }
    }

    private async Task AgainAsync(Stack<TextEdit> from, Stack<TextEdit> to, string what)
    {
        if (
            Station is { } seen
            && from.TryPeek(out var edit)
            && await KeepAsync(seen, edit.Inverse.Apply(seen.Text), what)
        )
        {
            to.Push(from.Pop().Inverse);
        }
    }

    // An edit is shown as done only when the store has confirmed it.
    private async Task<bool> KeepAsync(StationText seen, string text, string what)
    {
        try
        {
            var outcome = await store.EditAsync(seen, text, what);
            if (!outcome.IsKept)
            {
                done.Clear();
                undone.Clear();
                Take(outcome.Now);
                Tell(
                    "Another window changed this station first: this is what it wrote. Your last change was not taken."
                );
                return false;
            }

            (Message, MessageField) = (null, null);
            Take(outcome.Now);
            return true;
        }
        catch (Exception trouble) when (trouble is StoreException or ArgumentException)
        {
            Tell($"Not kept: {trouble.Message}");
            return false;
        }
    }

    private void Tell(string message, string? field = null)
    {
        (Message, MessageField) = (message, field);
        Changed?.Invoke(this, EventArgs.Empty);
    }

    private void Take(StationText station)
    {
        Station = station;
        running.Cancel();
        running.Dispose();
        running = new();
        try
        {
            Brief = BriefText.Of(station.Text);
        }
        catch (BadInputException bad)
        {
            (Brief, Errors, Step) = (null, bad.Errors, null);
            Changed?.Invoke(this, EventArgs.Empty);
            return;
        }

        Step = "reading";
        Changed?.Invoke(this, EventArgs.Empty);
        _ = Task.Run(() => RunAsync(station, running.Token));
    }

    private Task RunAsync(StationText station, CancellationToken stop)
    {
        try
        {
            var design = PackWriter.Legible(
                DesignRun.Run(
                    StationFile.Of(station.Text, folder),
                    step =>
                    {
                        stop.ThrowIfCancellationRequested();
                        Step = step;
                        Changed?.Invoke(this, EventArgs.Empty);
                    }
                )
            );
            stop.ThrowIfCancellationRequested();
            (Before, Design, Now) = (Now, design, digests.Keep(station, design));
            (Errors, Step) = ([], null);
        }
        catch (OperationCanceledException)
        {
            return Task.CompletedTask;
        }
        catch (BadInputException bad)
        {
            if (!stop.IsCancellationRequested)
            {
                (Errors, Step) = (bad.Errors, null);
            }
        }

        Changed?.Invoke(this, EventArgs.Empty);
        return Task.CompletedTask;
    }
}
