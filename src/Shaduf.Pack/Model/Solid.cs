using Shaduf.Shape;

namespace Shaduf.Pack;

/// <summary>Convex bodies as their plane faces, corners counter-clockwise as seen from outside.</summary>
public static class Solid
{
    /// <summary>What lies between two outlines of as many corners.</summary>
    /// <param name="from">Corners of one end, in order.</param>
    /// <param name="to">Corners of the other end, each opposite its fellow.</param>
    /// <returns>The faces.</returns>
    public static IReadOnlyList<IReadOnlyList<Point>> Prism(IReadOnlyList<Point> from, IReadOnlyList<Point> to)
    {
        var centre = Middle([.. from, .. to]);
        return
        [
            .. Enumerable
                .Range(0, from.Count)
                .Select(i => (i, Next: (i + 1) % from.Count))
                .Select(side => (IReadOnlyList<Point>)[from[side.i], from[side.Next], to[side.Next], to[side.i]])
                .Append(from)
                .Append(to)
                .Select(face => Outwards(face, centre)),
        ];
    }

    /// <summary>A box of three edges that meet in a corner.</summary>
    /// <param name="corner">The corner.</param>
    /// <param name="along">One edge.</param>
    /// <param name="across">The next.</param>
    /// <param name="up">The third.</param>
    /// <returns>The faces.</returns>
    public static IReadOnlyList<IReadOnlyList<Point>> Box(Point corner, Point along, Point across, Point up)
    {
        Point[] end = [corner, corner + across, corner + across + up, corner + up];
        return Prism(end, [.. end.Select(point => point + along)]);
    }

    /// <summary>An upright round post with sixteen sides.</summary>
    /// <param name="foot">Middle of its foot.</param>
    /// <param name="diameterMm">Its diameter [mm], above 0.</param>
    /// <param name="heightMm">Its height [mm], above 0.</param>
    /// <returns>The faces.</returns>
    public static IReadOnlyList<IReadOnlyList<Point>> Post(Point foot, double diameterMm, double heightMm)
    {
        const int sides = 16;
        Point[] ring =
        [
            .. Enumerable
                .Range(0, sides)
                .Select(i => Math.SinCos(2 * Math.PI * i / sides))
                .Select(turn => foot + new Point(turn.Cos * diameterMm / 2, turn.Sin * diameterMm / 2, 0)),
        ];
        return Prism(ring, [.. ring.Select(point => point + new Point(0, 0, heightMm))]);
    }

    /// <summary>Direction square to a face, as its corners turn; length 1.</summary>
    /// <param name="face">The face.</param>
    /// <returns>The direction.</returns>
    public static Point Normal(IReadOnlyList<Point> face)
    {
        var cross = Cross(face[1] - face[0], face[^1] - face[0]);
        return cross * (1 / cross.LengthMm);
    }

    internal static Point Cross(Point a, Point b) =>
        new((a.YMm * b.ZMm) - (a.ZMm * b.YMm), (a.ZMm * b.XMm) - (a.XMm * b.ZMm), (a.XMm * b.YMm) - (a.YMm * b.XMm));

    private static Point Middle(IReadOnlyList<Point> points) =>
        points.Aggregate((sum, point) => sum + point) * (1.0 / points.Count);

    private static IReadOnlyList<Point> Outwards(IReadOnlyList<Point> face, Point centre) =>
        Normal(face).DotMm2(Middle(face) - centre) >= 0 ? face : [.. face.Reverse()];
}
