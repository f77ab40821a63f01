using System.Buffers.Text;
using System.Text;

namespace Shaduf.Station;

/// <summary>Reads a log row by row through one buffer: memory does not grow with its length.</summary>
internal sealed class LogReader
{
    private const int BufferBytes = 1 << 16;

    private readonly Stream stream;
    private readonly LogFaults faults;
    private readonly LogLimits limits;
    private readonly int utcOffsetMin;
    private readonly byte[] buffer = new byte[BufferBytes];
    private readonly double?[] cells;
    private LogClock clock;
    private readonly long[] told = new long[Enum.GetValues<LogColumn>().Length];
    private readonly long[] impossible = new long[Enum.GetValues<LogColumn>().Length];
    private int from;
    private int until;
    private bool isEnd;

    /// <summary>Opens a log and reads its heading.</summary>
    /// <param name="stream">The log.</param>
    /// <param name="file">Its name as the user gave it.</param>
    /// <param name="limits">What can be at the station.</param>
    /// <param name="utcOffsetMin">Clock of the site, ahead of UTC [min].</param>
    /// <param name="faults">Takes what is wrong.</param>
    /// <exception cref="BadInputException">There is no heading, or it cannot be understood.</exception>
    public LogReader(Stream stream, string file, LogLimits limits, int utcOffsetMin, LogFaults faults)
    {
        (this.stream, this.limits, this.utcOffsetMin, this.faults) = (stream, limits, utcOffsetMin, faults);
        while (TryLine(out var line))
        {
            var text = Encoding.UTF8.GetString(line).TrimStart('\uFEFF').Trim();
            if (text.Length > 0 && text[0] != '#')
            {
                (Heading, HeadingLine) = (LogHeading.Read(text, (int)Line, file), Line);
                cells = new double?[Enum.GetValues<LogColumn>().Length];
                return;
            }
        }

        throw new BadInputException([new(file, 1, 1, "file", "the log is empty", "a heading and rows are accepted")]);
    }

    /// <summary>The heading.</summary>
    public LogHeading Heading { get; }

    /// <summary>Line of the heading.</summary>
    public long HeadingLine { get; }

    /// <summary>How many figures other than zero a column told, and how many of them cannot be.</summary>
    public (long Told, long Impossible) Counts(LogColumn column) => (told[(int)column], impossible[(int)column]);

    /// <summary>Number of the line read last.</summary>
    public long Line { get; private set; }

    /// <summary>Reads the next row; what is wrong is noted, and what is well in the row is kept.</summary>
    /// <param name="row">The row.</param>
    /// <returns>False at the end.</returns>
    public bool TryRow(out LogRow row)
    {
        while (TryLine(out var line))
        {
            line = line.Trim((byte)' ');
            if (line.Length > 0 && line[0] != (byte)'#' && TryCells(line, out var second))
            {
                row = new(
                    Line,
                    second,
                    cells[(int)LogColumn.Flow],
                    cells[(int)LogColumn.Power],
                    cells[(int)LogColumn.Level],
                    cells[(int)LogColumn.Tank],
                    cells[(int)LogColumn.Light]
                );
                return true;
            }
        }

        row = default;
        return false;
    }

    private bool TryCells(ReadOnlySpan<byte> line, out long second)
    {
        Array.Clear(cells);
        second = -1;
        var count = 0;
        foreach (var range in line.Split((byte)','))
        {
            if (count < Heading.Columns.Count && Heading.Columns[count] is { } column)
            {
                var cell = Plain(line[range]);
                if (column == LogColumn.Time)
                {
                    second = clock.TrySecond(cell, utcOffsetMin, out var read) ? read : -1;
                }
                else
                {
                    cells[(int)column] = Figure(cell, column, count);
                }
            }

            count++;
        }

        if (count == Heading.Columns.Count && second >= 0)
        {
            return true;
        }

        NoteNoRow(count);
        return false;
    }

    private void NoteNoRow(int count) =>
        faults.Add(
            Line,
            count == Heading.Columns.Count ? Heading.PlaceOf(LogColumn.Time) : 0,
            LogFaultKind.NotARow,
            () =>
                count != Heading.Columns.Count
                    ? $"{count} cells under a heading of {Heading.Columns.Count}: a comma as decimal mark? The row is left out"
                    : "no time as 2026-03-01 06:00: the row is left out"
        );

    private static ReadOnlySpan<byte> Plain(ReadOnlySpan<byte> cell)
    {
        cell = cell.Trim((byte)' ');
        return cell.Length > 1 && cell[0] == (byte)'"' && cell[^1] == (byte)'"' ? cell[1..^1] : cell;
    }

    private double? Figure(ReadOnlySpan<byte> cell, LogColumn column, int place)
    {
        if (cell.IsEmpty)
        {
            return null;
        }

        if (
            !Utf8Parser.TryParse(cell, out double value, out var used)
            || used != cell.Length
            || !double.IsFinite(value)
        )
        {
            NoteNoNumber(Encoding.UTF8.GetString(cell[..Math.Min(cell.Length, 20)]), place + 1);
            return null;
        }

        var own = value * Heading.Factors[place];
        told[(int)column] += value == 0 ? 0 : 1;
        var range = limits.Of(column);
        if (own >= range.Lowest && own <= range.Highest)
        {
            return own;
        }

        impossible[(int)column]++;
        NoteImpossible(own, range, place + 1);
        return null;
    }

    private void NoteNoNumber(string text, int place) =>
        faults.Add(Line, place, LogFaultKind.NotANumber, () => $"'{text}' is not a number: the cell is left out");

    private void NoteImpossible(double own, (double Lowest, double Highest, string Unit) range, int place) =>
        faults.Add(
            Line,
            place,
            LogFaultKind.Impossible,
            () =>
                FormattableString.Invariant(
                    $"{own:0.###} {range.Unit} cannot be here ({range.Lowest:0.##} to {range.Highest:0.##}): the cell is left out"
                )
        );

    // The next line without its end; a line longer than the buffer is noted and passed over.
    private bool TryLine(out ReadOnlySpan<byte> line)
    {
        var isTooLong = false;
        while (true)
        {
            var end = buffer.AsSpan(from, until - from).IndexOf((byte)'\n');
            if (end >= 0 || (isEnd && until > from))
            {
                var length = end >= 0 ? end : until - from;
                line = buffer.AsSpan(from, length).TrimEnd((byte)'\r');
                from += Math.Min(length + 1, until - from);
                Line++;
                if (!isTooLong)
                {
                    return true;
                }

                faults.Add(Line, 0, LogFaultKind.NotARow, () => "a line of more than 64 kB: it is left out");
                isTooLong = false;
                continue;
            }

            if (isEnd)
            {
                line = default;
                return false;
            }

            isTooLong |= Refill();
        }
    }

    // Reads on; true when the line at hand is longer than the buffer and its start was dropped.
    private bool Refill()
    {
        var isFull = from == 0 && until == buffer.Length;
        if (isFull)
        {
            until = 0;
        }
        else
        {
            buffer.AsSpan(from, until - from).CopyTo(buffer);
            (from, until) = (0, until - from);
        }

        var count = stream.Read(buffer, until, buffer.Length - until);
        until += count;
        isEnd = count == 0;
        return isFull;
    }
}
