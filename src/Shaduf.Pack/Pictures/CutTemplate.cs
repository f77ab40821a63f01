using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Templates of slanting ends at 1:1, to be wrapped round the tube and marked along.</summary>
public static class CutTemplate
{
    private const double BandMm = 18;
    private const double BarMm = 100;
    private const double WidestMm = 170;
    private const double HighestMm = 215;

    /// <summary>The sentence that goes with every template.</summary>
    public const string Caution = "Print at 100 %: the bar must measure 100 mm. Fit one piece before the batch is cut.";

    /// <summary>Whether a square tube's template has room on an A4 page with its title and bar.</summary>
    /// <param name="sideMm">Side of the tube [mm], above 0.</param>
    /// <param name="sawDeg">Saw angle [deg], 0 to 78.</param>
    /// <returns>True when it has.</returns>
    public static bool Fits(double sideMm, double sawDeg)
    {
        var strips = 4 * sideMm > WidestMm ? 2 : 1;
        return 2 * sideMm <= WidestMm && strips * (SlantMm(sideMm, sawDeg) + BandMm + 6) <= HighestMm;
    }

    /// <summary>How far the short point lies behind the long one.</summary>
    internal static double SlantMm(double sideMm, double sawDeg) => sideMm * Math.Tan(sawDeg * Math.PI / 180);

    /// <summary>The four faces of a square tube, unfolded.</summary>
    /// <param name="title">Mark and end.</param>
    /// <param name="sideMm">Side of the tube [mm], 10 to 85.</param>
    /// <param name="sawDeg">Saw angle [deg], 0 to 78.</param>
    /// <returns>The picture at 1:1, cut lines thick, folds thin.</returns>
    public static Scene Square(string title, double sideMm, double sawDeg)
    {
        var deepMm = SlantMm(sideMm, sawDeg);
        var builder = Begun(title, deepMm, out var top);
        var isLong = 4 * sideMm > WidestMm;
        var widthMm = isLong ? 2 * sideMm : 4 * sideMm;
        Faces(builder, new(1, top), sideMm, [deepMm, 0, 0, deepMm], isLong ? 2 : 4);
        if (isLong)
        {
            Faces(builder, new(1, top + deepMm + BandMm + 6), sideMm, [0, deepMm, deepMm, 0], 2);
        }

        var bottom = top + ((deepMm + BandMm + 6) * (isLong ? 2 : 1));
        Ruler(builder, new(1, bottom));
        return Ended(builder, widthMm + 2, bottom);
    }

    /// <summary>
    /// The surface of a round tube, unfolded: distance behind the long point by the angle round the tube. A tube too wide for
    /// a page has its template in strips, which are laid end to end on their joins.
    /// </summary>
    /// <param name="title">Mark and end.</param>
    /// <param name="diameterMm">Outer diameter [mm], 10 to 500.</param>
    /// <param name="behindMm">Distance behind the long point [mm] at an angle round the tube [deg], the seam at 0.</param>
    /// <returns>The strips at 1:1, 16 ordinates in all, each strip with its bar.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range, or NaN.</exception>
    public static IReadOnlyList<Scene> Round(string title, double diameterMm, Func<double, double> behindMm)
    {
        Within.Require(diameterMm, 10, 500, "mm");
        var count = (int)Math.Ceiling(Math.PI * diameterMm / WidestMm);
        return
        [
            .. Enumerable
                .Range(0, count)
                .Select(i =>
                    Strip(
                        count == 1 ? title : Invariant($"{title}, strip {i + 1} of {count}"),
                        diameterMm,
                        behindMm,
                        (360.0 * i / count, 360.0 * (i + 1) / count)
                    )
                ),
        ];
    }

