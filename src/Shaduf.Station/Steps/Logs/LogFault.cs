namespace Shaduf.Station;

/// <summary>What is wrong at a place of a log.</summary>
public enum LogFaultKind
{
    /// <summary>A line that is no row: cells too many or too few, or no time.</summary>
    NotARow,

    /// <summary>A cell that is no number.</summary>
    NotANumber,

    /// <summary>A figure that cannot be at this station.</summary>
    Impossible,

    /// <summary>A row that stands twice with the same figures.</summary>
    Repeated,

    /// <summary>Two rows of one time with different figures.</summary>
    Contradicts,

    /// <summary>The clock goes back.</summary>
    ClockBack,

    /// <summary>Rows are missing.</summary>
    Gap,
}

/// <summary>Something wrong at a place of a log.</summary>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column of the heading, from 1; 0 for the whole line.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Says">It in words, and what is done about it.</param>
public sealed record LogFault(long Line, int Column, LogFaultKind Kind, string Says);

/// <summary>All that is wrong in a log: every fault is counted, the first of each kind are kept with their places.</summary>
internal sealed class LogFaults
{
    // Enough to find the cause; a log with a million bad cells must not fill the memory.
    private const int MostKept = 25;

    private readonly long[] counts = new long[Enum.GetValues<LogFaultKind>().Length];
    private readonly List<LogFault> kept = [];

    /// <summary>The faults that were kept, in order of the file.</summary>
    public IReadOnlyList<LogFault> Kept => kept;

    /// <summary>How many there are of a kind.</summary>
    public long Count(LogFaultKind kind) => counts[(int)kind];

    /// <summary>Counts a fault; its words are made only when they are kept.</summary>
    public void Add(long line, int column, LogFaultKind kind, Func<string> says)
    {
        if (++counts[(int)kind] <= MostKept)
        {
            kept.Add(new(line, column, kind, says()));
        }
    }
}
