using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>One kind of bar in a chart.</summary>
/// <param name="Name">Its name in the legend.</param>
/// <param name="Values">One figure for each category, in the unit of the chart's axis.</param>
public sealed record BarSeries(string Name, IReadOnlyList<double> Values);

/// <summary>Bars side by side in groups: a year by months. Series differ by hatch as well as by colour.</summary>
/// <param name="Axis">The upright axis; it always shows zero.</param>
/// <param name="Categories">Names of the groups, from the left; at least one.</param>
/// <param name="Series">One to five kinds of bar.</param>
public sealed record BarChart(ChartAxis Axis, IReadOnlyList<string> Categories, IReadOnlyList<BarSeries> Series)
{
    private const double GroupShare = 0.8;

    private static readonly (Colour Fill, HatchPattern? Hatch)[] Looks =
    [
        (Palette.Water, null),
        (Palette.Sun.Tint(0.35), HatchPattern.Diagonal),
        (Palette.White, HatchPattern.Horizontal),
        (Palette.Leaf.Tint(0.35), HatchPattern.Cross),
        (Palette.Clay.Tint(0.3), HatchPattern.Sand),
    ];

    /// <summary>How the figures over the bars are written, as a .NET number format; null for none. They are left out where they would take more than two thirds of the plot's height.</summary>
    public string? ValueFormat { get; init; } = "0.#";

    /// <summary>Whether the kinds of a group stand on one another instead of side by side; then no figure is below 0, and the figure over the bar is the sum.</summary>
    public bool IsStacked { get; init; }

    /// <summary>Composes the chart.</summary>
    /// <param name="size">Its size, at least 40 x 35 mm.</param>
    /// <param name="title">What it shows, for those who cannot see it.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentException">Too many series, or not one figure for each category.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is NaN or outside the axis.</exception>
    public Scene ToScene(PaperSize size, string title)
    {
        Within.RequireCount(Series.Count, 1, Looks.Length);
        if (Categories.Count == 0 || Series.Any(series => series.Values.Count != Categories.Count))
        {
            throw new ArgumentException("Each series needs one figure for each category.", nameof(size));
        }

        var values = Series.SelectMany(series => series.Values).ToList();
        values.ForEach(value => Within.Require(value, IsStacked ? 0 : -1e12, 1e12, Axis.Title));
        values = IsStacked ? [.. Categories.Select((_, i) => Series.Sum(series => series.Values[i]))] : values;
        var frame = new ChartFrame(size);
        if (Series.Count > 1)
        {
            frame.Legend([.. Series.Select(series => series.Name)], (b, i, box) => Bar(b, i, box));
        }

        var placing = Settled(frame, values, 0);
        frame.YAxis(placing.Plot, placing.Ticks, Axis.Title);
        Bars(frame.Builder, placing);
        var names = Categories.Select((name, i) => (placing.Plot.LeftMm + ((i + 0.5) * GroupMm(placing.Plot)), name));
        frame.XAxis(placing.Plot, [.. names], placing.Names, "");
        return frame.Builder.Build(title);
    }

    private sealed record Placing(PaperBox Plot, Ticks Ticks, ChartFrame.Fitted Names, ChartFrame.Fitted? Figures);

    private double GroupMm(PaperBox plot) => plot.WidthMm / Categories.Count;

    private double BarMm(PaperBox plot) => GroupMm(plot) * GroupShare / (IsStacked ? 1 : Series.Count);

    // The plot's width depends on the labels of its axis, and these on its height: go on until both agree.
    private Placing Settled(ChartFrame frame, List<double> values, double yLabelsMm)
    {
        var size = frame.Builder.Size;
        var bare = frame.Plot(yLabelsMm, 0, 0, false);
        var names = ChartFrame.Fitted.To(Categories, GroupMm(bare), size.HeightMm / 3);
        var plot = frame.Plot(yLabelsMm, names.HeightMm, 0, false);
        var figures = Figures(values, plot);
        var ticks = Scaled(values, plot.HeightMm, RoomMm(figures));
        var neededMm = ChartFrame.WidestMm(ticks);
        return neededMm > yLabelsMm ? Settled(frame, values, neededMm) : new(plot, ticks, names, figures);
    }

