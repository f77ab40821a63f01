using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Station;

/// <summary>The cells of a line of a weather file, read with their place for errors.</summary>
/// <param name="line">The line.</param>
/// <param name="log">Takes what is wrong.</param>
internal sealed class WeatherCells(WeatherLine line, FieldLog log)
{
    private readonly IReadOnlyList<string> cells = Csv.Cells(line.Text);

    /// <summary>Line of the file.</summary>
    public int Line => line.Number;

    /// <summary>How many cells there are.</summary>
    public int Count => cells.Count;

    /// <summary>A cell's text; empty beyond the end.</summary>
    public string this[int cell] => cell < cells.Count ? cells[cell] : "";

    /// <summary>Notes an error about a cell.</summary>
    public void Complain(int cell, string field, string problem, string accepted) =>
        log.Add(new(line.Number, Column(cell)), field, problem, accepted);

    /// <summary>A number that must be there, within a range; its lowest value, with an error noted, when it is not.</summary>
    public double Number(int cell, string field, double lowest, double highest)
    {
        if (TryNumber(this[cell], out var value) && value >= lowest && value <= highest)
        {
            return value;
        }

        Complain(
            cell,
            field,
            $"'{this[cell]}' is not a number in range",
            FormattableString.Invariant($"{lowest} to {highest} is accepted")
        );
        return lowest;
    }

    /// <summary>A number that may be empty; null then, and, with an error noted, when it is no number.</summary>
    public double? Value(int cell, string field)
    {
        if (this[cell].Length == 0)
        {
            return null;
        }

        if (TryNumber(this[cell], out var value))
        {
            return value;
        }

        Complain(cell, field, $"'{this[cell]}' is not a number", "a number with a point as decimal mark is accepted");
        return null;
    }

    private static bool TryNumber(string text, out double value) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);

    // Column at which a cell begins.
    private int Column(int cell)
    {
        var (column, quoted, left) = (1, false, cell);
        for (var i = 0; i < line.Text.Length && left > 0; i++)
        {
            quoted ^= line.Text[i] == '"';
            if (line.Text[i] == ',' && !quoted)
            {
                (column, left) = (i + 2, left - 1);
            }
        }

        return column;
    }
}
