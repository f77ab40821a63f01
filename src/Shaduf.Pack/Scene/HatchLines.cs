using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>The strokes of a hatched area.</summary>
public static class HatchLines
{
    /// <summary>Works out the strokes of a hatch, cut at its boundary. A dot is a very short stroke.</summary>
    /// <param name="hatch">The hatch; spacing 0.5 to 20 mm.</param>
    /// <returns>The strokes, in a fixed order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is out of range.</exception>
    public static IReadOnlyList<(PaperPoint From, PaperPoint To)> Of(HatchItem hatch)
    {
        Within.Require(hatch.SpacingMm, 0.5, 20, "mm");
        return [.. Strokes(hatch.Pattern, hatch.Box, hatch.SpacingMm).SelectMany(s => Cut(s, hatch.Boundary))];
    }

    private static IEnumerable<(PaperPoint From, PaperPoint To)> Strokes(
        HatchPattern pattern,
        PaperBox box,
        double spacingMm
    ) =>
        pattern switch
        {
            HatchPattern.Diagonal => Parallels(box, spacingMm, -1),
            HatchPattern.DiagonalBack => Parallels(box, spacingMm, 1),
            HatchPattern.Cross => Parallels(box, spacingMm, -1).Concat(Parallels(box, spacingMm, 1)),
            HatchPattern.Horizontal => Rows(box, spacingMm)
                .Select(row => (new PaperPoint(box.LeftMm, row.YMm), new PaperPoint(box.RightMm, row.YMm))),
            HatchPattern.Vertical => Columns(box, spacingMm)
                .Select(x => (new PaperPoint(x, box.TopMm), new PaperPoint(x, box.BottomMm))),
            HatchPattern.Steel => Parallels(box, spacingMm * 1.5, -1)
                .SelectMany(s => new[] { s, (s.From.Moved(spacingMm / 2, 0), s.To.Moved(spacingMm / 2, 0)) }),
            HatchPattern.Sand => Grid(box, spacingMm).Select(spot => Dot(spot.Jittered(spacingMm))),
            HatchPattern.Concrete => Grid(box, spacingMm * 1.5).SelectMany(spot => ConcreteAt(spot, spacingMm)),
            HatchPattern.Earth => Grid(box, spacingMm * 2.5).SelectMany(spot => EarthAt(spot, spacingMm)),
            HatchPattern.Gravel => Grid(box, spacingMm * 1.2).SelectMany(spot => StoneAt(spot, spacingMm)),
            HatchPattern.Water => Rows(box, spacingMm).SelectMany(row => Waves(row, box, spacingMm)),
            _ => throw new ArgumentOutOfRangeException(nameof(pattern), pattern, "There is no such pattern."),
        };

    // A place in a grid over the box; the jitter is a fixed function of row and column, so pictures repeat exactly.
    private readonly record struct Spot(int Row, int Column, double XMm, double YMm)
    {
        public double Chance(int salt)
        {
            var mixed = unchecked(
                ((uint)Row * 2654435761u) ^ ((uint)Column * 2246822519u) ^ ((uint)salt * 3266489917u)
            );
            mixed = unchecked((mixed ^ (mixed >> 15)) * 2246822519u);
            return (mixed ^ (mixed >> 13)) / (double)uint.MaxValue;
        }

        public PaperPoint Jittered(double stepMm) =>
            new(XMm + ((Chance(1) - 0.5) * stepMm * 0.8), YMm + ((Chance(2) - 0.5) * stepMm * 0.8));
    }

    private static IEnumerable<(int Row, double YMm)> Rows(PaperBox box, double stepMm) =>
        Enumerable
            .Range(0, (int)Math.Floor(box.HeightMm / stepMm) + 1)
            .Select(row => (row, box.TopMm + ((row + 0.5) * stepMm)));

    private static IEnumerable<double> Columns(PaperBox box, double stepMm) =>
        Enumerable
            .Range(0, (int)Math.Floor(box.WidthMm / stepMm) + 1)
            .Select(column => box.LeftMm + ((column + 0.5) * stepMm));

    private static IEnumerable<Spot> Grid(PaperBox box, double stepMm) =>
        Rows(box, stepMm)
            .SelectMany(r => Columns(box, stepMm).Select((x, column) => new Spot(r.Row, column, x, r.YMm)));

    // Lines at 45 degrees, `spacingMm` apart square to themselves; slope 1 falls to the right on the paper.
    private static IEnumerable<(PaperPoint From, PaperPoint To)> Parallels(PaperBox box, double spacingMm, int slope)
    {
        var stepMm = spacingMm * Math.Sqrt(2);
        var heightMm = box.HeightMm;
        for (var xMm = box.LeftMm - heightMm + (stepMm / 2); xMm < box.RightMm; xMm += stepMm)
        {
            yield return slope > 0
                ? (new(xMm, box.TopMm), new(xMm + heightMm, box.BottomMm))
                : (new(xMm, box.BottomMm), new(xMm + heightMm, box.TopMm));
        }
    }

