using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>
/// The symbol of a weld: arrow, reference line with its broken line, sign of the weld, size before it and length behind it,
/// circle for all round, flag for a weld made on site, process in the tail.
/// </summary>
/// <source>ISO 2553:2019, system A (from memory); process 111 of ISO 4063: metal arc with covered electrode</source>
internal static class WeldSymbol
{
    private const double SignMm = 3.2;
    private const double LineMm = 30;
    private const string Process = "111";

    /// <summary>Width of the whole symbol from its elbow [mm].</summary>
    public const double WidthMm = LineMm + 10;

    /// <summary>Draws a symbol.</summary>
    /// <param name="builder">The picture.</param>
    /// <param name="tip">The joint.</param>
    /// <param name="elbow">Where the arrow leaves the reference line, which runs on away from the joint.</param>
    /// <param name="weld">The weld.</param>
    public static void Draw(SceneBuilder builder, PaperPoint tip, PaperPoint elbow, WeldMark weld)
    {
        var isLeft = elbow.XMm < tip.XMm;
        var start = isLeft ? elbow.Moved(-LineMm, 0) : elbow;
        Arrow(builder, tip, elbow);
        builder.Line(Layer.Outline, start, start.Moved(LineMm, 0));
        builder.Polyline(Layer.Hidden, [start.Moved(0, 1.1), start.Moved(LineMm, 1.1)]);
        var (size, runs) = weld.Figures;
        var sign = start.Moved(16, 0);
        builder.Text(start.Moved(2.2, -0.7), weld.Mark, TextStyle.Small with { Weight = FontWeight.Bold });
        builder.Text(sign.Moved(-1.2, -0.7), size, TextStyle.Small with { Horizontal = HorizontalAnchor.Right });
        Sign(builder, sign, weld.Kind);
        builder.Text(sign.Moved(SignMm + 1.2, -0.7), runs, TextStyle.Small);
        if (weld.IsAllRound)
        {
            builder.Circle(Layer.Outline, elbow, 1.3);
        }

        if (weld.Line.Seam.IsOnSite)
        {
            Flag(builder, elbow, isLeft ? 1 : -1);
        }

        Tail(builder, isLeft ? start : start.Moved(LineMm, 0), isLeft ? -1 : 1);
    }

    private static void Flag(SceneBuilder builder, PaperPoint foot, int side)
    {
        builder.Line(Layer.Outline, foot, foot.Moved(0, -6.5));
        builder.Polygon(
            Layer.Outline,
            [foot.Moved(0, -6.5), foot.Moved(side * 3, -5.4), foot.Moved(0, -4.3)],
            Palette.Ink
        );
    }

    private static void Tail(SceneBuilder builder, PaperPoint end, int side)
    {
        builder.Polyline(Layer.Outline, [end.Moved(side * 2.4, -2.4), end, end.Moved(side * 2.4, 2.4)]);
        builder.Text(
            end.Moved(side * 2.8, 0),
            Process,
            TextStyle.Small with
            {
                Vertical = VerticalAnchor.Middle,
                Horizontal = side > 0 ? HorizontalAnchor.Left : HorizontalAnchor.Right,
            }
        );
    }

    private static void Sign(SceneBuilder builder, PaperPoint at, WeldKind kind)
    {
        if (kind == WeldKind.Fillet)
        {
            builder.Polygon(Layer.Outline, [at, at.Moved(0, -SignMm), at.Moved(SignMm, 0)]);
            return;
        }

        builder.Line(Layer.Outline, at.Moved(0.8, 0), at.Moved(0.8, -SignMm));
        builder.Line(Layer.Outline, at.Moved(2, 0), at.Moved(2, -SignMm));
    }

    private static void Arrow(SceneBuilder builder, PaperPoint tip, PaperPoint elbow)
    {
        builder.Line(Layer.Thin, tip, elbow);
        var lengthMm = Math.Max(0.1, tip.DistanceMm(elbow));
        var (x, y) = ((elbow.XMm - tip.XMm) / lengthMm, (elbow.YMm - tip.YMm) / lengthMm);
        builder.Polygon(
            Layer.Thin,
            [
                tip,
                tip.Moved((x * 2.4) - (y * 0.5), (y * 2.4) + (x * 0.5)),
                tip.Moved((x * 2.4) + (y * 0.5), (y * 2.4) - (x * 0.5)),
            ],
            Palette.Ink
        );
    }
}
