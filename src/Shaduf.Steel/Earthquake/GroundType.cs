using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>What an earthquake's waves make of the ground.</summary>
/// <param name="Name">A to E.</param>
/// <param name="SpectrumNumber">1 for quakes of magnitude above 5.5, 2 for nearer and weaker ones.</param>
/// <param name="SoilFactor">Soil factor S.</param>
/// <param name="RiseS">Period at which the plateau begins T_B [s].</param>
/// <param name="PlateauS">Period at which it ends T_C [s].</param>
/// <param name="DriftS">Period from which the movement stays the same T_D [s].</param>
/// <param name="About">What the ground is like.</param>
public sealed record GroundType(
    string Name,
    int SpectrumNumber,
    double SoilFactor,
    double RiseS,
    double PlateauS,
    double DriftS,
    string About
)
{
    /// <summary>All types, both spectra.</summary>
    public static IReadOnlyList<GroundType> All { get; } =
    [
        .. Csv.Embedded(typeof(GroundType).Assembly, "GroundType.csv")
            .Select(row => new GroundType(
                row["name"],
                (int)row.Number("spectrumNumber"),
                row.Number("soilFactor"),
                row.Number("riseS"),
                row.Number("plateauS"),
                row.Number("driftS"),
                row["about"]
            )),
    ];

    /// <summary>A type by name.</summary>
    /// <param name="name">A to E.</param>
    /// <param name="spectrumNumber">1 or 2.</param>
    /// <returns>The type.</returns>
    /// <exception cref="ArgumentException">There is no such type.</exception>
    /// <source>EN 1998-1:2004, tables 3.1 to 3.3, recommended values</source>
    public static GroundType Of(string name, int spectrumNumber) =>
        All.SingleOrDefault(each => each.Name == name && each.SpectrumNumber == spectrumNumber)
        ?? throw new ArgumentException(
            $"there is no ground '{name}' with spectrum {spectrumNumber}; accepted: A to E, 1 or 2",
            nameof(name)
        );
}