    private static (PaperPoint From, PaperPoint To) Dot(PaperPoint at) => (at.Moved(-0.1, 0), at.Moved(0.1, 0));

    private static IEnumerable<(PaperPoint From, PaperPoint To)> ConcreteAt(Spot spot, double spacingMm) =>
        spot.Chance(3) < 0.35
            ? Ring(spot.Jittered(spacingMm), spacingMm * 0.35, 3, spot.Chance(4))
            : [Dot(spot.Jittered(spacingMm * 1.5))];

    private static IEnumerable<(PaperPoint From, PaperPoint To)> StoneAt(Spot spot, double spacingMm) =>
        Ring(spot.Jittered(spacingMm * 0.25), spacingMm * (0.32 + (0.16 * spot.Chance(3))), 7, spot.Chance(4));

    private static IEnumerable<(PaperPoint From, PaperPoint To)> Ring(
        PaperPoint centre,
        double radiusMm,
        int corners,
        double turn
    )
    {
        PaperPoint Corner(int i)
        {
            var (sin, cos) = Math.SinCos((i + turn) * 2 * Math.PI / corners);
            return centre.Moved(radiusMm * cos, radiusMm * sin);
        }

        return Enumerable.Range(0, corners).Select(i => (Corner(i), Corner(i + 1)));
    }

    private static IEnumerable<(PaperPoint From, PaperPoint To)> EarthAt(Spot spot, double spacingMm)
    {
        var reachMm = spacingMm * 0.8;
        var rise = (spot.Row + spot.Column) % 2 == 0 ? reachMm : -reachMm;
        var centre = new PaperPoint(spot.XMm, spot.YMm);
        return new[] { -1, 0, 1 }.Select(i =>
            (centre.Moved((i * spacingMm * 0.6) - reachMm, rise), centre.Moved((i * spacingMm * 0.6) + reachMm, -rise))
        );
    }

    private static IEnumerable<(PaperPoint From, PaperPoint To)> Waves(
        (int Row, double YMm) row,
        PaperBox box,
        double spacingMm
    )
    {
        var startMm = box.LeftMm - (row.Row % 3 * spacingMm * 1.7);
        for (var xMm = startMm; xMm < box.RightMm; xMm += spacingMm * 5)
        {
            yield return (new(xMm, row.YMm), new(xMm + (spacingMm * 3), row.YMm));
        }
    }

    // The pieces of a stroke inside the boundary: even-odd rule.
    private static IEnumerable<(PaperPoint From, PaperPoint To)> Cut(
        (PaperPoint From, PaperPoint To) stroke,
        IReadOnlyList<PaperPoint> boundary
    )
    {
        var (from, to) = stroke;
        var (dx, dy) = (to.XMm - from.XMm, to.YMm - from.YMm);
        var cuts = new List<double> { 0, 1 };
        for (var i = 0; i < boundary.Count; i++)
        {
            if (Crossing(stroke, boundary[i], boundary[(i + 1) % boundary.Count]) is { } along)
            {
                cuts.Add(along);
            }
        }

        cuts.Sort();
        PaperPoint At(double share) => from.Moved(dx * share, dy * share);
        return cuts.Zip(cuts.Skip(1))
            .Where(piece =>
                piece.Second - piece.First > 1e-9 && IsInside(At((piece.First + piece.Second) / 2), boundary)
            )
            .Select(piece => (At(piece.First), At(piece.Second)));
    }

    // Share of the stroke at which it crosses the edge from a to b; null when it does not.
    private static double? Crossing((PaperPoint From, PaperPoint To) stroke, PaperPoint a, PaperPoint b)
    {
        var (from, to) = stroke;
        var (dx, dy) = (to.XMm - from.XMm, to.YMm - from.YMm);
        var (ex, ey) = (b.XMm - a.XMm, b.YMm - a.YMm);
        var cross = (dx * ey) - (dy * ex);
        if (cross == 0)
        {
            return null;
        }

        var along = (((a.XMm - from.XMm) * ey) - ((a.YMm - from.YMm) * ex)) / cross;
        var onEdge = (((a.XMm - from.XMm) * dy) - ((a.YMm - from.YMm) * dx)) / cross;
        return along is > 0 and < 1 && onEdge is >= 0 and <= 1 ? along : null;
    }

    private static bool IsInside(PaperPoint point, IReadOnlyList<PaperPoint> boundary)
    {
        var isInside = false;
        for (var i = 0; i < boundary.Count; i++)
        {
            var (a, b) = (boundary[i], boundary[(i + 1) % boundary.Count]);
            if (
                a.YMm > point.YMm != b.YMm > point.YMm
                && point.XMm < a.XMm + ((point.YMm - a.YMm) / (b.YMm - a.YMm) * (b.XMm - a.XMm))
            )
            {
                isInside = !isInside;
            }
        }

        return isInside;
    }
}
