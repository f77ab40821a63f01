using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Hot-rolled equal angle: its section about axes parallel to the legs, and its principal axes.</summary>
/// <param name="Section">Properties about the axes through the centroid parallel to the legs.</param>
/// <param name="CentroidMm">Distance of the centroid from the back of each leg [mm].</param>
/// <param name="ProductOfInertiaMm4">Product of inertia about y and z, legs along +y and +z from the heel: negative [mm4].</param>
/// <param name="InertiaUMm4">Second moment about the axis of symmetry u, the strong one [mm4].</param>
/// <param name="InertiaVMm4">Second moment about the weak axis v [mm4].</param>
public sealed record EqualAngle(
    SectionProperties Section,
    double CentroidMm,
    double ProductOfInertiaMm4,
    double InertiaUMm4,
    double InertiaVMm4
)
{
    /// <summary>Radius of gyration about the strong axis u [mm].</summary>
    public double RadiusOfGyrationUMm => Math.Sqrt(InertiaUMm4 / Section.AreaMm2);

    /// <summary>Radius of gyration about the weak axis v [mm].</summary>
    public double RadiusOfGyrationVMm => Math.Sqrt(InertiaVMm4 / Section.AreaMm2);

    /// <summary>
    /// Properties of an equal angle with rounded root and toes, sharp heel. The torsion constant leaves out the root
    /// fillet and is about a tenth low.
    /// </summary>
    /// <param name="legMm">Leg a, outside [mm], 15 to 250.</param>
    /// <param name="thicknessMm">Leg thickness t [mm], 2 to 40, at most a third of the leg.</param>
    /// <param name="rootRadiusMm">Root radius r1 [mm], 0 to 40, at most the leg less its thickness less the toe radius.</param>
    /// <param name="toeRadiusMm">Toe radius r2 [mm], 0 to 40, at most the thickness.</param>
    /// <returns>The angle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 10056-1:2017 for the shape; exact composition of rectangles and corner pieces; J = (2 a - t) t^3/3</source>
    public static EqualAngle Of(double legMm, double thicknessMm, double rootRadiusMm, double toeRadiusMm)
    {
        Within.Require(legMm, 15, 250, "mm");
        Within.Require(thicknessMm, 2, Math.Min(40, legMm / 3), "mm");
        Within.Require(toeRadiusMm, 0, thicknessMm, "mm");
        Within.Require(rootRadiusMm, 0, Math.Min(40, legMm - thicknessMm - toeRadiusMm), "mm");

        var (a, t) = (legMm, thicknessMm);
        Piece[] pieces =
        [
            new(t * a, t / 2, a / 2, t * a * a * a / 12, 0),
            new((a - t) * t, (a + t) / 2, t / 2, (a - t) * t * t * t / 12, 0),
            Spandrel(rootRadiusMm, t, t, opens: 1, sign: 1),
            Spandrel(toeRadiusMm, t, a, opens: -1, sign: -1),
            Spandrel(toeRadiusMm, a, t, opens: -1, sign: -1),
        ];
        var area = pieces.Sum(piece => piece.Area);
        var centroid = pieces.Sum(piece => piece.Area * piece.Y) / area;
        var inertia = pieces.Sum(piece => piece.OwnInertia + piece.Area * Math.Pow(piece.Y - centroid, 2));
        var product = pieces.Sum(piece => piece.OwnProduct + piece.Area * (piece.X - centroid) * (piece.Y - centroid));
        var elastic = inertia / (a - centroid);
        var torsion = (2 * a - t) * t * t * t / 3;
        var section = new SectionProperties(
            area,
            SectionProperties.MassOfKgPerM(area),
            4 * a - (2 - Math.PI / 2) * (rootRadiusMm + 2 * toeRadiusMm),
            inertia,
            inertia,
            elastic,
            elastic,
            null,
            null,
            torsion,
            torsion / t
        );
        return new(section, centroid, product, inertia + Math.Abs(product), inertia - Math.Abs(product));
    }

    // Centroid from the heel; own moments about the piece's centroid, for the axis along x.
    private readonly record struct Piece(double Area, double X, double Y, double OwnInertia, double OwnProduct);

    private static Piece Spandrel(double radius, double cornerX, double cornerY, int opens, int sign)
    {
        var shift = opens * CornerSpandrel.CentroidFactor * radius;
        var fourth = Math.Pow(radius, 4);
        return new(
            sign * CornerSpandrel.AreaFactor * radius * radius,
            cornerX + shift,
            cornerY + shift,
            sign * CornerSpandrel.InertiaFactor * fourth,
            sign * CornerSpandrel.ProductFactor * fourth
        );
    }
}
