using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>A point of a chart, in the units of its axes.</summary>
/// <param name="X">Across.</param>
/// <param name="Y">Up.</param>
public readonly record struct ChartPoint(double X, double Y);

/// <summary>One line of a chart; a single point is drawn as a mark.</summary>
/// <param name="Name">Its name in the legend.</param>
/// <param name="Points">Its points in drawing order, at least one.</param>
public sealed record LineSeries(string Name, IReadOnlyList<ChartPoint> Points)
{
    /// <summary>Radius of each point's mark [mm] for a cloud of points without a line; null for a line.</summary>
    public IReadOnlyList<double>? CloudMm { get; init; }
}

/// <summary>Lines over two axes. Series differ by dash and mark as well as by colour.</summary>
/// <param name="X">The level axis.</param>
/// <param name="Y">The upright axis; it shows zero unless its start is given.</param>
/// <param name="Series">One to five lines.</param>
public sealed record LineChart(ChartAxis X, ChartAxis Y, IReadOnlyList<LineSeries> Series)
{
    // Beyond this many points marks would hide the line.
    private const int MostMarked = 26;
    private const double MarkMm = 0.9;
    private const double AloneFactor = 1.6;
    private const double CornerFactor = 1.3;

    // Beside the plot, so that a mark at its end has room.
    private const double MarkRoomMm = MarkMm * AloneFactor * CornerFactor;

    private static readonly Layer[] Looks =
    [
        new("Series1", 0.5, Palette.Water),
        new("Series2", 0.5, Palette.Sun) { DashMm = [4, 1.5] },
        new("Series3", 0.5, Palette.Ink) { DashMm = [1.2, 1.2] },
        new("Series4", 0.5, Palette.Clay) { DashMm = [7, 1.5, 1.5, 1.5] },
        new("Series5", 0.5, Palette.Leaf) { DashMm = [2.5, 2.5] },
    ];

    /// <summary>Composes the chart.</summary>
    /// <param name="size">Its size, at least 40 x 35 mm.</param>
    /// <param name="title">What it shows, for those who cannot see it.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentException">A series is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Too many series; or a figure is NaN or outside an axis.</exception>
    public Scene ToScene(PaperSize size, string title)
    {
        Within.RequireCount(Series.Count, 1, Looks.Length);
        if (Series.Any(series => series.Points.Count == 0))
        {
            throw new ArgumentException("A series needs at least one point.", nameof(size));
        }

        var points = Series.SelectMany(series => series.Points).ToList();
        points.ForEach(point => Within.Require(point.X, -1e12, 1e12, X.Title));
        points.ForEach(point => Within.Require(point.Y, -1e12, 1e12, Y.Title));
        var frame = new ChartFrame(size);
        if (Series.Count > 1)
        {
            frame.Legend([.. Series.Select(series => series.Name)], Sample);
        }

        var yTicks = Ticks.Over(
            Y,
            Math.Min(points.Min(p => p.Y), Y.From ?? 0),
            Math.Max(points.Max(p => p.Y), Y.From ?? 0),
            (int)Math.Max(2, size.HeightMm * 0.65 / 9)
        );
        var yLabelsMm = ChartFrame.WidestMm(yTicks);
        var xTicks = XTicks(points, size.WidthMm - yLabelsMm - 4);
        var halfMm = ChartFrame.WidestMm(xTicks) / 2;
        var plot = frame.Plot(yLabelsMm, ChartFrame.LabelHeightMm, Math.Max(halfMm, MarkRoomMm), true);
        frame.YAxis(plot, yTicks, Y.Title);
        PaperPoint At(ChartPoint p) =>
            new(
                plot.LeftMm + ((p.X - xTicks.From) / xTicks.Span * plot.WidthMm),
                plot.BottomMm - ((p.Y - yTicks.From) / yTicks.Span * plot.HeightMm)
            );
        frame.XAxis(
            plot,
            [.. xTicks.Values.Select(value => (At(new(value, 0)).XMm, xTicks.Label(value)))],
            new(false, 1, 2 * halfMm),
            X.Title
        );
        for (var i = 0; i < Series.Count; i++)
        {
            Draw(frame.Builder, i, [.. Series[i].Points.Select(At)], Series[i].CloudMm);
        }

        return frame.Builder.Build(title);
    }

    // As many ticks as their labels leave room for.
    private Ticks XTicks(List<ChartPoint> points, double roomMm)
    {
        for (var count = 12; ; count--)
        {
            var ticks = Ticks.Over(X, points.Min(p => p.X), points.Max(p => p.X), count);
            var widestMm = ChartFrame.WidestMm(ticks);
            if (count == 1 || (widestMm + 2) * ticks.Span / ticks.Step <= roomMm - widestMm)
            {
                return ticks;
            }
        }
    }

    private void Sample(SceneBuilder builder, int series, PaperBox box)
    {
        var middle = box.Centre.YMm;
        if (Series[series].CloudMm is not null)
        {
            builder.Circle(Layer.Thin, box.Centre, MarkMm, Looks[series].Colour.Tint(0.5));
            return;
        }

        var isPoint = Series[series].Points.Count == 1;
        if (!isPoint)
        {
            builder.Line(Looks[series], new(box.LeftMm, middle), new(box.RightMm, middle));
        }

        if (isPoint || Series[series].Points.Count <= MostMarked)
        {
            Mark(builder, series, box.Centre, isPoint);
        }
    }

    private static void Draw(SceneBuilder builder, int series, List<PaperPoint> points, IReadOnlyList<double>? cloudMm)
    {
        if (cloudMm is not null)
        {
            foreach (var (at, sizeMm) in points.Zip(cloudMm))
            {
                builder.Circle(Layer.Thin, at, sizeMm, Looks[series].Colour.Tint(0.5));
            }

            return;
        }

        if (points.Count > 1)
        {
            builder.Polyline(Looks[series], points);
        }

        if (points.Count <= MostMarked)
        {
            points.ForEach(point => Mark(builder, series, point, points.Count == 1));
        }
    }

    private static void Mark(SceneBuilder builder, int series, PaperPoint at, bool isAlone)
    {
        var sizeMm = isAlone ? AloneFactor * MarkMm : MarkMm;
        var layer = Layer.Thin;
        var colour = Looks[series].Colour;
        PaperPoint[] Corners(int count, double turnDeg) =>
            [
                .. Enumerable
                    .Range(0, count)
                    .Select(i => new ArcItem(layer, at, sizeMm * CornerFactor, 0, 0).At(turnDeg + (i * 360.0 / count))),
            ];
        _ = series switch
        {
            0 => builder.Circle(layer, at, sizeMm, colour),
            1 => builder.Polygon(layer, Corners(4, 45), colour),
            2 => builder.Polygon(layer, Corners(3, 90), colour),
            3 => builder.Polygon(layer, Corners(4, 0), Palette.White),
            _ => builder.Circle(layer, at, sizeMm, Palette.White),
        };
    }
}
