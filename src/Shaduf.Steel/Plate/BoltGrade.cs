using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Property class of a bolt or of a rod cast into concrete.</summary>
/// <param name="Name">4.6, 5.6, 8.8 or 10.9.</param>
/// <param name="YieldNPerMm2">Yield strength f_yb [N/mm2].</param>
/// <param name="UltimateNPerMm2">Ultimate strength f_ub [N/mm2].</param>
/// <param name="ShearFactor">α_v, thread in the plane of shear.</param>
public sealed record BoltGrade(string Name, double YieldNPerMm2, double UltimateNPerMm2, double ShearFactor)
{
    /// <summary>All classes, the weakest first.</summary>
    public static IReadOnlyList<BoltGrade> All { get; } =
    [
        .. Csv.Embedded(typeof(BoltGrade).Assembly, "BoltGrade.csv")
            .Select(row => new BoltGrade(
                row["name"],
                row.Number("yieldNPerMm2"),
                row.Number("ultimateNPerMm2"),
                row.Number("shearFactor")
            )),
    ];

    /// <summary>A class by name.</summary>
    /// <param name="name">4.6, 5.6, 8.8 or 10.9.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentException">There is no such class.</exception>
    public static BoltGrade Of(string name) =>
        All.SingleOrDefault(each => each.Name == name)
        ?? throw new ArgumentException(
            $"there is no bolt class '{name}'; accepted: {string.Join(", ", All.Select(each => each.Name))}",
            nameof(name)
        );
}
