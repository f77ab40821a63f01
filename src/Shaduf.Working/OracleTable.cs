using System.Reflection;

namespace Shaduf.Working;

/// <summary>A table of independent figures embedded in a trade's assembly, a quantity in each column.</summary>
/// <param name="home">The trade's assembly.</param>
/// <param name="file">The table's file name.</param>
/// <param name="isTaken">Which rows are compared; all where it is not given.</param>
public sealed class OracleTable(Assembly home, string file, Func<CsvRow, bool>? isTaken = null)
{
    private readonly Lazy<IReadOnlyList<CsvRow>> _rows = new(() =>
        [.. Csv.Embedded(home, file).Where(isTaken ?? (_ => true))]
    );

    /// <summary>Compares a column.</summary>
    /// <param name="column">Column name, as in the heading.</param>
    /// <param name="margin">How far the figures may lie apart.</param>
    /// <param name="obtain">Computes the figure from a row's inputs by the shipped kernel.</param>
    /// <returns>The check.</returns>
    public OracleCheck Check(string column, Margin margin, Func<CsvRow, double> obtain) =>
        Check(column, margin, row => row.Number(column), obtain);

    /// <summary>Compares what is not a column's own figure.</summary>
    /// <param name="quantity">What is compared.</param>
    /// <param name="margin">How far the figures may lie apart.</param>
    /// <param name="expect">Reads the independent figure from a row.</param>
    /// <param name="obtain">Computes the figure from a row's inputs by the shipped kernel.</param>
    /// <returns>The check.</returns>
    public OracleCheck Check(
        string quantity,
        Margin margin,
        Func<CsvRow, double> expect,
        Func<CsvRow, double> obtain
    ) => new(file, quantity, margin, () => _rows.Value.Select(row => (expect(row), obtain(row))));
}
