using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>A way of bringing water to the roots.</summary>
/// <param name="Name">Its name.</param>
/// <param name="ReachingShare">Share of the water at the field that reaches the roots.</param>
/// <param name="Source">Where the share comes from.</param>
public sealed record IrrigationMethod(string Name, double ReachingShare, string Source)
{
    /// <summary>The methods of the table.</summary>
    public static IReadOnlyList<IrrigationMethod> All { get; } =
    [
        .. Csv.Embedded(typeof(IrrigationMethod).Assembly, "IrrigationMethod.csv")
            .Select(row => new IrrigationMethod(row["method"], row.Number("reaching_share"), row["source"])),
    ];
}
