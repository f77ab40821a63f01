using Shaduf.Pack;
using Shaduf.Station;

namespace Shaduf.Desk;

/// <summary>One more way to build the station: its brief, and its design once that is made.</summary>
/// <param name="Label">What it is called beside the others.</param>
/// <param name="Text">Its brief.</param>
/// <param name="Design">Its design, everything chosen anew; null until it is made.</param>
/// <param name="Trouble">Why there is none; null for nothing.</param>
internal sealed record Alternative(string Label, string Text, Design? Design = null, string? Trouble = null);

/// <summary>Ways to build one station, designed in the background one after the other, with the present cards and prices.</summary>
/// <param name="folder">The folder with the files that the briefs name.</param>
/// <param name="told">Called whenever anything here has changed.</param>
internal sealed class Alternatives(string folder, Action told) : IDisposable
{
    /// <summary>As many as can be told apart beside the station as it stands.</summary>
    public const int Most = 3;

    private readonly CancellationTokenSource stop = new();
    private readonly Turn turn = new();
    private volatile IReadOnlyList<Alternative> all = [];

    /// <summary>The alternatives, in the order in which they were laid aside.</summary>
    public IReadOnlyList<Alternative> All => all;

    /// <summary>Lays one aside and designs it; the same one is laid aside once, and none when there are as many as can be.</summary>
    public void Add(string label, string text)
    {
        if (all.Count >= Most || all.Any(each => each.Text == text))
        {
            return;
        }

        all = [.. all, new(label, text)];
        told();
        _ = Task.Run(() => MakeAsync(text), stop.Token);
    }

    /// <summary>Lets one go.</summary>
    public void Remove(string text)
    {
        all = [.. all.Where(each => each.Text != text)];
        told();
    }

    public void Dispose()
    {
        stop.Cancel();
        stop.Dispose();
        turn.Dispose();
    }

    private async Task MakeAsync(string text)
    {
        using var mine = await turn.TakeAsync();
        try
        {
            var design = PackWriter.Legible(DesignRun.Run(StationFile.Of(text, folder), _ => Wanted(text)));
            Put(text, each => each with { Design = design });
        }
        catch (OperationCanceledException)
        {
            // Nobody waits for it any more.
        }
        catch (Exception trouble)
            when (trouble is BadInputException or ArgumentException or InvalidOperationException or IOException)
        {
            Put(text, each => each with { Trouble = trouble.Message });
        }
    }

    private void Wanted(string text)
    {
        stop.Token.ThrowIfCancellationRequested();
        if (all.All(each => each.Text != text))
        {
            throw new OperationCanceledException();
        }
    }

    private void Put(string text, Func<Alternative, Alternative> made)
    {
        all = [.. all.Select(each => each.Text == text ? made(each) : each)];
        told();
    }
}
