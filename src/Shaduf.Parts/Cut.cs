using Shaduf.Shape;

namespace Shaduf.Parts;

/// <summary>The plane that ends a part.</summary>
/// <param name="At">A point of the plane.</param>
/// <param name="Normal">Its normal, any length.</param>
public readonly record struct CutPlane(Point At, Point Normal);

/// <summary>Lengths and saw angles of a square tube cut by a plane at each end.</summary>
/// <param name="LongPointMm">Longest edge [mm].</param>
/// <param name="ShortPointMm">Shortest edge [mm].</param>
/// <param name="StartDeg">Saw angle at the start, from a square cut [deg].</param>
/// <param name="EndDeg">Saw angle at the end, from a square cut [deg].</param>
/// <param name="Start">Where the axis meets the first plane.</param>
/// <param name="End">Where the axis meets the second plane.</param>
public sealed record Cut(
    double LongPointMm,
    double ShortPointMm,
    double StartDeg,
    double EndDeg,
    Point Start,
    Point End
)
{
    /// <summary>Normal of the plane at the start, any length; null for a square cut.</summary>
    public Point? StartNormal { get; init; }

    /// <summary>Normal of the plane at the end, any length; null for a square cut.</summary>
    public Point? EndNormal { get; init; }

    /// <summary>The plane at the start.</summary>
    public CutPlane StartPlane => new(Start, StartNormal ?? (End - Start));

    /// <summary>The plane at the end.</summary>
    public CutPlane EndPlane => new(End, EndNormal ?? (End - Start));

    /// <summary>
    /// Length that a square tube takes from its bar, from its first to its last point: more than any of its edges where
    /// both ends lean the same way.
    /// </summary>
    /// <param name="sideMm">Side of the tube [mm].</param>
    /// <returns>Length [mm].</returns>
    public double AlongBarMm(double sideMm) =>
        Math.Max(LongPointMm, ((LongPointMm + ShortPointMm) / 2) + (sideMm / 2 * (Tan(StartDeg) + Tan(EndDeg))));

    private static double Tan(double deg) => Math.Tan(deg * Math.PI / 180);

    /// <summary>Cuts a square tube, whose sides lie in and across a vertical plane, at two planes.</summary>
    /// <param name="from">A point of the axis near the start.</param>
    /// <param name="to">A point of the axis near the end.</param>
    /// <param name="sideMm">Side of the tube [mm].</param>
    /// <param name="start">Plane at the start.</param>
    /// <param name="end">Plane at the end.</param>
    /// <returns>The cut.</returns>
    /// <exception cref="ArgumentException">The axis has no length, or runs along a plane (saw angle above 78 deg).</exception>
    /// <source>Plane and straight line; the limit is a workshop's: beyond it no saw can hold the tube.</source>
    public static Cut Of(Point from, Point to, double sideMm, CutPlane start, CutPlane end)
    {
        var along = to - from;
        if (!(along.LengthMm > 0))
        {
            throw new ArgumentException("a part without length");
        }

        var axis = along * (1 / along.LengthMm);
        var edges = Corners(axis, sideMm / 2)
            .Select(corner => Reach(from + corner, axis, end) - Reach(from + corner, axis, start))
            .ToList();
        return new(
            edges.Max(),
            edges.Min(),
            AngleDeg(axis, start.Normal),
            AngleDeg(axis, end.Normal),
            from + (axis * Reach(from, axis, start)),
            from + (axis * Reach(from, axis, end))
        )
        {
            StartNormal = start.Normal,
            EndNormal = end.Normal,
        };
    }

    private static Point[] Corners(Point axis, double halfMm)
    {
        var (side, up) = Across(axis);
        return
        [
            (side * halfMm) + (up * halfMm),
            (side * halfMm) + (up * -halfMm),
            (side * -halfMm) + (up * halfMm),
            (side * -halfMm) + (up * -halfMm),
        ];
    }

    // Two directions across the axis: one level, one in the vertical plane of the axis (x and y for an upright part).
    private static (Point Side, Point Up) Across(Point axis)
    {
        var level = new Point(-axis.YMm, axis.XMm, 0);
        var side = level.LengthMm > 1e-9 ? level * (1 / level.LengthMm) : new Point(1, 0, 0);
        var up = new Point(
            (axis.YMm * side.ZMm) - (axis.ZMm * side.YMm),
            (axis.ZMm * side.XMm) - (axis.XMm * side.ZMm),
            (axis.XMm * side.YMm) - (axis.YMm * side.XMm)
        );
        return (side, up);
    }

    private static double Reach(Point from, Point axis, CutPlane plane)
    {
        var slope = plane.Normal.DotMm2(axis);
        return Math.Abs(slope) > 0.2 * plane.Normal.LengthMm
            ? plane.Normal.DotMm2(plane.At - from) / slope
            : throw new ArgumentException("a cut of more than 78 deg from square: use another detail");
    }

    private static double AngleDeg(Point axis, Point normal) =>
        Math.Acos(Math.Min(1, Math.Abs(normal.DotMm2(axis)) / normal.LengthMm)) * 180 / Math.PI;
}
