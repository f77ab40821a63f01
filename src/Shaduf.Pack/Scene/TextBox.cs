namespace Shaduf.Pack;

/// <summary>The measured box of a text on the paper, turned as the text is.</summary>
/// <param name="Item">The text.</param>
/// <param name="Corners">Four corners: lower left, lower right, upper right, upper left as the text is read.</param>
public sealed record TextBox(TextItem Item, IReadOnlyList<PaperPoint> Corners)
{
    // Boxes that only touch do not overlap.
    private const double TouchMm = 0.01;

    internal static TextBox Of(TextItem item)
    {
        var widthMm = Lettering.WidthMm(item.Text, item.Style.SizeMm, item.Style.Weight);
        return Of(item, widthMm);
    }

    internal static TextBox Of(TextItem item, double widthMm)
    {
        var origin = Baseline(item, widthMm);
        var up = item.Style.SizeMm * Lettering.AscentRatio;
        var down = item.Style.SizeMm * Lettering.DescentRatio;
        return new(
            item,
            [
                Turned(item, origin.Moved(0, down)),
                Turned(item, origin.Moved(widthMm, down)),
                Turned(item, origin.Moved(widthMm, -up)),
                Turned(item, origin.Moved(0, -up)),
            ]
        );
    }

    // Where the text's line starts before it is turned about its anchor point.
    internal static PaperPoint Baseline(TextItem item, double widthMm)
    {
        var style = item.Style;
        var rightMm = style.Horizontal switch
        {
            HorizontalAnchor.Centre => -widthMm / 2,
            HorizontalAnchor.Right => -widthMm,
            _ => 0,
        };
        var downShare = style.Vertical switch
        {
            VerticalAnchor.Top => Lettering.AscentRatio,
            VerticalAnchor.Middle => Lettering.CapitalRatio / 2,
            VerticalAnchor.Bottom => -Lettering.DescentRatio,
            _ => 0,
        };
        return item.At.Moved(rightMm, style.SizeMm * downShare);
    }

    /// <summary>Whether two texts lie over each other by more than a touch.</summary>
    /// <param name="other">The other text's box.</param>
    /// <returns>True when they do.</returns>
    public bool Overlaps(TextBox other) => !IsApart(Corners, other.Corners) && !IsApart(other.Corners, Corners);

    /// <summary>Whether a straight line runs through the text's box.</summary>
    /// <param name="from">One end of the line.</param>
    /// <param name="to">The other end.</param>
    /// <returns>True when it does.</returns>
    public bool IsCrossedBy(PaperPoint from, PaperPoint to)
    {
        PaperPoint[] line = [from, to];
        return !IsApart(Corners, line) && !IsApart(line, Corners);
    }

    /// <summary>Whether the text lies wholly in an upright box.</summary>
    /// <param name="frame">The box.</param>
    /// <returns>True when it does.</returns>
    public bool IsInside(PaperBox frame) => Corners.All(frame.Holds);

    private static PaperPoint Turned(TextItem item, PaperPoint point)
    {
        var (sin, cos) = Math.SinCos(item.Style.RotationDeg * Math.PI / 180);
        var x = point.XMm - item.At.XMm;
        var y = point.YMm - item.At.YMm;
        return item.At.Moved((x * cos) + (y * sin), (y * cos) - (x * sin));
    }

    // Whether some edge of the first shape has the second wholly on its outer side (separating axis).
    private static bool IsApart(IReadOnlyList<PaperPoint> shape, IReadOnlyList<PaperPoint> other)
    {
        for (var i = 0; i < shape.Count; i++)
        {
            var a = shape[i];
            var b = shape[(i + 1) % shape.Count];
            var length = a.DistanceMm(b);
            if (length == 0)
            {
                continue;
            }

            double Along(PaperPoint p) =>
                (((p.XMm - a.XMm) * (b.YMm - a.YMm)) - ((p.YMm - a.YMm) * (b.XMm - a.XMm))) / length;
            if (shape.Max(Along) <= other.Min(Along) + TouchMm || other.Max(Along) <= shape.Min(Along) + TouchMm)
            {
                return true;
            }
        }

        return false;
    }
}
