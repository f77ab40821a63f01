using Shaduf.Store;

namespace Shaduf.Desk;

/// <summary>
/// Which edit of a station is taken back next, and which of those taken back is done again: read from its journal, so
/// that it goes back to the station's beginning, whichever window made the edits.
/// </summary>
internal sealed class History
{
    private readonly Stack<int> done = new();
    private readonly Stack<int> undone = new();

    /// <summary>The edit that is taken back next; null when none is left.</summary>
    public int? Back => done.TryPeek(out var number) ? number : null;

    /// <summary>The edit that took one back and is now taken back itself; null when there is none.</summary>
    public int? Again => undone.TryPeek(out var number) ? number : null;

    /// <summary>The history that a journal tells, oldest line first.</summary>
    public static History Of(IEnumerable<JournalLine> journal)
    {
        var history = new History();
        foreach (var line in journal)
        {
            history.Add(line.Number, line.TakesBack);
        }

        return history;
    }

    /// <summary>One more edit.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="takesBack">The edit that it takes back; null for none.</param>
    public void Add(int number, int? takesBack)
    {
        if (takesBack is { } last && last == Back)
        {
            done.Pop();
            undone.Push(number);
            return;
        }

        if (takesBack is not null && takesBack == Again)
        {
            undone.Pop();
        }
        else
        {
            undone.Clear();
        }

        done.Push(number);
    }
}
