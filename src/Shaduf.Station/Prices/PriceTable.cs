using System.Globalization;
using System.Text;
using MiniExcelLibs;

namespace Shaduf.Station;

/// <summary>
/// A price book written as a table, read into the same fields as one in YAML. Above the heading stand lines of a name and
/// its value (currency, minorDigits, date, exchange); the heading begins with 'item'. A line whose 'of' names an item is a
/// part of that item's build-up. In a spreadsheet the first sheet is read; places are its rows and columns.
/// </summary>
internal static class PriceTable
{
    private const int LargestBytes = 4 * 1024 * 1024;
    private const int MostRows = 5000;
    private static readonly string[] PartColumns = ["of", "kind", "quantity"];

    private sealed record Cell(FilePlace Place, string Text);

    /// <summary>Reads a CSV file with commas.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="log">Names the file in errors.</param>
    /// <returns>The fields.</returns>
    /// <exception cref="BadInputException">No such table.</exception>
    public static YamlMap OfCsv(string path, FieldLog log)
    {
        var text = Encoding.UTF8.GetString(Bytes(path, log)).TrimStart('\uFEFF');
        return Fields(
            [
                .. text.Split('\n')
                    .Select((line, i) => CellsOf(line.TrimEnd('\r'), i + 1))
                    .Where(cells => cells.Count > 0 && !cells[0].Text.StartsWith('#')),
            ],
            log
        );
    }

    /// <summary>Reads the first sheet of a spreadsheet.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="log">Names the file in errors.</param>
    /// <returns>The fields.</returns>
    /// <exception cref="BadInputException">No spreadsheet, or no such table.</exception>
    public static YamlMap OfSpreadsheet(string path, FieldLog log)
    {
        using var stream = new MemoryStream(Bytes(path, log));
        try
        {
            return Fields(
                [
                    .. stream
                        .Query(useHeaderRow: false, excelType: ExcelType.XLSX)
                        .Cast<IDictionary<string, object?>>()
                        .Take(MostRows + 1)
                        .Select((row, i) => CellsOf(row, i + 1))
                        .Where(cells => cells.Count > 0),
                ],
                log
            );
        }
        catch (Exception fault) when (fault is not BadInputException)
        {
            throw Bad(log, new(1, 1), "this is not a spreadsheet that can be read", "an XLSX file is accepted");
        }
    }

    private static byte[] Bytes(string path, FieldLog log)
    {
        var info = new FileInfo(path);
        if (!info.Exists || info.Length > LargestBytes)
        {
            throw Bad(
                log,
                new(1, 1),
                info.Exists ? "the file is too large" : "there is no such file",
                $"a price book of at most {LargestBytes / 1024 / 1024} MB is accepted"
            );
        }

        return File.ReadAllBytes(path);
    }

    private static List<Cell> CellsOf(IDictionary<string, object?> row, int line) =>
        [
            .. row
                .Values.Select((value, i) => new Cell(new(line, i + 1), Text(value)))
                .Reverse()
                .SkipWhile(cell => cell.Text.Length == 0)
                .Reverse(),
        ];

    private static string Text(object? value) =>
        value switch
        {
            null => "",
            DateTime date => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            double number => ((decimal)number).ToString(CultureInfo.InvariantCulture),
            _ => Convert.ToString(value, CultureInfo.InvariantCulture)?.Trim() ?? "",
        };

    private static List<Cell> CellsOf(string line, int number)
    {
        var cells = new List<Cell>();
        var at = 0;
        while (at <= line.Length && line.Trim().Length > 0)
        {
            var end = EndOf(line, at);
            var text = line[at..end].Trim();
            cells.Add(
                new(
                    new(number, at + 1),
                    text.StartsWith('"') ? text.Trim('"').Replace("\"\"", "\"", StringComparison.Ordinal).Trim() : text
                )
            );
            at = end + 1;
        }

        return cells;
    }

    private static int EndOf(string line, int start)
    {
        var quoted = false;
        for (var i = start; i < line.Length; i++)
        {
            quoted ^= line[i] == '"';
            if (line[i] == ',' && !quoted)
            {
                return i;
            }
        }

        return line.Length;
    }

