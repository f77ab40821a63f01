using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Rectangular hollow section with rounded corners.</summary>
public static class RectangularHollow
{
    /// <summary>Properties of a cold-formed section, with the corner radii that its standard prescribes for properties.</summary>
    /// <param name="heightMm">Outside height H [mm], 10 to 500.</param>
    /// <param name="widthMm">Outside width B [mm], 10 to 500.</param>
    /// <param name="wallMm">Wall thickness T [mm], 0.5 to 16; the outer corner radius (2 T to 6 mm, 2.5 T to 10 mm, then 3 T) fits twice into the smaller side.</param>
    /// <returns>The properties; y is the axis parallel to the width.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN, or the corners do not fit.</exception>
    /// <source>EN 10219-2:2006, annex B</source>
    public static SectionProperties ColdFormed(double heightMm, double widthMm, double wallMm)
    {
        var (outerFactor, innerFactor) = wallMm switch
        {
            <= 6 => (2.0, 1.0),
            <= 10 => (2.5, 1.5),
            _ => (3.0, 2.0),
        };
        return WithCorners(heightMm, widthMm, wallMm, outerFactor * wallMm, innerFactor * wallMm);
    }

    /// <summary>Properties of a hot-finished section, with outer corner radius 1.5 T and inner T.</summary>
    /// <param name="heightMm">Outside height H [mm], 10 to 500.</param>
    /// <param name="widthMm">Outside width B [mm], 10 to 500.</param>
    /// <param name="wallMm">Wall thickness T [mm], 0.5 to 16; 4 T fits into the smaller side.</param>
    /// <returns>The properties; y is the axis parallel to the width.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN, or the corners do not fit.</exception>
    /// <source>EN 10210-2:2006, annex A (radii and formulas from memory)</source>
    public static SectionProperties HotFinished(double heightMm, double widthMm, double wallMm) =>
        WithCorners(heightMm, widthMm, wallMm, 1.5 * wallMm, wallMm);

    private static SectionProperties WithCorners(
        double heightMm,
        double widthMm,
        double wallMm,
        double outerRadiusMm,
        double innerRadiusMm
    )
    {
        Within.Require(heightMm, 10, 500, "mm");
        Within.Require(widthMm, 10, 500, "mm");
        Within.Require(wallMm, 0.5, 16, "mm");
        var smallerMm = Math.Min(heightMm, widthMm);
        Within.Require(outerRadiusMm, 0, smallerMm / 2, "mm");
        Within.Require(innerRadiusMm, 0, smallerMm / 2 - wallMm, "mm");

        var (B, H, T) = (widthMm, heightMm, wallMm);
        var area =
            2 * T * (B + H - 2 * T) - (4 - Math.PI) * (outerRadiusMm * outerRadiusMm - innerRadiusMm * innerRadiusMm);
        var outerY = Rounded(B, H, outerRadiusMm);
        var innerY = Rounded(B - 2 * T, H - 2 * T, innerRadiusMm);
        var outerZ = Rounded(H, B, outerRadiusMm);
        var innerZ = Rounded(H - 2 * T, B - 2 * T, innerRadiusMm);
        var inertiaY = outerY.Inertia - innerY.Inertia;
        var inertiaZ = outerZ.Inertia - innerZ.Inertia;

        var torsion = Torsion(B, H, T, (outerRadiusMm + innerRadiusMm) / 2);

        return new(
            area,
            SectionProperties.MassOfKgPerM(area),
            2 * (B + H) - 8 * outerRadiusMm + 2 * Math.PI * outerRadiusMm,
            inertiaY,
            inertiaZ,
            2 * inertiaY / H,
            2 * inertiaZ / B,
            outerY.PlasticModulus - innerY.PlasticModulus,
            outerZ.PlasticModulus - innerZ.PlasticModulus,
            torsion.Constant,
            torsion.Modulus
        );
    }

    // Bredt's shear flow around the middle of the wall, and the wall's own twist.
    private static (double Constant, double Modulus) Torsion(double B, double H, double T, double meanRadius)
    {
        var meanLine = 2 * (B - T + (H - T)) - 2 * meanRadius * (4 - Math.PI);
        var enclosed = (B - T) * (H - T) - meanRadius * meanRadius * (4 - Math.PI);
        var k = 2 * enclosed * T / meanLine;
        var constant = T * T * T * meanLine / 3 + 2 * k * enclosed;
        return (constant, constant / (T + k / T));
    }

    // A solid rectangle of the given breadth and depth less its four corner spandrels, about its middle axis.
    private static (double Inertia, double PlasticModulus) Rounded(double breadth, double depth, double radius)
    {
        var cornerArea = CornerSpandrel.AreaFactor * radius * radius;
        var cornerArm = depth / 2 - CornerSpandrel.CentroidFactor * radius;
        var cornerInertia = CornerSpandrel.InertiaFactor * Math.Pow(radius, 4);
        return (
            breadth * Math.Pow(depth, 3) / 12 - 4 * (cornerInertia + cornerArea * cornerArm * cornerArm),
            breadth * depth * depth / 4 - 4 * cornerArea * cornerArm
        );
    }
}
