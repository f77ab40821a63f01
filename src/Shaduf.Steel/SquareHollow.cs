namespace Shaduf.Steel;

/// <summary>Square hollow section with rounded corners.</summary>
public static class SquareHollow
{
    /// <summary>Properties of a cold-formed section.</summary>
    /// <param name="widthMm">Outside width B [mm], 10 to 500.</param>
    /// <param name="wallMm">Wall thickness T [mm], 0.5 to 16; the outer corner radius fits twice into the width.</param>
    /// <returns>The properties.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN, or the corners do not fit.</exception>
    /// <source>EN 10219-2:2006, annex B</source>
    public static SectionProperties ColdFormed(double widthMm, double wallMm) =>
        RectangularHollow.ColdFormed(widthMm, widthMm, wallMm);

    /// <summary>Properties of a hot-finished section.</summary>
    /// <param name="widthMm">Outside width B [mm], 10 to 500.</param>
    /// <param name="wallMm">Wall thickness T [mm], 0.5 to 16; 4 T fits into the width.</param>
    /// <returns>The properties.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN, or the corners do not fit.</exception>
    /// <source>EN 10210-2:2006, annex A (radii and formulas from memory)</source>
    public static SectionProperties HotFinished(double widthMm, double wallMm) =>
        RectangularHollow.HotFinished(widthMm, widthMm, wallMm);
}
