using Shaduf.Parts;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>One part as a sketch for the saw: its side with both cuts, lengths, angles, number off.</summary>
internal static class PartSketch
{
    private const double SquareDeg = 0.05;

    /// <summary>Composes the sketch: length not to scale, so that short and long parts are equally clear.</summary>
    public static Scene Of(PartGroup part, int count, PaperSize size)
    {
        var builder = new SceneBuilder(size);
        builder.Rectangle(Layer.Thin, size.Box);
        builder.Balloon(new(6, 6), part.Mark);
        builder.Text(
            new(12, 5.2),
            Lettering.Shortened(Invariant($"{count} off, {part.Role}"), size.WidthMm - 14, TextStyle.Small),
            TextStyle.Small
        );
        builder.Text(
            new(12, 9),
            Lettering.Shortened(
                Invariant($"{part.Section.Name}, {part.MassKg / part.Count:0.00} kg each"),
                size.WidthMm - 14,
                TextStyle.Small
            ),
            TextStyle.Small
        );
        Side(builder, part, size);
        return builder.Build($"part {part.Mark}");
    }

    private static void Side(SceneBuilder builder, PartGroup part, PaperSize size)
    {
        var (left, right, top, bottom) = (14.0, size.WidthMm - 14, 15.0, 21.0);
        var shape = part.Shape;
        var (start, end) = (Slant(shape.StartDeg), Slant(shape.EndDeg));
        var isAbove = IsTrapezoid(part);
        builder.Polygon(
            Layer.Outline,
            [
                new(left, top),
                new(right - (isAbove ? 0 : end), top),
                new(right - (isAbove ? end : 0), bottom),
                new(left + start, bottom),
            ]
        );
        var angle = TextStyle.Small with { Vertical = VerticalAnchor.Middle };
        builder.Text(
            new(left - 1.5, (top + bottom) / 2),
            Degrees(shape.StartDeg),
            angle with
            {
                Horizontal = HorizontalAnchor.Right,
            }
        );
        builder.Text(new(right + 1.5, (top + bottom) / 2), Degrees(shape.EndDeg), angle);
        builder.Text(
            new((left + right) / 2, top - 1),
            LongFace(part),
            new TextStyle(2.2) { Horizontal = HorizontalAnchor.Centre }
        );
        var isSquare = Math.Max(shape.StartDeg, shape.EndDeg) < SquareDeg;
        var sizes = isSquare
            ? Invariant($"{Part.WholeMm(shape.LongPointMm):0}")
            : Invariant($"{Part.WholeMm(shape.LongPointMm):0} ({Part.WholeMm(shape.ShortPointMm):0})");
        builder.Text(
            new((left + right) / 2, bottom + 4.6),
            sizes,
            TextStyle.Body with
            {
                Weight = FontWeight.Bold,
                Horizontal = HorizontalAnchor.Centre,
            }
        );
        foreach (var (i, line) in new[] { FromBar(part), part.Work }.Where(line => line.Length > 0).Index())
        {
            builder.Text(
                new((left + right) / 2, bottom + 8.4 + (3 * i)),
                Lettering.Shortened(line, size.WidthMm - 4, TextStyle.Small),
                TextStyle.Small with
                {
                    Horizontal = HorizontalAnchor.Centre,
                }
            );
        }
    }

    // Spliced pieces, and what the bar must give where both ends lean the same way: more than any edge.
    private static string FromBar(PartGroup part)
    {
        var pieces = part.PiecesMm.Select(Part.WholeMm).ToList();
        var alongMm = Part.WholeMm(part.PiecesMm[^1] + part.AlongBarMm - part.Shape.LongPointMm);
        var along = alongMm > pieces[^1] ? Invariant($"{alongMm:0} along the bar") : "";
        return pieces.Count == 1
            ? along
            : "pieces "
                + string.Join(" + ", pieces.Select((mm, i) => Invariant($"{CutPlans.PieceMark(part, i)} {mm:0}")))
                + (along.Length > 0 ? $", the last {along}" : "");
    }

    /// <summary>Which face of the part is the long one at its slanting end, as it stands in the rack; empty for square ends.</summary>
    public static string LongFace(PartGroup part)
    {
        var shape = part.Shape;
        if (Math.Max(shape.StartDeg, shape.EndDeg) < SquareDeg)
        {
            return part.Role == FenceSteel.StrutRole ? "head by its template"
                : part.Role == FenceSteel.RailRole ? "both ends by their templates"
                : "";
        }

        var isAtStart = shape.StartDeg >= SquareDeg;
        var normal = isAtStart ? shape.StartPlane.Normal : shape.EndPlane.Normal;
        var along = shape.End - shape.Start;
        along *= 1 / along.LengthMm;

        // Outwards the long edge lies where the plane leans away.
        var outwards = isAtStart ? along * -1 : along;
        var across = (normal - (outwards * normal.DotMm2(outwards))) * (-1 / normal.DotMm2(outwards));
        return Math.Abs(across.ZMm) >= Math.Max(Math.Abs(across.XMm), Math.Abs(across.YMm)) - 1e-9
            ? across.ZMm > 0
                ? "long face: upper"
                : "long face: lower"
            : Math.Abs(across.YMm) >= Math.Abs(across.XMm)
                ? across.YMm > 0
                    ? "long face: to the high edge"
                    : "long face: to the low edge"
                : across.XMm > 0
                    ? "long face: to the right end"
                    : "long face: to the left end";
    }

    private static bool IsTrapezoid(PartGroup part)
    {
        var shape = part.Shape;
        var lean =
            part.Section.SideMm * (Math.Tan(shape.StartDeg * Math.PI / 180) + Math.Tan(shape.EndDeg * Math.PI / 180));
        return Math.Abs(shape.LongPointMm - shape.ShortPointMm - lean) < 0.1;
    }

    private static double Slant(double deg) => Math.Min(10, 6 * Math.Tan(deg * Math.PI / 180));

    private static string Degrees(double deg) => deg < SquareDeg ? "0" : Invariant($"{deg:0.0}");
}
