namespace Shaduf.Shape;

/// <summary>
/// A point or an offset in space, in millimetres. Axes: x to the right along the row, y away from the low edge,
/// z up (right-handed).
/// </summary>
/// <param name="XMm">x [mm].</param>
/// <param name="YMm">y [mm].</param>
/// <param name="ZMm">z [mm].</param>
public readonly record struct Point(double XMm, double YMm, double ZMm)
{
    /// <summary>The point moved by an offset.</summary>
    /// <param name="from">The point.</param>
    /// <param name="by">The offset.</param>
    /// <returns>The moved point.</returns>
    public static Point operator +(Point from, Point by) =>
        new(from.XMm + by.XMm, from.YMm + by.YMm, from.ZMm + by.ZMm);

    /// <summary>The offset that leads to a point from another.</summary>
    /// <param name="to">Where the offset ends.</param>
    /// <param name="from">Where it starts.</param>
    /// <returns>The offset.</returns>
    public static Point operator -(Point to, Point from) =>
        new(to.XMm - from.XMm, to.YMm - from.YMm, to.ZMm - from.ZMm);

    /// <summary>An offset made longer or shorter.</summary>
    /// <param name="offset">The offset.</param>
    /// <param name="factor">By how much.</param>
    /// <returns>The new offset.</returns>
    public static Point operator *(Point offset, double factor) =>
        new(offset.XMm * factor, offset.YMm * factor, offset.ZMm * factor);

    /// <summary>Length of the offset [mm].</summary>
    public double LengthMm => Math.Sqrt((XMm * XMm) + (YMm * YMm) + (ZMm * ZMm));

    /// <summary>Scalar product of two offsets [mm²].</summary>
    /// <param name="other">The other offset.</param>
    /// <returns>The product [mm²].</returns>
    public double DotMm2(Point other) => (XMm * other.XMm) + (YMm * other.YMm) + (ZMm * other.ZMm);
}
