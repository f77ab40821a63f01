using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>One size of bolt with coarse thread.</summary>
/// <param name="Name">M10 to M24.</param>
/// <param name="DiameterMm">Diameter of the shank d [mm].</param>
/// <param name="StressAreaMm2">Area of the thread that carries A_s [mm2].</param>
/// <param name="HoleMm">Clearance hole d_0 [mm].</param>
/// <param name="WasherMm">Outside diameter of the washer [mm].</param>
public sealed record BoltSize(string Name, double DiameterMm, double StressAreaMm2, double HoleMm, double WasherMm)
{
    /// <summary>All sizes, the thinnest first.</summary>
    public static IReadOnlyList<BoltSize> All { get; } =
    [
        .. Csv.Embedded(typeof(BoltSize).Assembly, "BoltSize.csv")
            .Select(row => new BoltSize(
                row["name"],
                row.Number("diameterMm"),
                row.Number("stressAreaMm2"),
                row.Number("holeMm"),
                row.Number("washerMm")
            )),
    ];

    /// <summary>A size by name.</summary>
    /// <param name="name">M10 to M24.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentException">There is no such size.</exception>
    public static BoltSize Of(string name) =>
        All.SingleOrDefault(each => each.Name == name)
        ?? throw new ArgumentException(
            $"there is no bolt '{name}'; accepted: {string.Join(", ", All.Select(each => each.Name))}",
            nameof(name)
        );
}
