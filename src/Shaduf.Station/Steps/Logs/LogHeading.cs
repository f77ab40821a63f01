using System.Text;

namespace Shaduf.Station;

/// <summary>What a column of a log holds.</summary>
public enum LogColumn
{
    /// <summary>End of the interval, by the clock of the site.</summary>
    Time,

    /// <summary>Flow into the tank.</summary>
    Flow,

    /// <summary>Power at the drive's input.</summary>
    Power,

    /// <summary>Depth to the water in the well.</summary>
    Level,

    /// <summary>Height of the water in the tank.</summary>
    Tank,

    /// <summary>Light on the plane of the modules.</summary>
    Light,
}

/// <summary>The heading of a log: which column holds what, and in which unit.</summary>
/// <param name="Columns">What each column holds, from the left; null for one that is not used.</param>
/// <param name="Starts">Where each cell of the heading starts in its line, from 1.</param>
/// <param name="Units">Unit of each column as it is written.</param>
/// <param name="Factors">What each figure is multiplied by to be in the program's own unit.</param>
/// <param name="Unused">Names of the columns that are not used.</param>
internal sealed record LogHeading(
    IReadOnlyList<LogColumn?> Columns,
    IReadOnlyList<int> Starts,
    IReadOnlyList<string> Units,
    IReadOnlyList<double> Factors,
    IReadOnlyList<string> Unused
)
{
    private static readonly IReadOnlyList<(string Word, LogColumn Column, Measure Measure)> s_known =
    [
        ("flow", LogColumn.Flow, Measure.FlowM3PerH),
        ("power", LogColumn.Power, Measure.PowerW),
        ("level", LogColumn.Level, Measure.LengthM),
        ("tank", LogColumn.Tank, Measure.LengthM),
        ("light", LogColumn.Light, Measure.LightWPerM2),
    ];

    private const string Accepted = "a heading as 'time,flow m3/h,power W,level m,tank m,light W/m2' is accepted";

    /// <summary>Whether a column is there.</summary>
    public bool Has(LogColumn column) => Columns.Contains(column);

    /// <summary>Place of a column in the file, from 1.</summary>
    public int PlaceOf(LogColumn column) => Columns.TakeWhile(each => each != column).Count() + 1;

    /// <summary>Where its cell starts in the heading's line, from 1.</summary>
    public int ColumnOf(LogColumn column) => Starts[PlaceOf(column) - 1];

    /// <summary>The unit in which it is written; empty when it is not there.</summary>
    public string UnitOf(LogColumn column) => Has(column) ? Units[PlaceOf(column) - 1] : "";

    /// <summary>Reads the heading.</summary>
    /// <param name="line">The line.</param>
    /// <param name="number">Its number.</param>
    /// <param name="file">The file's name as the user gave it.</param>
    /// <returns>The heading.</returns>
    /// <exception cref="BadInputException">It cannot be understood; all that is wrong is listed.</exception>
    public static LogHeading Read(string line, int number, string file)
    {
        var log = new FieldLog(file);
        var parted =
            line.Contains(';', StringComparison.Ordinal) ? "semicolons"
            : line.Contains('\t', StringComparison.Ordinal) ? "tabs"
            : null;
        if (parted is not null)
        {
            log.Add(new(number, 1), "heading", $"cells parted by {parted}", "cells parted by commas are accepted");
            log.ThrowIfAny();
        }

        var (columns, starts, units, factors, unused) = (
            new List<LogColumn?>(),
            new List<int>(),
            new List<string>(),
            new List<double>(),
            new List<string>()
        );
        var at = 1;
        foreach (var cell in line.Split(','))
        {
            var (column, unit, factor) = Column(cell.Trim().Trim('"'), new(number, at), log);
            if (column is { } twice && columns.Contains(twice))
            {
                log.Add(new(number, at), "heading", $"'{cell.Trim()}' stands twice", "each column once is accepted");
            }

            columns.Add(column);
            starts.Add(at);
            units.Add(unit);
            factors.Add(factor);
            if (column is null)
            {
                unused.Add(cell.Trim());
            }

            at += Encoding.UTF8.GetByteCount(cell) + 1;
        }

        if (
            !columns.Contains(LogColumn.Time)
            || !(columns.Contains(LogColumn.Flow) || columns.Contains(LogColumn.Power))
        )
        {
            log.Add(new(number, 1), "heading", "no column of time, or none of flow or power", Accepted);
        }

        log.ThrowIfAny();
        return new(columns, starts, units, factors, unused);
    }

    private static (LogColumn? Column, string Unit, double Factor) Column(string cell, FilePlace place, FieldLog log)
    {
        if (cell.Equals("time", StringComparison.OrdinalIgnoreCase))
        {
            return (LogColumn.Time, "", 1);
        }

        var parts = cell.Split(' ', 2);
        var known = s_known.FirstOrDefault(each => each.Word.Equals(parts[0], StringComparison.OrdinalIgnoreCase));
        if (known.Measure is null)
        {
            return (null, "", 1);
        }

        if (parts.Length == 2 && known.Measure.TryRead($"1 {parts[1]}", out var factor, out _))
        {
            return (known.Column, parts[1], factor);
        }

        log.Add(
            place,
            "heading",
            parts.Length == 1 ? $"'{cell}' has no unit" : $"'{parts[1]}' is not a unit of {known.Measure.Name} here",
            $"'{known.Word} {known.Measure.OwnUnit}' is accepted; units: {known.Measure.Accepted}"
        );
        return (known.Column, "", 1);
    }
}