    private static Scene Strip(
        string title,
        double diameterMm,
        Func<double, double> behindMm,
        (double FromDeg, double ToDeg) part
    )
    {
        const int ordinates = 16;
        var (from, to) = part;
        var deepMm = Enumerable.Range(0, 361).Max(deg => behindMm(deg));
        var builder = Begun(title, deepMm, out var top);
        PaperPoint At(double deg) =>
            new(1 + (Math.PI * diameterMm * (deg - from) / 360), top + behindMm(Math.Min(deg, 360)));
        const int steps = 180;
        builder.Polyline(
            Layer.Outline,
            [.. Enumerable.Range(0, steps + 1).Select(i => At(from + ((to - from) * i / steps)))]
        );
        var bottom = top + deepMm + BandMm;
        builder.Polyline(Layer.Thin, [At(from), At(from) with { YMm = bottom }, At(to) with { YMm = bottom }, At(to)]);
        foreach (var deg in Enumerable.Range(1, ordinates - 1).Select(i => i * 360.0 / ordinates))
        {
            if (deg > from + 1e-9 && deg < to - 1e-9)
            {
                builder.Line(Layer.Thin, At(deg), At(deg) with { YMm = bottom });
            }
        }

        Join(builder, At(from), bottom, from, isStart: true);
        Join(builder, At(to), bottom, to, isStart: false);
        Ruler(builder, new(1, bottom + 6));
        return Ended(builder, At(to).XMm + 1, bottom + 6);
    }

    // A half diamond on each side of a join makes a whole one where the strips lie right; named by its angle round the tube.
    private static void Join(SceneBuilder builder, PaperPoint edge, double bottom, double deg, bool isStart)
    {
        if (deg is 0 or 360)
        {
            return;
        }

        const double sizeMm = 4;
        var (middle, way) = (bottom - (BandMm / 2), isStart ? 1 : -1);
        builder.Polyline(
            Layer.Outline,
            [new(edge.XMm, middle - sizeMm), new(edge.XMm + (way * sizeMm), middle), new(edge.XMm, middle + sizeMm)]
        );
        builder.Text(
            new(edge.XMm + (way * (sizeMm + 1)), middle + 1),
            Invariant($"join {deg:0}"),
            TextStyle.Small with
            {
                Horizontal = isStart ? HorizontalAnchor.Left : HorizontalAnchor.Right,
                IsOpaque = true,
            }
        );
    }

    private static SceneBuilder Begun(string title, double deepMm, out double top)
    {
        var builder = new SceneBuilder(new(180, deepMm + 60));
        builder.Text(new(1, 4), title, TextStyle.Body with { Weight = FontWeight.Bold });
        top = 8;
        return builder;
    }

    // Faces side by side, each with the depth of the cut at its left edge; the last edge closes the round.
    private static void Faces(SceneBuilder builder, PaperPoint at, double sideMm, double[] behindMm, int count)
    {
        var bottom = at.YMm + behindMm.Max() + BandMm;
        PaperPoint Edge(int i) => new(at.XMm + (i * sideMm), at.YMm + behindMm[i % behindMm.Length]);
        builder.Polyline(Layer.Outline, [.. Enumerable.Range(0, count + 1).Select(Edge)]);
        builder.Polyline(
            Layer.Thin,
            [Edge(0), new(at.XMm, bottom), new(at.XMm + (count * sideMm), bottom), Edge(count)]
        );
        for (var i = 1; i < count; i++)
        {
            builder.Line(Layer.Hidden, Edge(i), Edge(i) with { YMm = bottom });
        }
    }

    private static void Ruler(SceneBuilder builder, PaperPoint at)
    {
        builder.Line(Layer.Outline, at, at.Moved(BarMm, 0));
        for (var mm = 0; mm <= BarMm; mm += 10)
        {
            builder.Line(Layer.Thin, at.Moved(mm, -1.5), at.Moved(mm, 1.5));
        }

        builder.Text(at.Moved(BarMm + 3, 1), Invariant($"{BarMm:0} mm"), TextStyle.Small);
    }

    private static Scene Ended(SceneBuilder builder, double widthMm, double bottom) =>
        builder.Build("template of a cut") with
        {
            Size = new(Math.Max(widthMm, BarMm + 20), bottom + 4),
        };
}
