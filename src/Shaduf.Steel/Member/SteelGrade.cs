using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Strength of a steel up to 40 mm thick, as the checks of members and welds use it.</summary>
/// <param name="Name">Name of the grade, or <c>unmarked</c>.</param>
/// <param name="YieldNPerMm2">Yield strength f_y [N/mm2].</param>
/// <param name="UltimateNPerMm2">Ultimate strength f_u [N/mm2].</param>
/// <param name="WeldCorrelationFactor">Correlation factor of fillet welds β_w.</param>
/// <param name="IsKnown">Whether a certificate stands behind the strength.</param>
/// <param name="Source">Where the strength comes from.</param>
public sealed record SteelGrade(
    string Name,
    double YieldNPerMm2,
    double UltimateNPerMm2,
    double WeldCorrelationFactor,
    bool IsKnown,
    string Source
)
{
    /// <summary>All grades of the table, the weakest first.</summary>
    public static IReadOnlyList<SteelGrade> All { get; } =
    [
        .. Csv.Embedded(typeof(SteelGrade).Assembly, "SteelGrade.csv")
            .Select(row => new SteelGrade(
                row["name"],
                row.Number("yieldNPerMm2"),
                row.Number("ultimateNPerMm2"),
                row.Number("weldCorrelationFactor"),
                row["isKnown"] == "yes",
                row["source"]
            )),
    ];

    /// <summary>Bar and tube without a certificate.</summary>
    public static SteelGrade Unmarked { get; } = Of("unmarked");

    /// <summary>√(235/f_y), which the limits of slenderness of a section's parts are stated in.</summary>
    public double EpsilonFactor => Math.Sqrt(235 / YieldNPerMm2);

    /// <summary>A grade by name.</summary>
    /// <param name="name">As in the table: S235, S275, S355, with H for hollow sections, or unmarked.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="ArgumentException">There is no such grade.</exception>
    /// <source>EN 1993-1-1:2005, table 3.1; EN 1993-1-8:2005, table 4.1</source>
    public static SteelGrade Of(string name) =>
        All.SingleOrDefault(each => each.Name == name)
        ?? throw new ArgumentException(
            $"there is no steel grade '{name}'; accepted: {string.Join(", ", All.Select(each => each.Name))}",
            nameof(name)
        );
}
