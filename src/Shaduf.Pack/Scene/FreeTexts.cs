namespace Shaduf.Pack;

/// <summary>Writes small texts beside points of a picture, each where it lies on no other text.</summary>
/// <param name="builder">The picture; texts go onto it, over all lines, when they are written out.</param>
internal sealed class FreeTexts(SceneBuilder builder)
{
    private const double AsideMm = 2.2;

    // Directions in which a place is looked for, right first, then farther out with a leader.
    private static readonly (double Right, double Down)[] s_ways =
    [
        (1, 0.35),
        (-1, 0.35),
        (0, -1),
        (0, 1.6),
        (1, -1),
        (1, 1.6),
        (-1, -1),
        (-1, 1.6),
    ];

    private static readonly double[] s_out = [1, 2.5, 4, 6, 9, 13];
    private readonly List<TextBox> written = [];
    private readonly List<TextItem> waiting = [];

    /// <summary>Puts the texts onto the picture, when all lines are drawn.</summary>
    public void Write()
    {
        builder.Add(waiting);
        waiting.Clear();
    }

    /// <summary>Writes a text with its middle at a point, whatever is there.</summary>
    /// <param name="point">The point.</param>
    /// <param name="text">The text.</param>
    public void On(PaperPoint point, string text)
    {
        var item = new TextItem(Layer.Text, point, text, TextStyle.Small.Centred with { IsOpaque = true });
        written.Add(item.TextBox);
        waiting.Add(item with { About = builder.Subject });
    }

    /// <summary>Keeps a round thing free of texts.</summary>
    /// <param name="middle">Its middle.</param>
    /// <param name="radiusMm">Its radius on the paper [mm], above 0.</param>
    public void Avoid(PaperPoint middle, double radiusMm)
    {
        var (left, right) = (middle.XMm - radiusMm, middle.XMm + radiusMm);
        var (top, bottom) = (middle.YMm - radiusMm, middle.YMm + radiusMm);
        written.Add(
            new(
                new TextItem(Layer.Text, middle, "", TextStyle.Small),
                [new(left, bottom), new(right, bottom), new(right, top), new(left, top)]
            )
        );
    }

    /// <summary>Writes a text beside a point.</summary>
    /// <param name="point">The point.</param>
    /// <param name="text">The text.</param>
    /// <param name="isNeeded">Whether it must be written even over another text, where no place is free.</param>
    public void Beside(PaperPoint point, string text, bool isNeeded = true)
    {
        var free = s_out
            .SelectMany(each => s_ways.Select(way => (Item: Written(point, text, way, each), Far: each)))
            .Where(each => written.TrueForAll(other => !other.Overlaps(Wider(each.Item))))
            .Take(1)
            .ToList();
        if (free.Count == 0 && !isNeeded)
        {
            return;
        }

        var (item, far) = free.Count > 0 ? free[0] : (Written(point, text, s_ways[0], 1), 1);
        if (far > s_out[1])
        {
            builder.Line(Layer.Dimension, point, item.At);
        }

        written.Add(item.TextBox);
        waiting.Add(item with { About = builder.Subject });
    }

    // Room round a text, so that it does not read on into its neighbour.
    private static TextBox Wider(TextItem item)
    {
        var box = PaperBox.Round(item.TextBox.Corners).Grown(0.6);
        return new(
            item,
            [
                new(box.LeftMm, box.BottomMm),
                new(box.RightMm, box.BottomMm),
                new(box.RightMm, box.TopMm),
                new(box.LeftMm, box.TopMm),
            ]
        );
    }

    private static TextItem Written(PaperPoint point, string text, (double Right, double Down) way, double far) =>
        new(
            Layer.Text,
            point.Moved(way.Right * AsideMm * far, way.Down * AsideMm * far),
            text,
            TextStyle.Small with
            {
                Horizontal =
                    way.Right > 0 ? HorizontalAnchor.Left
                    : way.Right < 0 ? HorizontalAnchor.Right
                    : HorizontalAnchor.Centre,
                IsOpaque = true,
            }
        );
}
