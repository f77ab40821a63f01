using Shaduf.Pack;
using Shaduf.Station;
using Shaduf.Store;

namespace Shaduf.Desk;

/// <summary>
/// One open station: its brief as it is edited, kept edit by edit, and the design that follows. What is shown is always
/// a whole design: the last one that could be made.
/// </summary>
public sealed class Workbench : IDisposable
{
    // As long as the reader of briefs takes a value.
    private const int LongestValue = 250;

    private readonly BenchFolder beside = new();
    private readonly Turn turn = new();
    private readonly StationStore store;
    private readonly Digests digests;
    private readonly Runs runs;

    /// <summary>A bench without a station.</summary>
    public Workbench(StationStore store, Digests digests)
    {
        (this.store, this.digests) = (store, digests);
        runs = new(beside.Path, () => Changed?.Invoke(this, EventArgs.Empty));
        Alternatives = new(beside.Path, () => Changed?.Invoke(this, EventArgs.Empty));
    }

    private History history = new();
    private Digest? kept;

    /// <summary>Told when anything that is shown has changed.</summary>
    public event EventHandler? Changed;

    /// <summary>The station as it is kept; null until it is opened.</summary>
    public StationText? Station { get; private set; }

    /// <summary>Its brief; null when its text is not YAML.</summary>
    public BriefText? Brief { get; private set; }

    /// <summary>The last design that could be made.</summary>
    public Design? Design => runs.Design;

    /// <summary>The last design whose choice was made anew: it has the front of costs.</summary>
    public Design? Chosen => runs.Chosen;

    /// <summary>The last design that weighed several ways against each other: its front stays while one of them is taken.</summary>
    public Design? Weighed => runs.Weighed;

    /// <summary>Whether the choice of pump, array and racks was held while the brief was edited.</summary>
    public bool IsHeld => runs.IsHeld;

    /// <summary>Its figures.</summary>
    public Digest? Now { get; private set; }

    /// <summary>The figures before the last edit.</summary>
    public Digest? Before { get; private set; }

    /// <summary>What is wrong with the brief as it stands.</summary>
    public IReadOnlyList<FileError> Errors => runs.Errors;

    /// <summary>What the person must know about the last edit; null for nothing.</summary>
    public string? Message { get; private set; }

    /// <summary>The field that the message is about; null when it is about the whole.</summary>
    public string? MessageField { get; private set; }

    /// <summary>The step that is being designed; null when nothing runs.</summary>
    public string? Step => runs.Step;

    /// <summary>Whether everything is being chosen anew.</summary>
    public bool IsChoosing => runs.IsChoosing;

    /// <summary>Whether there is an edit to take back.</summary>
    public bool CanUndo => history.Back is not null;

    /// <summary>Whether there is an edit to do again.</summary>
    public bool CanRedo => history.Again is not null;

    /// <summary>Ways to build the station that were laid aside to be seen beside it.</summary>
    internal Alternatives Alternatives { get; }

    /// <summary>Opens a station and designs it.</summary>
    /// <returns>Whether there is such a station.</returns>
    public async Task<bool> OpenAsync(Guid id)
    {
        if (await store.ReadAsync(id) is not { } station)
        {
            return false;
        }

        history = History.Of(await store.JournalAsync(id));
        await beside.LayAsync(await store.Files.ListAsync(id));
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

        return ChangeAsync(
            brief => value.Trim().Length == 0 ? brief.Without(path) : brief.With(path, value),
            path,
            field: path
        );
    }

    /// <summary>Shows what a value would do while it is typed; nothing is kept.</summary>
    public void Try(string path, string value)
    {
        if (Brief is not { } brief || value.Length > LongestValue)
        {
            return;
        }

        try
        {
            var tried = value.Trim().Length == 0 ? brief.Without(path) : brief.With(path, value);
            runs.Start(tried.Text, anew: false, Show);
        }
        catch (Exception trouble) when (trouble is ArgumentException or BadInputException)
        {
            Tell(trouble.Message, path);
        }
    }

    /// <summary>Chooses everything anew, as the command would.</summary>
    public void ChooseAnew()
    {
        if (Station is { } station && Brief is not null)
        {
            runs.Start(station.Text, anew: true, design => Keep(station, design));
        }
    }

    public void StopRun() => runs.Stop();

    /// <summary>The text of a file beside the brief; null when none is named or it is not there.</summary>
    public Task<string?> TextOfAsync(string? name) => beside.TextOfAsync(name);

