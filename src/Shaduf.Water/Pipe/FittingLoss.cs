using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Loss coefficient K of valves, bends and the like.</summary>
public static class FittingLoss
{
    // Clean commercial steel, 0.0018 in: the pipe that the multiples are published for.
    private const double SteelRoughnessM = 0.0018 * 0.0254;

    private static readonly IReadOnlyList<CsvRow> Table = Csv.Embedded(typeof(FittingLoss).Assembly, "FittingLoss.csv");

    /// <summary>Names of the fittings in the table, in its order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Table.Select(row => row["name"])];

    /// <summary>Loss coefficient of one fitting on the velocity in its bore, for turbulent flow.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <param name="boreM">Bore of the fitting [m], 0.005 to 2.</param>
    /// <returns>K: the table's own, or n f_T with f_T the fully rough factor of steel pipe of this bore.</returns>
    /// <exception cref="ArgumentException">The table has no such fitting.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bore is outside its range, or NaN.</exception>
    /// <source>Crane Technical Paper 410, K = n f_T; status of each fitting in FittingLoss.csv</source>
    public static double Coefficient(string name, double boreM)
    {
        Within.Require(boreM, 0.005, 2, "m");
        var row = RowOf(name);
        return row.Number("coefficient") + (row.Number("multiple") * FullyRoughFactor(boreM));
    }

    /// <summary>Where a fitting's figure comes from, and how sure it is.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <returns>The table's source column.</returns>
    /// <exception cref="ArgumentException">The table has no such fitting.</exception>
    /// <source>FittingLoss.csv, column source</source>
    public static string SourceOf(string name) => RowOf(name)["source"];

    private static CsvRow RowOf(string name) =>
        Table.SingleOrDefault(row => row["name"] == name)
        ?? throw new ArgumentException(
            $"there is no fitting '{name}'; accepted: {string.Join(", ", Names)}",
            nameof(name)
        );

    private static double FullyRoughFactor(double boreM) =>
        Math.Pow(-2 * Math.Log10(SteelRoughnessM / (3.7 * boreM)), -2);
}
