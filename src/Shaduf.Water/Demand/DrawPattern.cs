using System.Collections.Immutable;
using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>How the draw of a day is spread over its hours.</summary>
/// <param name="Name">The pattern's name.</param>
/// <param name="HourShares">24 shares of the day's draw that sum to 1; the first is the hour that ends at 01:00.</param>
/// <exception cref="ArgumentException">Not 24 shares, a share outside 0 to 1, or a sum that is not 1.</exception>
/// <source>named patterns: DrawPattern.csv, a source and status for each</source>
public sealed record DrawPattern(string Name, ImmutableArray<double> HourShares)
{
    private static readonly IReadOnlyList<CsvRow> Table = Csv.Embedded(typeof(DrawPattern).Assembly, "DrawPattern.csv");

    /// <summary>Names of the patterns in the table, in its order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Table.Select(row => row["name"]).Distinct()];

    /// <summary>24 shares of the day's draw that sum to 1; the first is the hour that ends at 01:00.</summary>
    public ImmutableArray<double> HourShares { get; } = DayShares.Checked(HourShares, nameof(HourShares));

    /// <summary>The largest hour's draw over the day's mean hour [ratio].</summary>
    public double PeakHourFactor => 24 * HourShares.Max();

    /// <summary>A pattern of the table by its name.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentException">The table has no such pattern.</exception>
    public static DrawPattern Named(string name)
    {
        var shares = new double[24];
        foreach (var row in RowsOf(name))
        {
            var (from, to) = ((int)row.Number("from_h"), (int)row.Number("to_h"));
            for (var hour = from; hour < to; hour++)
            {
                shares[hour] += row.Number("share") / (to - from);
            }
        }

        return new(name, [.. shares]);
    }

    /// <summary>Where a pattern of the table comes from, and how sure it is.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <returns>The table's source column.</returns>
    /// <exception cref="ArgumentException">The table has no such pattern.</exception>
    public static string SourceOf(string name) => RowsOf(name)[0]["source"];

    private static CsvRow[] RowsOf(string name)
    {
        CsvRow[] rows = [.. Table.Where(row => row["name"] == name)];
        return rows.Length > 0
            ? rows
            : throw new ArgumentException(
                $"there is no draw pattern '{name}'; accepted: {string.Join(", ", Names)}",
                nameof(name)
            );
    }
}
