namespace Shaduf.Parts;

/// <summary>Holes of a plate, at the corners of a square round its middle.</summary>
/// <param name="DiameterMm">Diameter of a hole [mm].</param>
/// <param name="SpacingMm">Side of the square [mm].</param>
public sealed record PlateHoles(double DiameterMm, double SpacingMm);

/// <summary>Plates that are alike, cut from sheet.</summary>
/// <param name="Mark">The name painted on them.</param>
/// <param name="Role">What they are: 'cap plate'.</param>
/// <param name="WidthMm">Width [mm].</param>
/// <param name="LengthMm">Length [mm].</param>
/// <param name="ThicknessMm">Thickness [mm].</param>
/// <param name="Count">How many.</param>
public sealed record Plate(string Mark, string Role, double WidthMm, double LengthMm, double ThicknessMm, int Count)
{
    /// <summary>Whether it is half of the rectangle, cut corner to corner.</summary>
    public bool IsTriangle { get; init; }

    /// <summary>Its holes; null for none.</summary>
    public PlateHoles? Holes { get; init; }

    /// <summary>Area of one face, holes not taken off [mm²].</summary>
    public double FaceMm2 => WidthMm * LengthMm / (IsTriangle ? 2 : 1);

    /// <summary>Volume of one, holes not taken off [mm³].</summary>
    public double VolumeMm3 => FaceMm2 * ThicknessMm;

    /// <summary>Its sizes in words.</summary>
    public string Sizes =>
        FormattableString.Invariant(
            $"{WidthMm:0} x {LengthMm:0} x {ThicknessMm:0}{(IsTriangle ? ", halved corner to corner" : "")}"
        );
}
