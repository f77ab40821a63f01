using System.Reflection;
using System.Text;

namespace Shaduf.Working;

/// <summary>One row of a table file, read by column name.</summary>
/// <param name="LineNumber">Line in the file, from 1.</param>
/// <param name="Cells">The row's cells by column name.</param>
public sealed record CsvRow(int LineNumber, IReadOnlyDictionary<string, string> Cells)
{
    /// <summary>A cell by its column's name.</summary>
    /// <param name="column">Column name, as in the heading.</param>
    /// <returns>The cell's text, trimmed.</returns>
    /// <exception cref="FormatException">The table has no such column.</exception>
    public string this[string column] =>
        Cells.TryGetValue(column, out var cell)
            ? cell
            : throw new FormatException($"line {LineNumber}: there is no column '{column}'");

    /// <summary>A cell as a number.</summary>
    /// <param name="column">Column name, as in the heading.</param>
    /// <returns>The number, finite.</returns>
    /// <exception cref="FormatException">The cell is not a finite number, or the table has no such column.</exception>
    public double Number(string column) =>
        double.TryParse(
            this[column],
            System.Globalization.NumberStyles.Float,
            System.Globalization.CultureInfo.InvariantCulture,
            out var value
        ) && double.IsFinite(value)
            ? value
            : throw new FormatException($"line {LineNumber}, column {column}: '{this[column]}' is not a number");
}

/// <summary>Tables that lie beside the code as CSV (RFC 4180 quoting; lines that begin with # are remarks).</summary>
public static class Csv
{
    /// <summary>Reads a table with a heading line.</summary>
    /// <param name="text">The file's text.</param>
    /// <returns>The rows in file order.</returns>
    /// <exception cref="FormatException">A row has more or fewer cells than the heading.</exception>
    public static IReadOnlyList<CsvRow> Rows(string text)
    {
        IReadOnlyList<string>? heading = null;
        var rows = new List<CsvRow>();
        var lineNumber = 0;
        foreach (var line in text.Split('\n'))
        {
            lineNumber++;
            var content = line.TrimEnd('\r');
            if (string.IsNullOrWhiteSpace(content) || content.StartsWith('#'))
            {
                continue;
            }

            var cells = Cells(content);
            if (heading is null)
            {
                heading = cells;
                continue;
            }

            if (cells.Count != heading.Count)
            {
                throw new FormatException($"line {lineNumber}: {cells.Count} cells under {heading.Count} headings");
            }

            rows.Add(new(lineNumber, heading.Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second)));
        }

        return rows;
    }

    /// <summary>Reads a table embedded in an assembly.</summary>
    /// <param name="home">The assembly that holds it.</param>
    /// <param name="fileName">The file's own name; it must be the only resource that ends so.</param>
    /// <returns>The rows in file order.</returns>
    /// <exception cref="FileNotFoundException">No embedded file has that name.</exception>
    public static IReadOnlyList<CsvRow> Embedded(Assembly home, string fileName) => Rows(EmbeddedText(home, fileName));

    /// <summary>Reads a file embedded in an assembly.</summary>
    /// <param name="home">The assembly that holds it.</param>
    /// <param name="fileName">The file's own name; it must be the only resource that ends so.</param>
    /// <returns>Its text.</returns>
    /// <exception cref="FileNotFoundException">No embedded file has that name.</exception>
    public static string EmbeddedText(Assembly home, string fileName)
    {
        var resource =
            home.GetManifestResourceNames()
                .SingleOrDefault(name => name.EndsWith("/" + fileName, StringComparison.Ordinal))
            ?? throw new FileNotFoundException($"{home.GetName().Name} holds no table '{fileName}'.");
        using var reader = new StreamReader(home.GetManifestResourceStream(resource)!, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    /// <summary>The cells of one line.</summary>
    /// <param name="line">The line, without its end.</param>
    /// <returns>The cells, trimmed and without their quotes.</returns>
    public static IReadOnlyList<string> Cells(string line)
    {
        var cells = new List<string>();
        var start = 0;
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"')
            {
                quoted = !quoted;
            }
            else if (line[i] == ',' && !quoted)
            {
                cells.Add(Unquoted(line[start..i]));
                start = i + 1;
            }
        }

        cells.Add(Unquoted(line[start..]));
        return cells;
    }

    private static string Unquoted(string text)
    {
        var cell = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] != '"')
            {
                cell.Append(text[i]);
            }
            else if (quoted && i + 1 < text.Length && text[i + 1] == '"')
            {
                cell.Append('"');
                i++;
            }
            else
            {
                quoted = !quoted;
            }
        }

        return cell.ToString().Trim();
    }
}
