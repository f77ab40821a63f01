using Shaduf.Water;
using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>A log of a station that runs, held against its design.</summary>
/// <param name="File">The log's name.</param>
/// <param name="IntervalS">Usual time from row to row [s].</param>
/// <param name="RowCount">Rows read.</param>
/// <param name="Columns">What its columns hold; null for one that is not used.</param>
/// <param name="Weeks">The weeks in order.</param>
/// <param name="Faults">What is wrong in it, with its places: the first of each kind.</param>
/// <param name="FaultCounts">How many faults of each kind there are.</param>
public sealed record LogReport(
    string File,
    int IntervalS,
    long RowCount,
    IReadOnlyList<LogColumn?> Columns,
    IReadOnlyList<LogWeek> Weeks,
    IReadOnlyList<LogFault> Faults,
    IReadOnlyDictionary<LogFaultKind, long> FaultCounts
)
{
    // Rows from which the usual interval is taken.
    private const int FirstRows = 2000;
    private const int ShortestS = 60;
    private const int LongestS = 3600;

    /// <summary>Rows that are missing.</summary>
    public long MissingCount { get; init; }

    /// <summary>Rows for times that were told before, and their water [m³].</summary>
    public (long Count, double WaterM3) Apart { get; init; }

    /// <summary>Unit of the flow in the heading; empty without one.</summary>
    public string FlowUnit { get; init; } = "";

    /// <summary>Place of the flow in the heading, from 1.</summary>
    public int FlowPlace => Columns.TakeWhile(column => column != LogColumn.Flow).Count() + 1;

    /// <summary>Names of columns that are not used.</summary>
    public IReadOnlyList<string> Unused { get; init; } = [];

    /// <summary>What dust takes; null where light or power are not told, or too few weeks are.</summary>
    public Soiling? Soiling { get; init; }

    /// <summary>The trend of the pump; null where flow or power are not told, or too few weeks are.</summary>
    public SenSlope? PumpTrend { get; init; }

    /// <summary>The findings.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Whether the light was logged, so that what is expected follows it; else the mean of the design's hours is taken.</summary>
    public bool IsByLight => Columns.Contains(LogColumn.Light);

    /// <summary>What is expected, in words.</summary>
    public string Basis =>
        IsByLight
            ? "the light that was logged: what the design's array and pump give in it"
            : "the design's typical hour: the mean of the same month and time of day in its year, as no light was logged";

    /// <summary>Reads a log from a file.</summary>
    /// <param name="design">The station's design.</param>
    /// <param name="path">The log, shown in errors as given.</param>
    /// <returns>The report.</returns>
    /// <exception cref="BadInputException">It cannot be read as a log, or its units are wrong.</exception>
    public static LogReport Read(Design design, string path)
    {
        if (!System.IO.File.Exists(path))
        {
            throw Bad(path, 1, "file", "there is no such file", "a CSV file with a heading is accepted");
        }

        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16);
        return Of(design, stream, path);
    }

    /// <summary>Reads a log.</summary>
    /// <param name="design">The station's design.</param>
    /// <param name="stream">The log.</param>
    /// <param name="file">Its name as the user gave it.</param>
    /// <returns>The report.</returns>
    /// <exception cref="BadInputException">It cannot be read as a log, or its units are wrong.</exception>
    public static LogReport Of(Design design, Stream stream, string file)
    {
        var faults = new LogFaults();
        var offsetMin = (int)Math.Round(design.Brief.Site.UtcOffsetH * 60);
        var reader = new LogReader(stream, file, LogLimits.Of(design), offsetMin, faults);
        var first = First(reader);
        var intervalS = IntervalOf(first, file);
        var order = new LogOrder(faults, intervalS);
        var tally = new LogTally(design, reader.Heading.Has(LogColumn.Light));
        var count = 0L;
        void Add(in LogRow row)
        {
            count++;
            if (order.Takes(row, out var hours))
            {
                tally.Add(row, hours);
            }
        }

        first.ForEach(row => Add(row));
        while (reader.TryRow(out var row))
        {
            Add(row);
        }

        var weeks = tally.Weeks();
        LogUnits.Check(reader, tally, weeks, file);
        var report = new LogReport(
            file,
            intervalS,
            count,
            reader.Heading.Columns,
            weeks,
            [.. faults.Kept.OrderBy(fault => fault.Line)],
            Enum.GetValues<LogFaultKind>().ToDictionary(kind => kind, faults.Count)
        )
        {
            MissingCount = order.MissingCount,
            Apart = (order.ApartCount, order.ApartM3),
            FlowUnit = reader.Heading.UnitOf(LogColumn.Flow),
            Unused = reader.Heading.Unused,
            Soiling = Series(weeks, week => week.ArrayRatio, Soiling.Of),
            PumpTrend = Series(
                weeks,
                week => week.PumpRatio,
                (steps, values) => values.Count >= Soiling.FewestWeeks ? SenSlope.Of(steps, values) : null
            ),
        };
        return report with { Findings = LogFindings.Of(design, report) };
    }

    /// <summary>The weeks in which a figure is told, by number from the first.</summary>
    internal static T? Series<T>(
        IReadOnlyList<LogWeek> weeks,
        Func<LogWeek, double?> figure,
        Func<IReadOnlyList<double>, IReadOnlyList<double>, T?> of
    )
        where T : class
    {
        var told = weeks.Where(week => figure(week) is not null).ToList();
        return of(
            [.. told.Select(week => (week.From.DayNumber - weeks[0].From.DayNumber) / 7.0)],
            [.. told.Select(week => figure(week)!.Value)]
        );
    }

    private static List<LogRow> First(LogReader reader)
    {
        var first = new List<LogRow>(FirstRows);
        while (first.Count < FirstRows && reader.TryRow(out var row))
        {
            first.Add(row);
        }

        return first;
    }

    private static int IntervalOf(List<LogRow> rows, string file)
    {
        if (rows.Count < 2)
        {
            throw Bad(file, 1, "rows", "fewer than two rows", "rows under the heading are accepted");
        }

        var usual = rows.Skip(1)
            .Select((row, i) => (int)Math.Clamp(row.Second - rows[i].Second, 0, int.MaxValue))
            .Where(step => step > 0)
            .GroupBy(step => step)
            .OrderByDescending(steps => steps.Count())
            .ThenBy(steps => steps.Key)
            .Select(steps => steps.Key)
            .FirstOrDefault();
        return usual is >= ShortestS and <= LongestS
            ? usual
            : throw Bad(
                file,
                rows[1].Line,
                "time",
                $"rows are {usual} s apart",
                "rows that are 1 min to 1 h apart are accepted"
            );
    }

    private static BadInputException Bad(string file, long line, string field, string problem, string accepted) =>
        new([new(file, (int)line, 1, field, problem, accepted)]);
}
