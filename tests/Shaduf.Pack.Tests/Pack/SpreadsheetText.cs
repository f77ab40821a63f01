using System.Globalization;
using System.IO.Compression;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Shaduf.Pack.Tests;

/// <summary>A spreadsheet read by its XML: values, and formulas worked out without the values stored beside them.</summary>
internal sealed class SpreadsheetText
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private readonly Dictionary<string, Dictionary<string, XElement>> sheets = [];

    public SpreadsheetText(byte[] file)
    {
        using var archive = new ZipArchive(new MemoryStream(file));
        XDocument Read(string name)
        {
            using var stream = archive.GetEntry(name)!.Open();
            return XDocument.Load(stream);
        }

        var names = Read("xl/workbook.xml")
            .Descendants(Main + "sheet")
            .Select(sheet => (string)sheet.Attribute("name")!)
            .ToList();
        for (var i = 0; i < names.Count; i++)
        {
            sheets[names[i]] = Read($"xl/worksheets/sheet{i + 1}.xml")
                .Descendants(Main + "row")
                .SelectMany(
                    (row, r) => row.Elements(Main + "c").Select((cell, c) => (Key: $"{(char)('A' + c)}{r + 1}", cell))
                )
                .ToDictionary(pair => pair.Key, pair => pair.cell);
        }
    }

    public IEnumerable<string> Names => sheets.Keys;

    public int Rows(string sheet) => sheets[sheet].Keys.Max(key => int.Parse(key[1..], CultureInfo.InvariantCulture));

    public string Text(string sheet, string cell) =>
        sheets[sheet].TryGetValue(cell, out var found)
            ? string.Concat(found.Descendants(Main + "t").Select(t => t.Value))
            : "";

    public bool HasFormula(string sheet, string cell) => sheets[sheet][cell].Element(Main + "f") is not null;

    /// <summary>The stored value of a cell.</summary>
    public decimal Stored(string sheet, string cell) =>
        decimal.Parse(sheets[sheet][cell].Element(Main + "v")!.Value, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>The value of a cell, formulas worked out anew.</summary>
    public decimal Value(string sheet, string cell)
    {
        if (!sheets[sheet].TryGetValue(cell, out var found))
        {
            return 0;
        }

        if (found.Element(Main + "f") is { } formula)
        {
            return Worked(sheet, formula.Value);
        }

        return found.Element(Main + "v") is { } value && (string?)found.Attribute("t") is null or "n"
            ? decimal.Parse(found.Element(Main + "v")!.Value, NumberStyles.Float, CultureInfo.InvariantCulture)
            : 0;
    }

    private decimal Worked(string sheet, string formula)
    {
        if (Regex.Match(formula, @"^ROUND\((.+),(\d)\)$") is { Success: true } round)
        {
            return Math.Round(
                Worked(sheet, round.Groups[1].Value),
                int.Parse(round.Groups[2].Value, CultureInfo.InvariantCulture),
                MidpointRounding.AwayFromZero
            );
        }

        if (Regex.Match(formula, @"^(.+)\*(\w+)$") is { Success: true } product)
        {
            return Worked(sheet, product.Groups[1].Value) * Value(sheet, product.Groups[2].Value);
        }

        if (Regex.Match(formula, @"^SUM\(([A-Z])(\d+):[A-Z](\d+)\)$") is { Success: true } sum)
        {
            var (first, last) = (
                int.Parse(sum.Groups[2].Value, CultureInfo.InvariantCulture),
                int.Parse(sum.Groups[3].Value, CultureInfo.InvariantCulture)
            );
            return Enumerable.Range(first, last - first + 1).Sum(row => Value(sheet, $"{sum.Groups[1].Value}{row}"));
        }

        return Regex.IsMatch(formula, @"^[A-Z]\d+$") ? Value(sheet, formula) : throw new FormatException(formula);
    }
}
