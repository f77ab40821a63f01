namespace Shaduf.Pack;

/// <summary>Sets dimensions beside a thing so that no text meets a line or another text.</summary>
internal static class DimensionRow
{
    private const double GapMm = 1;
    private const double BeyondMm = 1.5;
    private const double TickMm = 1.1;

    // A dimension in the row's own axes: along the row, and out from the thing.
    private sealed record Span(string Text, double TextMm, DimensionFrame.Local A, DimensionFrame.Local B)
    {
        public double LengthMm => B.AlongMm - A.AlongMm;
    }

    // Where its line and text went.
    private sealed record Placed(Span Span, int Lane, double TextMidMm, double StartMm, double EndMm);

    internal static IEnumerable<SceneItem> Compose(
        SiteToPaper placing,
        DimensionSide side,
        IReadOnlyList<Dimension> row,
        DimensionLayout layout
    )
    {
        var frame = DimensionFrame.Of(side);
        var isAcross = side is DimensionSide.Above or DimensionSide.Below;
        var spans = row.Select(dimension =>
                ToSpan(
                    dimension.Says(
                        isAcross ? dimension.To.XMm - dimension.From.XMm : dimension.To.YMm - dimension.From.YMm
                    ),
                    frame.ToLocal(placing.ToPaper(dimension.From)),
                    frame.ToLocal(placing.ToPaper(dimension.To)),
                    layout
                )
            )
            .ToList();
        return Drawn(frame, spans, layout);
    }

    internal static IEnumerable<SceneItem> Aligned(
        SiteToPaper placing,
        Dimension dimension,
        double offsetMm,
        DimensionLayout layout
    )
    {
        var (from, to) = (placing.ToPaper(dimension.From), placing.ToPaper(dimension.To));
        var frame = DimensionFrame.Along(from, to, offsetMm > 0);
        var siteMm = double.Hypot(dimension.To.XMm - dimension.From.XMm, dimension.To.YMm - dimension.From.YMm);
        var span = ToSpan(dimension.Says(siteMm), frame.ToLocal(from), frame.ToLocal(to), layout);
        return Drawn(frame, [span], layout with { FirstMm = Math.Abs(offsetMm) });
    }

    private static Span ToSpan(string text, DimensionFrame.Local a, DimensionFrame.Local b, DimensionLayout layout)
    {
        var textMm = Lettering.WidthMm(text, layout.TextSizeMm) + (2 * DimensionLayout.SideMm);
        return a.AlongMm <= b.AlongMm ? new(text, textMm, a, b) : new(text, textMm, b, a);
    }

    private static IEnumerable<SceneItem> Drawn(DimensionFrame frame, List<Span> spans, DimensionLayout layout)
    {
        layout.Check();
        if (spans.Count == 0)
        {
            return [];
        }

        var baseMm = spans.Max(span => Math.Max(span.A.OutMm, span.B.OutMm)) + layout.FirstMm;
        return Placings(spans)
            .SelectMany(placed => Items(frame, placed, baseMm + (placed.Lane * layout.LaneMm), layout));
    }

    // Short ones first, so that they lie next to the thing and the longer ones outside them.
    private static List<Placed> Placings(List<Span> spans)
    {
        var done = new List<Placed>();
        var waiting = spans.OrderBy(span => span.LengthMm).ThenBy(span => span.A.AlongMm).ToList();
        while (waiting.Count > 0)
        {
            var span = waiting[0];
            waiting.RemoveAt(0);
            for (var lane = 0; ; lane++)
            {
                var free = TextPlaces(span, ExtensionsMm(span, lane, done, waiting))
                    .Select(mid => ToPlaced(span, lane, mid))
                    .FirstOrDefault(placed => done.TrueForAll(other => AreClear(placed, other)));
                if (free is not null)
                {
                    done.Add(free);
                    break;
                }
            }
        }

        return done;
    }

    // Extension lines that reach this lane or may yet do so; the text must stand clear of them.
    private static List<double> ExtensionsMm(Span span, int lane, List<Placed> done, List<Span> waiting) =>
        done.Where(other => other.Lane >= lane)
            .Select(other => other.Span)
            .Concat(waiting)
            .Append(span)
            .SelectMany(other => new[] { other.A.AlongMm, other.B.AlongMm })
            .Distinct()
            .Order()
            .ToList();

    // Middles of the text in order of liking: inside the span near its middle, then outside, nearest first.
    private static IEnumerable<double> TextPlaces(Span span, List<double> stops)
    {
        var middle = (span.A.AlongMm + span.B.AlongMm) / 2;
        var half = span.TextMm / 2;
        double[] edges = [double.NegativeInfinity, .. stops, double.PositiveInfinity];
        return edges
            .Zip(edges.Skip(1))
            .Where(gap => gap.Second - gap.First >= span.TextMm)
            .Select(gap => Math.Clamp(middle, gap.First + half, gap.Second - half))
            .OrderBy(mid => mid - half >= span.A.AlongMm && mid + half <= span.B.AlongMm ? 0 : 1)
            .ThenBy(mid => Math.Abs(mid - middle));
    }

    private static Placed ToPlaced(Span span, int lane, double mid) =>
        new(
            span,
            lane,
            mid,
            Math.Min(span.A.AlongMm, mid - (span.TextMm / 2)),
            Math.Max(span.B.AlongMm, mid + (span.TextMm / 2))
        );

    // Lines of one lane may share an end but not a stretch.
    private static bool AreClear(Placed placed, Placed other) =>
        placed.Lane != other.Lane || placed.StartMm >= other.EndMm - 0.01 || placed.EndMm <= other.StartMm + 0.01;

    private static IEnumerable<SceneItem> Items(
        DimensionFrame frame,
        Placed placed,
        double outMm,
        DimensionLayout layout
    )
    {
        PaperPoint At(double along, double outwards) => frame.ToPaper(new(along, outwards));
        var layer = Layer.Dimension;
        foreach (var end in new[] { placed.Span.A, placed.Span.B })
        {
            yield return new LineItem(layer, At(end.AlongMm, end.OutMm + GapMm), At(end.AlongMm, outMm + BeyondMm));
            yield return Tick(frame, At(end.AlongMm, outMm));
        }

        // Beside a text that stands outside, the line runs on under it; else it ends at the terminators.
        var isOutside = placed.StartMm < placed.Span.A.AlongMm || placed.EndMm > placed.Span.B.AlongMm;
        var startMm = placed.StartMm + (placed.StartMm < placed.Span.A.AlongMm ? DimensionLayout.SideMm : 0);
        var endMm = placed.EndMm - (placed.EndMm > placed.Span.B.AlongMm ? DimensionLayout.SideMm : 0);
        yield return new LineItem(
            layer,
            At(isOutside ? startMm : placed.Span.A.AlongMm, outMm),
            At(isOutside ? endMm : placed.Span.B.AlongMm, outMm)
        );
        yield return new TextItem(
            layer,
            frame.OnText(At(placed.TextMidMm, outMm), 0, layout.RiseMm),
            placed.Span.Text,
            new TextStyle(layout.TextSizeMm) { Horizontal = HorizontalAnchor.Centre, RotationDeg = frame.TextDeg }
        );
    }

    private static PolyItem Tick(DimensionFrame frame, PaperPoint mid) =>
        new(Layer.Text, [frame.OnText(mid, -TickMm, -TickMm), frame.OnText(mid, TickMm, TickMm)], false);
}
