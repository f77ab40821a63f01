using Shaduf.Pack;
using Shaduf.Station;
using Shaduf.Working;

namespace Shaduf.Desk;

/// <summary>
/// The runs behind one open station. The first and those that are asked for choose everything; after an edit the choice
/// is held and only the steps whose inputs changed run again. A newer run ends the older.
/// </summary>
/// <param name="folder">The folder with the files that the brief names.</param>
/// <param name="told">Called whenever anything here has changed.</param>
internal sealed class Runs(string folder, Action told) : IDisposable
{
    private readonly StepMemory memory = new();
    private readonly FileMemory files = new();
    private Pin? pin;
    private CancellationTokenSource running = new();

    /// <summary>The last design that could be made.</summary>
    public Design? Design { get; private set; }

    /// <summary>The last design whose choice was made anew: it has the front of costs.</summary>
    public Design? Chosen { get; private set; }

    /// <summary>The last of them that had several ways to weigh; the last one where none had.</summary>
    public Design? Weighed { get; private set; }

    /// <summary>Whether its choice was held as it stood, and not made anew.</summary>
    public bool IsHeld { get; private set; }

    /// <summary>What is wrong with the brief that was run last.</summary>
    public IReadOnlyList<FileError> Errors { get; private set; } = [];

    /// <summary>The step that is being run; null when nothing runs.</summary>
    public string? Step { get; private set; }

    /// <summary>Whether what runs chooses everything anew.</summary>
    public bool IsChoosing { get; private set; }

    /// <summary>Runs a brief.</summary>
    /// <param name="text">The brief.</param>
    /// <param name="anew">Whether everything is chosen anew.</param>
    /// <param name="done">Given the design when it is there.</param>
    public void Start(string text, bool anew, Action<Design> done)
    {
        var stop = Next();
        (Step, IsChoosing) = ("reading", anew || pin is null);
        told();
        _ = Task.Run(() => Run(text, IsChoosing, done, stop), stop);
    }

    /// <summary>Ends what runs; what was shown stays.</summary>
    public void Stop()
    {
        Next();
        (Step, IsChoosing) = (null, false);
        told();
    }

    /// <summary>Ends what runs, for a brief that is no YAML.</summary>
    public void Refuse(IReadOnlyList<FileError> errors)
    {
        Errors = errors;
        Stop();
    }

    public void Dispose()
    {
        running.Cancel();
        running.Dispose();
    }

    private CancellationToken Next()
    {
        running.Cancel();
        running.Dispose();
        running = new();
        return running.Token;
    }

    private void Run(string text, bool anew, Action<Design> done, CancellationToken stop)
    {
        void Progress(string step)
        {
            stop.ThrowIfCancellationRequested();
            Step = step;
            if (anew)
            {
                told();
            }
        }

        try
        {
            var file = StationFile.Of(text, folder, files);
            var design = PackWriter.Legible(DesignRun.Run(file, anew ? null : new Quick(pin!, memory), Progress));
            stop.ThrowIfCancellationRequested();
            (pin, Chosen) = anew ? (Pin.Of(design), design) : (pin, Chosen);
            Weighed = Weighed is null || (anew && ChoiceCharts.ShownFront(design).Count > 1) ? design : Weighed;
            (Design, IsHeld, Errors) = (design, !anew, []);
            done(design);
            (Step, IsChoosing) = (null, false);
        }
        catch (OperationCanceledException)
        {
            return;
        }
        catch (BadInputException bad)
        {
            if (stop.IsCancellationRequested)
            {
                return;
            }

            (Errors, Step, IsChoosing) = (bad.Errors, null, false);
        }
        catch (Exception trouble) when (trouble is ArgumentException or InvalidOperationException)
        {
            // A fault of the program: the person sees it, and what was shown stays.
            Errors = [new("station.yaml", 1, 1, "design", trouble.Message, "send the brief to who looks after this")];
            (Step, IsChoosing) = (null, false);
        }

        told();
    }
}