    /// <summary>Goes back to a version that was saved, with the files of its day.</summary>
    public async Task RestoreAsync(int number)
    {
        using var mine = await turn.TakeAsync();
        if (Station is { } seen)
        {
            await KeepAsync(seen, () => store.Versions.RestoreAsync(seen, number));
        }
    }

    /// <summary>Leaves an item out, which is known by its place among those that the person saw.</summary>
    /// <param name="path">The item.</param>
    /// <param name="seen">The edit that was shown when it was asked for; after another one the place may be another item's.</param>
    public Task RemoveAsync(string path, int seen)
    {
        BriefText Left(BriefText brief) =>
            Station!.EditNumber == seen
                ? brief.Without(path)
                : throw new ArgumentException($"{path} was not left out: the list had changed meanwhile.");
        return ChangeAsync(Left, $"{path} left out");
    }

    /// <summary>Adds an item to a list.</summary>
    public Task AddAsync(string path, IReadOnlyList<(string Name, string Value)> fields)
    {
        if (fields.FirstOrDefault(field => field.Value.Length > LongestValue) is ({ } name, var value))
        {
            Tell(
                $"{path}: {name} has {value.Length} characters; a field takes {LongestValue}. Nothing was added.",
                path
            );
            return Task.CompletedTask;
        }

        return ChangeAsync(brief => brief.WithItem(path, fields), $"{path}: one more", field: path);
    }

    /// <summary>Takes the last edit back.</summary>
    public Task UndoAsync() => TakeBackAsync(() => history.Back, "undo");

    /// <summary>Does the edit again that was taken back last.</summary>
    public Task RedoAsync() => TakeBackAsync(() => history.Again, "redo");

    public void Dispose()
    {
        runs.Dispose();
        Alternatives.Dispose();
        beside.Dispose();
        turn.Dispose();
    }

    /// <summary>Changes the brief; edits wait for their turn, a refusal is told beside its field, if it has one.</summary>
    internal Task ChangeAsync(Func<BriefText, BriefText> change, string what, string? field = null) =>
        ChangeAsync(brief => Task.FromResult<(BriefText, IReadOnlyList<FileChange>)>((change(brief), [])), what, field);

    /// <summary>Changes the brief and the files beside it, as one edit.</summary>
    internal async Task ChangeAsync(
        Func<BriefText, Task<(BriefText Brief, IReadOnlyList<FileChange> Files)>> change,
        string what,
        string? field = null
    )
    {
        using var mine = await turn.TakeAsync();
        if (Brief is not { } brief || Station is not { } seen)
        {
            return;
        }

        try
        {
            var (changed, files) = await change(brief);
            await KeepAsync(seen, () => store.EditAsync(seen, changed.Text, what, files));
        }
        catch (Exception trouble) when (trouble is ArgumentException or BadInputException)
        {
            Tell(trouble.Message, field);
        }
    }

    private async Task TakeBackAsync(Func<int?> which, string what)
    {
        using var mine = await turn.TakeAsync();
        if (Station is { } seen && which() is { } number)
        {
            await KeepAsync(seen, () => store.TakeBackAsync(seen, number, what), number);
        }
    }

    // An edit is shown as done only when the store has confirmed it.
    private async Task KeepAsync(StationText seen, Func<Task<EditOutcome>> edit, int? takesBack = null)
    {
        try
        {
            var (isKept, now) = await edit();
            (Message, MessageField) = (null, null);
            if (!isKept)
            {
                history = History.Of(await store.JournalAsync(now.Id));
                Message =
                    "Another window changed this station first: this is what it wrote. Your last change was not taken.";
            }
            else if (now.EditNumber > seen.EditNumber)
            {
                history.Add(now.EditNumber, takesBack);
            }
            else
            {
                return;
            }

            await beside.LayAsync(await store.Files.ListAsync(now.Id));
            Take(now);
        }
        catch (Exception trouble) when (trouble is StoreException or ArgumentException)
        {
            Tell($"Not kept: {trouble.Message}");
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
        try
        {
            Brief = BriefText.Of(station.Text);
        }
        catch (BadInputException bad)
        {
            Brief = null;
            runs.Refuse(bad.Errors);
            return;
        }

        runs.Start(station.Text, anew: false, design => Keep(station, design));
    }

    // The figures of a brief that is kept.
    private void Keep(StationText station, Design design)
    {
        (Before, Now) = (kept, digests.Keep(station, design));
        kept = Now;
    }

    // The figures of a brief that is being typed, beside those of the one that is kept.
    private void Show(Design design) => (Before, Now) = (kept, Digest.Of(design));
}
