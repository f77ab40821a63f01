using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Where two sides of a fence meet that should not.</summary>
/// <param name="FirstIndex">The one side, from 0.</param>
/// <param name="SecondIndex">The other, from 0.</param>
/// <param name="EastM">To the east [m].</param>
/// <param name="NorthM">To the north [m].</param>
public sealed record FenceCrossing(int FirstIndex, int SecondIndex, double EastM, double NorthM);

/// <summary>The closed line of a fence from above.</summary>
public static class FenceOutline
{
    private const double TouchM = 1e-6;

    /// <summary>The first place where a side meets another than at the corner they share.</summary>
    /// <param name="line">The points in order, three at least.</param>
    /// <returns>The place; null when the line crosses and touches itself nowhere.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than three points or more than 1000.</exception>
    /// <source>geometry</source>
    public static FenceCrossing? Crossing(IReadOnlyList<FencePoint> line)
    {
        Within.RequireCount(line.Count, 3, 1000);
        for (var i = 0; i < line.Count; i++)
        {
            for (var j = i + 1; j < line.Count; j++)
            {
                if (Meeting(line, i, j) is var (eastM, northM))
                {
                    return new(i, j, eastM, northM);
                }
            }
        }

        return null;
    }

    /// <summary>Least free ground between a fence and what it goes round.</summary>
    /// <param name="line">The points of the fence in order.</param>
    /// <param name="inside">The corners of what is to lie inside, in order; a single one for a pole.</param>
    /// <returns>Distance [m]; 0 where the fence crosses it, below 0 where it lies outside.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than three points or more than 1000, or nothing inside.</exception>
    /// <source>geometry</source>
    public static double FreeM(IReadOnlyList<FencePoint> line, IReadOnlyList<FencePoint> inside)
    {
        Within.RequireCount(line.Count, 3, 1000);
        Within.RequireCount(inside.Count, 1, 1000);
        var leastM = double.PositiveInfinity;
        for (var i = 0; i < line.Count; i++)
        {
            for (var j = 0; j < inside.Count; j++)
            {
                leastM = Math.Min(leastM, BetweenM(Side(line, i), Side(inside, j)));
            }
        }

        return leastM > 0 && !Holds(line, inside[0]) ? -leastM : leastM;
    }

    private static (FencePoint A, FencePoint B) Side(IReadOnlyList<FencePoint> line, int index) =>
        (line[index], line[(index + 1) % line.Count]);

    // Sides that share a corner meet elsewhere only when one lies back on the other.
    private static (double EastM, double NorthM)? Meeting(IReadOnlyList<FencePoint> line, int i, int j)
    {
        var (first, second) = (Side(line, i), Side(line, j));
        var (isNext, isLast) = (j == i + 1, i == 0 && j == line.Count - 1);
        if (!isNext && !isLast)
        {
            return BetweenM(first, second) > TouchM ? null : At(first, second);
        }

        var (end, far) = isNext ? (second.B, first.A) : (second.A, first.B);
        return OffM(end, first) <= TouchM ? (end.EastM, end.NorthM)
            : OffM(far, second) <= TouchM ? (far.EastM, far.NorthM)
            : null;
    }

    // Where two segments that meet do so: at their crossing, or at the end of one that lies on the other.
    private static (double EastM, double NorthM) At(
        (FencePoint A, FencePoint B) first,
        (FencePoint A, FencePoint B) second
    )
    {
        if (Crossed(first, second) is { } share)
        {
            var at = first.A.Toward(first.B, share);
            return (at.EastM, at.NorthM);
        }

        var on = new[]
        {
            (first.A, OffM(first.A, second)),
            (first.B, OffM(first.B, second)),
            (second.A, OffM(second.A, first)),
            (second.B, OffM(second.B, first)),
        }
            .MinBy(each => each.Item2)
            .Item1;
        return (on.EastM, on.NorthM);
    }

    private static double BetweenM((FencePoint A, FencePoint B) first, (FencePoint A, FencePoint B) second) =>
        Crossed(first, second) is not null
            ? 0
            : Math.Min(
                Math.Min(OffM(first.A, second), OffM(first.B, second)),
                Math.Min(OffM(second.A, first), OffM(second.B, first))
            );

    // Share of the first segment at which the second crosses it; null where it does not, or runs alongside.
    private static double? Crossed((FencePoint A, FencePoint B) first, (FencePoint A, FencePoint B) second)
    {
        var (a, b) = (first.A, second.A);
        var (ax, ay) = (first.B.EastM - a.EastM, first.B.NorthM - a.NorthM);
        var (bx, by) = (second.B.EastM - b.EastM, second.B.NorthM - b.NorthM);
        var cross = (ax * by) - (ay * bx);
        if (cross == 0)
        {
            return null;
        }

        var (dx, dy) = (b.EastM - a.EastM, b.NorthM - a.NorthM);
        var (s, t) = (((dx * by) - (dy * bx)) / cross, ((dx * ay) - (dy * ax)) / cross);
        return s is >= 0 and <= 1 && t is >= 0 and <= 1 ? s : null;
    }

    // From a point to a segment.
    private static double OffM(FencePoint point, (FencePoint A, FencePoint B) side)
    {
        var (x, y) = (side.B.EastM - side.A.EastM, side.B.NorthM - side.A.NorthM);
        var (px, py) = (point.EastM - side.A.EastM, point.NorthM - side.A.NorthM);
        var lengthM2 = (x * x) + (y * y);
        var share = lengthM2 > 0 ? Math.Clamp(((px * x) + (py * y)) / lengthM2, 0, 1) : 0;
        return double.Hypot(px - (share * x), py - (share * y));
    }

    private static bool Holds(IReadOnlyList<FencePoint> line, FencePoint point)
    {
        var isInside = false;
        for (var i = 0; i < line.Count; i++)
        {
            var (a, b) = Side(line, i);
            if (
                a.NorthM > point.NorthM != b.NorthM > point.NorthM
                && point.EastM < a.EastM + ((b.EastM - a.EastM) * (point.NorthM - a.NorthM) / (b.NorthM - a.NorthM))
            )
            {
                isInside = !isInside;
            }
        }

        return isInside;
    }
}
