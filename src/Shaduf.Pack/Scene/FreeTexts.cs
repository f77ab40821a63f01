namespace Shaduf.Pack;

/// <summary>Writes small texts beside points of a picture, each where it lies on no other text and, where it can, on no line.</summary>
/// <param name="builder">The picture; texts find their places, and go onto it, when all lines are drawn.</param>
internal sealed class FreeTexts(SceneBuilder builder)
{
    private const double AsideMm = 2.2;

    // A text goes this much farther out, as told in the steps below, rather than stand over a line.
    private const double OverLine = 3;

    // A circle smaller than this is a sign: seen by its diagonal.
    private const double SmallMm = 3;

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
    private readonly List<(PaperPoint Point, string Text, bool IsNeeded, string About)> asked = [];

    /// <summary>Puts the texts onto the picture, when all lines are drawn.</summary>
    public void Write()
    {
        var drawn = builder.Build().Items;
        var lines = drawn.SelectMany(Lines).ToList();
        written.AddRange(drawn.OfType<TextItem>().Select(text => text.TextBox));
        foreach (var (point, text, isNeeded, about) in asked)
        {
            Place(point, text, isNeeded, lines, about);
        }

        builder.Add(waiting);
        waiting.Clear();
        asked.Clear();
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
    public void Beside(PaperPoint point, string text, bool isNeeded = true) =>
        asked.Add((point, text, isNeeded, builder.Subject));

    private void Place(
        PaperPoint point,
        string text,
        bool isNeeded,
        List<(PaperPoint From, PaperPoint To)> lines,
        string about
    )
    {
        var width = Lettering.WidthMm(text, TextStyle.Small.SizeMm);
        var reachMm = (s_out[^1] * AsideMm * 2) + width;
        var near = new PaperBox(point.XMm, point.YMm, point.XMm, point.YMm).Grown(reachMm);
        var (beside, across) = (
            written.Where(other => Touches(near, PaperBox.Round(other.Corners))).ToList(),
            lines
                .Select(line => (line.From, line.To, Box: PaperBox.Round([line.From, line.To])))
                .Where(line => Touches(near, line.Box))
                .ToList()
        );
        // The cheapest that lies on no other text; those farther out than the best so far are not looked at.
        var (item, box, far, best) = (Written(point, text, s_ways[0], 1), (TextBox?)null, 1.0, double.MaxValue);
        foreach (var (way, farOut) in s_out.SelectMany(farOut => s_ways.Select(way => (way, farOut))))
        {
            if (farOut >= best)
            {
                break;
            }

            var tried = Written(point, text, way, farOut);
            var tight = TextBox.Of(tried, width);
            var room = Wider(tried, tight);
            if (beside.Exists(other => other.Overlaps(room)))
            {
                continue;
            }

            var cost = farOut + (OverLine * (Crossings(across, tight) + Led(tried.At, farOut)));
            if (cost < best)
            {
                (item, box, far, best) = (tried, tight, farOut, cost);
            }
        }

        if (box is null && !isNeeded)
        {
            return;
        }

        // A leader costs as much as standing on a line, and as much again for each text that it runs through.
        int Led(PaperPoint at, double apart) =>
            apart <= s_out[1] ? 0 : 1 + beside.Count(other => other.IsCrossedBy(point, at));

        if (far > s_out[1])
        {
            builder.Line(Layer.Dimension, point, item.At);
            lines.Add((point, item.At));
        }

        written.Add(box ?? item.TextBox);
        waiting.Add(item with { About = about });
    }

    private static int Crossings(List<(PaperPoint From, PaperPoint To, PaperBox Box)> lines, TextBox text)
    {
        var around = PaperBox.Round(text.Corners);
        return lines.Count(line => Touches(line.Box, around) && text.IsCrossedBy(line.From, line.To));
    }

    // What is drawn, as straight lines; round things by their corners.
    private static IEnumerable<(PaperPoint From, PaperPoint To)> Lines(SceneItem item) =>
        item switch
        {
            LineItem line => [(line.From, line.To)],
            PolyItem { IsStroked: true } poly => poly
                .Points.Zip(poly.Points.Skip(1))
                .Concat(poly.IsClosed ? [(poly.Points[^1], poly.Points[0])] : []),
            CircleItem { RadiusMm: < SmallMm } circle => [Diagonal(circle.Box)],
            CircleItem circle => Chords(circle.Centre, circle.RadiusMm, 0, 360),
            ArcItem arc => Chords(arc.Centre, arc.RadiusMm, arc.StartDeg, arc.SweepDeg),
            _ => [],
        };

    private static (PaperPoint From, PaperPoint To) Diagonal(PaperBox box) =>
        (new(box.LeftMm, box.TopMm), new(box.RightMm, box.BottomMm));

    private static bool Touches(PaperBox box, PaperBox other) =>
        box.LeftMm <= other.RightMm
        && other.LeftMm <= box.RightMm
        && box.TopMm <= other.BottomMm
        && other.TopMm <= box.BottomMm;

    private static IEnumerable<(PaperPoint From, PaperPoint To)> Chords(
        PaperPoint centre,
        double radiusMm,
        double startDeg,
        double sweepDeg
    )
    {
        var count = (int)Math.Ceiling(sweepDeg / 15);
        PaperPoint[] round =
        [
            .. Enumerable
                .Range(0, count + 1)
                .Select(i => Math.SinCos((startDeg + (sweepDeg * i / count)) * Math.PI / 180))
                .Select(way => centre.Moved(radiusMm * way.Cos, -radiusMm * way.Sin)),
        ];
        return round.Zip(round.Skip(1));
    }

    // Room round a text, so that it does not read on into its neighbour.
    private static TextBox Wider(TextItem item, TextBox tight)
    {
        var box = PaperBox.Round(tight.Corners).Grown(0.6);
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
