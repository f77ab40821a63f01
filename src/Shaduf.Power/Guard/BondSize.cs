using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Least section of a bond or a lightning conductor.</summary>
/// <param name="Use">Where it is used.</param>
/// <param name="CopperMm2">Of copper [mm²].</param>
/// <param name="AluminiumMm2">Of aluminium [mm²]; null where aluminium may not be used.</param>
/// <param name="SteelMm2">Of galvanised steel [mm²].</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record BondSize(string Use, double CopperMm2, double? AluminiumMm2, double SteelMm2, string Source)
{
    /// <summary>The table.</summary>
    public static IReadOnlyList<BondSize> Table { get; } =
    [
        .. Csv.Embedded(typeof(BondSize).Assembly, "BondSize.csv")
            .Select(row => new BondSize(
                row["use"],
                row.Number("copperMm2"),
                row["aluminiumMm2"].Length > 0 ? row.Number("aluminiumMm2") : null,
                row.Number("steelMm2"),
                row["source"]
            )),
    ];
}
