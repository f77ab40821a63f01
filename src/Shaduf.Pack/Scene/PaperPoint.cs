namespace Shaduf.Pack;

/// <summary>A point on the paper. Origin at the top left of the sheet, y down.</summary>
/// <param name="XMm">Distance from the left edge [mm].</param>
/// <param name="YMm">Distance from the top edge [mm].</param>
public readonly record struct PaperPoint(double XMm, double YMm)
{
    /// <summary>The point moved on the paper.</summary>
    /// <param name="rightMm">To the right [mm].</param>
    /// <param name="downMm">Down [mm].</param>
    /// <returns>The moved point.</returns>
    public PaperPoint Moved(double rightMm, double downMm) => new(XMm + rightMm, YMm + downMm);

    internal double DistanceMm(PaperPoint other) => Math.Sqrt(Square(XMm - other.XMm) + Square(YMm - other.YMm));

    private static double Square(double value) => value * value;
}

/// <summary>An upright box on the paper.</summary>
/// <param name="LeftMm">Left edge [mm].</param>
/// <param name="TopMm">Top edge [mm].</param>
/// <param name="RightMm">Right edge [mm], at or right of the left one.</param>
/// <param name="BottomMm">Bottom edge [mm], at or below the top one.</param>
public readonly record struct PaperBox(double LeftMm, double TopMm, double RightMm, double BottomMm)
{
    /// <summary>Width [mm].</summary>
    public double WidthMm => RightMm - LeftMm;

    /// <summary>Height [mm].</summary>
    public double HeightMm => BottomMm - TopMm;

    /// <summary>The middle of the box.</summary>
    public PaperPoint Centre => new((LeftMm + RightMm) / 2, (TopMm + BottomMm) / 2);

    /// <summary>The corners, clockwise from the top left.</summary>
    public IReadOnlyList<PaperPoint> Corners =>
        [new(LeftMm, TopMm), new(RightMm, TopMm), new(RightMm, BottomMm), new(LeftMm, BottomMm)];

    /// <summary>The box made larger on all sides.</summary>
    /// <param name="byMm">By how much [mm]; negative makes it smaller.</param>
    /// <returns>The larger box.</returns>
    public PaperBox Grown(double byMm) => new(LeftMm - byMm, TopMm - byMm, RightMm + byMm, BottomMm + byMm);

    /// <summary>Whether a point lies in the box or on its edge.</summary>
    /// <param name="point">The point.</param>
    /// <returns>True when it does, to a thousandth of a millimetre.</returns>
    public bool Holds(PaperPoint point) =>
        point.XMm >= LeftMm - 0.001
        && point.XMm <= RightMm + 0.001
        && point.YMm >= TopMm - 0.001
        && point.YMm <= BottomMm + 0.001;

    /// <summary>The smallest box round points.</summary>
    /// <param name="points">At least one point.</param>
    /// <returns>The box.</returns>
    /// <exception cref="InvalidOperationException">There are no points.</exception>
    public static PaperBox Round(IReadOnlyCollection<PaperPoint> points) =>
        new(points.Min(p => p.XMm), points.Min(p => p.YMm), points.Max(p => p.XMm), points.Max(p => p.YMm));
}

/// <summary>Size of a sheet or of a picture.</summary>
/// <param name="WidthMm">Width [mm], above 0.</param>
/// <param name="HeightMm">Height [mm], above 0.</param>
/// <source>ISO 216 and ISO 5457 for the named sizes.</source>
public readonly record struct PaperSize(double WidthMm, double HeightMm)
{
    /// <summary>A4 upright, 210 x 297 mm.</summary>
    public static PaperSize A4Upright => new(210, 297);

    /// <summary>A4 landscape, 297 x 210 mm.</summary>
    public static PaperSize A4Landscape => new(297, 210);

    /// <summary>A3 upright, 297 x 420 mm.</summary>
    public static PaperSize A3Upright => new(297, 420);

    /// <summary>A3 landscape, 420 x 297 mm.</summary>
    public static PaperSize A3Landscape => new(420, 297);

    /// <summary>The whole sheet as a box.</summary>
    public PaperBox Box => new(0, 0, WidthMm, HeightMm);
}