    private static double RoomMm(ChartFrame.Fitted? figures) => figures is null ? 0 : figures.HeightMm + 1.2;

    // Bars' ends that figures stand at: above zero, below it, or both.
    private static int Sides(List<double> values) => (values.Min() < 0 ? 1 : 0) + (values.Max() > 0 ? 1 : 0);

    private ChartFrame.Fitted? Figures(List<double> values, PaperBox plot)
    {
        if (ValueFormat is null)
        {
            return null;
        }

        var figures = ChartFrame.Fitted.To(values.Select(Figure), BarMm(plot), double.MaxValue);
        return Sides(values) * RoomMm(figures) <= plot.HeightMm * 2 / 3 ? figures : null;
    }

    // Ticks over the figures, zero and the room of the labels beyond the bars' ends.
    private Ticks Scaled(List<double> values, double heightMm, double labelMm)
    {
        var (low, high) = (Math.Min(0, values.Min()), Math.Max(0, values.Max()));
        var more = labelMm * (high - low) / (heightMm - (Sides(values) * labelMm));
        return Ticks.Over(
            Axis,
            low < 0 && Axis.From is null ? low - more : low,
            high > 0 && Axis.To is null ? high + more : high,
            (int)Math.Max(2, heightMm / 9)
        );
    }

    private void Bars(SceneBuilder builder, Placing placing)
    {
        var (plot, ticks, _, figures) = placing;
        var barMm = BarMm(plot);
        double HeightAt(double value) => plot.BottomMm - ((value - ticks.From) / ticks.Span * plot.HeightMm);
        var zeroMm = HeightAt(0);
        var groupMm = GroupMm(plot);
        var labels = new List<(PaperPoint At, double Value)>();
        for (var i = 0; i < Categories.Count; i++)
        {
            var below = 0.0;
            for (var s = 0; s < Series.Count; s++)
            {
                var value = below + Series[s].Values[i];
                var besideMm = IsStacked ? 0 : s * barMm;
                var leftMm = plot.LeftMm + (i * groupMm) + (groupMm * (1 - GroupShare) / 2) + besideMm;
                var (fromMm, endMm) = (HeightAt(below), HeightAt(value));
                Bar(builder, s, new(leftMm, Math.Min(endMm, fromMm), leftMm + barMm, Math.Max(endMm, fromMm)));
                below = IsStacked ? value : 0;
                if (!IsStacked || s == Series.Count - 1)
                {
                    labels.Add((new(leftMm + (barMm / 2), endMm), value));
                }
            }
        }

        builder.Line(Layer.Thin, new(plot.LeftMm, zeroMm), new(plot.RightMm, zeroMm));
        for (var i = 0; figures is not null && i < labels.Count; i += figures.EveryCount)
        {
            var (at, value) = labels[i];
            var isDown = value < 0;
            builder.Text(at.Moved(0, isDown ? 0.6 : -0.6), Figure(value), FigureStyle(figures.IsUpright, isDown));
        }
    }

    private static TextStyle FigureStyle(bool isUpright, bool isDown) =>
        isUpright
            ? new(ChartFrame.LabelMm)
            {
                RotationDeg = 90,
                Horizontal = isDown ? HorizontalAnchor.Right : HorizontalAnchor.Left,
                Vertical = VerticalAnchor.Middle,
                IsOpaque = true,
            }
            : new(ChartFrame.LabelMm)
            {
                Horizontal = HorizontalAnchor.Centre,
                Vertical = isDown ? VerticalAnchor.Top : VerticalAnchor.Bottom,
                IsOpaque = true,
            };

    private string Figure(double value) => value.ToString(ValueFormat, CultureInfo.InvariantCulture);

    private static void Bar(SceneBuilder builder, int series, PaperBox box)
    {
        var (fill, hatch) = Looks[series];
        builder.Rectangle(Layer.Thin, box, fill);
        if (hatch is { } pattern && box.HeightMm > 0)
        {
            builder.Hatch(pattern, box.Corners, spacingMm: 1.2);
        }
    }
}
