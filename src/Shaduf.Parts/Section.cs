namespace Shaduf.Parts;

/// <summary>Outline of a section, as far as cutting and drawing need it.</summary>
public enum Outline
{
    /// <summary>Equal angle.</summary>
    EqualAngle,

    /// <summary>Square tube.</summary>
    SquareTube,

    /// <summary>Round tube.</summary>
    RoundTube,
}

/// <summary>A steel section as a part carries it.</summary>
/// <param name="Name">Its name, as on the drawing and in the price book.</param>
/// <param name="Outline">Its outline.</param>
/// <param name="SideMm">Leg, side or diameter [mm].</param>
/// <param name="WallMm">Thickness [mm].</param>
/// <param name="MassKgPerM">Mass [kg/m].</param>
/// <param name="PerimeterMm">Outer perimeter, for paint [mm].</param>
/// <param name="BarMm">Length of the bar as sold [mm].</param>
/// <param name="LongestPieceMm">Longest piece that a bar gives once its ends are trimmed [mm].</param>
public sealed record Section(
    string Name,
    Outline Outline,
    double SideMm,
    double WallMm,
    double MassKgPerM,
    double PerimeterMm,
    double BarMm,
    double LongestPieceMm
)
{
    /// <summary>Length that a part takes from its bar: slanting ends of a square tube count to their last point.</summary>
    /// <param name="shape">How the part is cut.</param>
    /// <returns>Length [mm].</returns>
    public double AlongBarMm(Cut shape) => Outline == Outline.SquareTube ? shape.AlongBarMm(SideMm) : shape.LongPointMm;
}
