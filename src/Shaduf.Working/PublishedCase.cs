using System.Globalization;

namespace Shaduf.Working;

/// <summary>One published figure that a kernel is held against, as read from a <c>*.published.csv</c> row.</summary>
/// <param name="Method">Method name, as in docs/methods: <c>water/friction-factor</c>; taken from the file's place.</param>
/// <param name="Id">Row name, unique in the trade.</param>
/// <param name="Quantity">Which quantity of the method is computed; picks the check that computes it.</param>
/// <param name="Inputs">Named numbers, each name ending in its unit.</param>
/// <param name="Expected">The published figure.</param>
/// <param name="Tolerance">Largest deviation accepted, in the figure's own unit.</param>
/// <param name="Unit">Unit of the figure.</param>
/// <param name="Source">Document, edition, page, equation, example or table.</param>
/// <param name="Confirmed">How sure the figure is: 'looked up', 'from memory', 'recomputed', or 'own example'.</param>
public sealed record PublishedCase(
    string Method,
    string Id,
    string Quantity,
    IReadOnlyDictionary<string, double> Inputs,
    double Expected,
    double Tolerance,
    string Unit,
    string Source,
    string Confirmed
)
{
    /// <summary>One input by name.</summary>
    /// <param name="name">The input's name, as in the row.</param>
    /// <returns>Its value.</returns>
    /// <exception cref="KeyNotFoundException">The row has no such input.</exception>
    public double this[string name] =>
        Inputs.TryGetValue(name, out var value)
            ? value
            : throw new KeyNotFoundException($"Published case {Id} has no input '{name}'.");

    /// <summary>
    /// Reads the rows of a published file. Columns: id, quantity, inputs, expected, tolerance, unit, source, confirmed.
    /// Inputs are written <c>name=1.5; other=2</c>, each name once; they may be infinite, figure and tolerance
    /// not. A tolerance that ends in % is relative to the expected figure. Lines that begin with # are remarks.
    /// </summary>
    /// <param name="method">Method name given to every row.</param>
    /// <param name="csv">The file's text.</param>
    /// <returns>The rows in file order.</returns>
    /// <exception cref="FormatException">A row is not of this form.</exception>
    public static IReadOnlyList<PublishedCase> Read(string method, string csv)
    {
        var rows = Csv.Rows(csv);
        return [.. rows.Select(row => FromRow(method, row))];
    }

    private static PublishedCase FromRow(string method, CsvRow row)
    {
        var inputs = Named(row);
        var expected = Finite(row["expected"], row);
        var tolerance = row["tolerance"];
        var allowed = tolerance.EndsWith('%')
            ? Finite(tolerance[..^1], row) / 100 * Math.Abs(expected)
            : Finite(tolerance, row);
        return new(
            method,
            row["id"],
            row["quantity"],
            inputs,
            expected,
            allowed,
            row["unit"],
            row["source"],
            row["confirmed"]
        );
    }

    private static Dictionary<string, double> Named(CsvRow row)
    {
        var inputs = new Dictionary<string, double>(StringComparer.Ordinal);
        const StringSplitOptions bare = StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries;
        foreach (var pair in row["inputs"].Split(';', bare))
        {
            if (
                pair.Split('=', StringSplitOptions.TrimEntries) is not [{ Length: > 0 } name, var number]
                || !inputs.TryAdd(name, Number(number, row))
            )
            {
                throw new FormatException($"line {row.LineNumber}: '{pair}' is not a new 'name=number'");
            }
        }

        return inputs;
    }

    // An infinite tolerance would let every figure agree.
    private static double Finite(string text, CsvRow row) =>
        Number(text, row) is var value && double.IsFinite(value)
            ? value
            : throw new FormatException($"line {row.LineNumber}: '{text}' is not finite");

    private static double Number(string text, CsvRow row) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && !double.IsNaN(value)
            ? value
            : throw new FormatException($"line {row.LineNumber}: '{text}' is not a number");
}