    private static YamlMap Fields(IReadOnlyList<IReadOnlyList<Cell>> rows, FieldLog log)
    {
        if (rows.Count > MostRows)
        {
            throw Bad(log, new(MostRows, 1), "too many rows", $"at most {MostRows} rows are accepted");
        }

        var heading = rows.FirstOrDefault(row => row[0].Text == "item");
        if (heading is null)
        {
            throw Bad(
                log,
                new(1, 1),
                "no line begins with 'item'",
                "a heading 'item,unit,rate,...' with commas between the columns is accepted"
            );
        }

        var top = new Dictionary<string, YamlEntry>(StringComparer.Ordinal);
        foreach (var row in rows.TakeWhile(row => row != heading))
        {
            AddHead(top, row, log);
        }

        top["rates"] = new("rates", heading[0].Place, new YamlList(heading[0].Place, [.. Rates(rows, heading, log)]));
        return new(new(1, 1), top);
    }

    // name,value; or exchange,currency,rate,date, which may stand several times.
    private static void AddHead(Dictionary<string, YamlEntry> top, IReadOnlyList<Cell> row, FieldLog log)
    {
        var name = row[0].Text;
        if (name == "exchange")
        {
            var before = (top.GetValueOrDefault(name)?.Value as YamlList)?.Items ?? [];
            var exchange = Map(
                row[0].Place,
                new[] { "currency", "rate", "date" }.Zip(row.Skip(1), (name, cell) => (name, cell))
            );
            top[name] = new(name, row[0].Place, new YamlList(row[0].Place, [.. before, exchange]));
        }
        else if (!top.TryAdd(name, new(name, row[0].Place, Scalar(row.Count > 1 ? row[1] : row[0] with { Text = "" }))))
        {
            log.Add(row[0].Place, name, "stands twice", "each field once is accepted");
        }
    }

    private static IEnumerable<YamlMap> Rates(
        IReadOnlyList<IReadOnlyList<Cell>> rows,
        IReadOnlyList<Cell> heading,
        FieldLog log
    )
    {
        var names = heading.Select(cell => cell.Text).ToList();
        var lines = rows.SkipWhile(row => row != heading)
            .Skip(1)
            .Select(row =>
                names
                    .Zip(row, (name, cell) => (Name: name, Cell: cell))
                    .Where(pair => pair.Cell.Text.Length > 0)
                    .ToList()
            )
            .Where(line => line.Count > 0)
            .ToList();
        foreach (var tooLong in rows.SkipWhile(row => row != heading).Where(row => row.Count > names.Count))
        {
            log.Add(
                tooLong[names.Count].Place,
                "rates",
                "a cell without a heading",
                "a cell under each heading is accepted; quote a text that holds a comma"
            );
        }

        string? OwnerOf(List<(string Name, Cell Cell)> line) =>
            line.FirstOrDefault(pair => pair.Name == "of").Cell?.Text;
        var parts = lines.Where(line => OwnerOf(line) is not null).ToLookup(line => OwnerOf(line)!);
        var items = lines.Where(line => OwnerOf(line) is null).ToList();
        foreach (var orphan in parts.Where(part => items.All(item => item[0].Cell.Text != part.Key)))
        {
            log.Add(
                orphan.First()[0].Cell.Place,
                "rates",
                $"a part of '{orphan.Key}', which has no line",
                "a line for the item itself is needed"
            );
        }

        return items.Select(line => RateOf(line, parts[line[0].Cell.Text]));
    }

    private static YamlMap RateOf(
        List<(string Name, Cell Cell)> line,
        IEnumerable<List<(string Name, Cell Cell)>> parts
    )
    {
        var built = parts
            .GroupBy(part => part.FirstOrDefault(pair => pair.Name == "kind").Cell?.Text ?? "kind")
            .Select(kind =>
                (
                    Name: kind.Key,
                    Parts: kind.Select(part =>
                            Map(part[0].Cell.Place, part.Where(pair => pair.Name is "item" or "quantity"))
                        )
                        .ToList()
                )
            );
        var map = Map(line[0].Cell.Place, line.Where(pair => !PartColumns.Contains(pair.Name)));
        return map with
        {
            Entries = map
                .Entries.Values.Concat(
                    built.Select(kind => new YamlEntry(
                        kind.Name,
                        kind.Parts[0].Place,
                        new YamlList(kind.Parts[0].Place, kind.Parts)
                    ))
                )
                .ToDictionary(entry => entry.Name),
        };
    }

    private static YamlMap Map(FilePlace place, IEnumerable<(string Name, Cell Cell)> pairs) =>
        new(
            place,
            pairs
                .DistinctBy(pair => pair.Name)
                .ToDictionary(pair => pair.Name, pair => new YamlEntry(pair.Name, pair.Cell.Place, Scalar(pair.Cell)))
        );

    private static YamlScalar Scalar(Cell cell) => new(cell.Place, cell.Text);

    private static BadInputException Bad(FieldLog log, FilePlace place, string problem, string accepted) =>
        new([new(log.File, place.Line, place.Column, "file", problem, accepted)]);
}
