namespace Shaduf.Steel;

/// <summary>Kind of a member's section.</summary>
public enum SectionKind
{
    /// <summary>Square hollow section.</summary>
    SquareTube,

    /// <summary>Rectangular hollow section.</summary>
    RectangularTube,

    /// <summary>Circular hollow section.</summary>
    RoundTube,

    /// <summary>Equal angle.</summary>
    Angle,

    /// <summary>Slide-in channel of two lapped and welded equal angles.</summary>
    Channel,

    /// <summary>Two slide-in channels back to back: the middle holder.</summary>
    DoubleChannel,
}

/// <summary>A point of a section's outline, from its centroid.</summary>
/// <param name="YMm">Along y [mm].</param>
/// <param name="ZMm">Along z [mm].</param>
public readonly record struct Fibre(double YMm, double ZMm);

/// <summary>
/// Section of a member as the checks use it. y lies along the width, z along the height: moments about y bend it in its
/// height. An angle's heel points to −y and −z. A channel stands upright: lips along +y, the lip of the outer angle at +z.
/// </summary>
/// <param name="Name">Its name.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="HeightMm">Outside height, along z [mm].</param>
/// <param name="WidthMm">Outside width, along y [mm].</param>
/// <param name="WallMm">Thickness of wall or leg [mm].</param>
/// <param name="Frame">Area and second moments about y and z, as the frame takes them.</param>
/// <param name="ElasticModulusYMm3">Elastic modulus about y, farthest fibre [mm3].</param>
/// <param name="ElasticModulusZMm3">Elastic modulus about z, farthest fibre [mm3].</param>
/// <param name="PlasticModulusYMm3">Plastic modulus about y [mm3]; null for angles and channels.</param>
/// <param name="PlasticModulusZMm3">Plastic modulus about z [mm3]; null for angles and channels.</param>
/// <param name="ShearAreaYMm2">Area that carries shear along y [mm2].</param>
/// <param name="ShearAreaZMm2">Area that carries shear along z [mm2].</param>
/// <param name="TorsionModulusMm3">Torque over the largest shear stress, without warping [mm3].</param>
/// <param name="MassKgPerM">Mass of a metre [kg/m].</param>
/// <param name="Curve">Buckling curve.</param>
/// <param name="ProductOfInertiaMm4">Product of inertia about y and z [mm4]; 0 where they are principal axes.</param>
/// <param name="Fibres">Corners of the outline, from the centroid.</param>
public sealed record MemberSection(
    string Name,
    SectionKind Kind,
    double HeightMm,
    double WidthMm,
    double WallMm,
    FrameSection Frame,
    double ElasticModulusYMm3,
    double ElasticModulusZMm3,
    double? PlasticModulusYMm3,
    double? PlasticModulusZMm3,
    double ShearAreaYMm2,
    double ShearAreaZMm2,
    double TorsionModulusMm3,
    double MassKgPerM,
    BucklingCurve Curve,
    double ProductOfInertiaMm4,
    IReadOnlyList<Fibre> Fibres
)
{
    /// <summary>Share taken off a wall that was neither measured nor certified.</summary>
    /// <source>common practice, no source; EN 10219-2 itself lets a wall up to 5 mm be 10 % thin (from memory)</source>
    public const double UnmeasuredShare = 0.10;

    /// <summary>Root radius of an angle, or of the angles of a channel [mm]; 0 for tubes.</summary>
    public double RootRadiusMm { get; init; }

    /// <summary>The slide-in channel that the section is made of; null for tubes and angles.</summary>
    public SlideInChannel? Channel { get; init; }

    /// <summary>Whether a tube is hot finished.</summary>
    public bool IsHotFinished { get; init; }

    /// <summary>Whether it is a tube.</summary>
    public bool IsTube => Kind is SectionKind.SquareTube or SectionKind.RectangularTube or SectionKind.RoundTube;

    /// <summary>Second moment about the weak principal axis [mm4].</summary>
    public double LeastInertiaMm4
    {
        get
        {
            var (y, z) = (Frame.InertiaYMm4, Frame.InertiaZMm4);
            return ((y + z) / 2) - Math.Sqrt(Math.Pow((y - z) / 2, 2) + Math.Pow(ProductOfInertiaMm4, 2));
        }
    }

    /// <summary>Radius of gyration about y [mm].</summary>
    public double GyrationYMm => Math.Sqrt(Frame.InertiaYMm4 / Frame.AreaMm2);

    /// <summary>Radius of gyration about z [mm].</summary>
    public double GyrationZMm => Math.Sqrt(Frame.InertiaZMm4 / Frame.AreaMm2);

    /// <summary>Radius of gyration about the weak principal axis [mm].</summary>
    public double LeastGyrationMm => Math.Sqrt(LeastInertiaMm4 / Frame.AreaMm2);

    /// <summary>A square tube.</summary>
    /// <param name="sideMm">Outside width [mm].</param>
    /// <param name="wallMm">Wall [mm].</param>
    /// <param name="isHotFinished">Hot finished (EN 10210) instead of cold formed (EN 10219).</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of <see cref="SquareHollow"/>.</exception>
    public static MemberSection OfSquare(double sideMm, double wallMm, bool isHotFinished = false) =>
        TubeShape.Hollow(SectionKind.SquareTube, sideMm, sideMm, wallMm, isHotFinished);

    /// <summary>A rectangular tube.</summary>
    /// <param name="heightMm">Outside height [mm].</param>
    /// <param name="widthMm">Outside width [mm].</param>
    /// <param name="wallMm">Wall [mm].</param>
    /// <param name="isHotFinished">Hot finished (EN 10210) instead of cold formed (EN 10219).</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of <see cref="RectangularHollow"/>.</exception>
    public static MemberSection OfRectangle(
        double heightMm,
        double widthMm,
        double wallMm,
        bool isHotFinished = false
    ) => TubeShape.Hollow(SectionKind.RectangularTube, heightMm, widthMm, wallMm, isHotFinished);

    /// <summary>A round tube.</summary>
    /// <param name="diameterMm">Outside diameter [mm].</param>
    /// <param name="wallMm">Wall [mm].</param>
    /// <param name="isHotFinished">Hot finished (EN 10210) instead of cold formed (EN 10219).</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of <see cref="CircularHollow"/>.</exception>
    public static MemberSection OfRound(double diameterMm, double wallMm, bool isHotFinished = false) =>
        TubeShape.Round(diameterMm, wallMm, isHotFinished);

    /// <summary>An equal angle; its axes are parallel to the legs, which point to +y and +z.</summary>
    /// <param name="legMm">Leg [mm].</param>
    /// <param name="thicknessMm">Thickness [mm].</param>
    /// <param name="rootRadiusMm">Root radius [mm]; the toe radius is half of it, at most the thickness.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of <see cref="EqualAngle"/>.</exception>
    public static MemberSection OfAngle(double legMm, double thicknessMm, double rootRadiusMm) =>
        AngleShape.Single(legMm, thicknessMm, rootRadiusMm);

    /// <summary>A slide-in channel of two equal angles.</summary>
    /// <param name="channel">Leg, thickness and places of the angles.</param>
    /// <param name="rootRadiusMm">Root radius of the angles [mm]; the toe radius is half of it, at most the thickness.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of <see cref="EqualAngle"/>.</exception>
    public static MemberSection OfChannel(SlideInChannel channel, double rootRadiusMm) =>
        AngleShape.Composed(SectionKind.Channel, channel, rootRadiusMm);

    /// <summary>Two slide-in channels, webs back to back and welded together.</summary>
    /// <param name="channel">Leg, thickness and places of the angles of each.</param>
    /// <param name="rootRadiusMm">Root radius of the angles [mm]; the toe radius is half of it, at most the thickness.</param>
    /// <returns>The section.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of <see cref="EqualAngle"/>.</exception>
    public static MemberSection OfDoubleChannel(SlideInChannel channel, double rootRadiusMm) =>
        AngleShape.Composed(SectionKind.DoubleChannel, channel, rootRadiusMm);

    /// <summary>The same section with thinner walls: outside sizes stay, a channel keeps its inside depth.</summary>
    /// <param name="share">Share taken off the wall, 0 to 0.5.</param>
    /// <returns>The section as it may be in truth; it keeps its name.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN, or the wall becomes too thin.</exception>
    public MemberSection Thinned(double share = UnmeasuredShare)
    {
        Working.Within.Require(share, 0, 0.5, "");
        var wallMm = WallMm * (1 - share);
        var thinned = Kind switch
        {
            SectionKind.RoundTube => OfRound(HeightMm, wallMm, IsHotFinished),
            SectionKind.Angle => OfAngle(HeightMm, wallMm, RootRadiusMm),
            SectionKind.Channel or SectionKind.DoubleChannel => AngleShape.Composed(
                Kind,
                AngleShape.WithWall(Channel!, wallMm),
                RootRadiusMm
            ),
            _ => TubeShape.Hollow(Kind, HeightMm, WidthMm, wallMm, IsHotFinished),
        };
        return thinned with { Name = Name };
    }
}
