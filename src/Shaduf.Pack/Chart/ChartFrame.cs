namespace Shaduf.Pack;

/// <summary>The parts that charts share: legend, axes, guide lines, labels that never collide.</summary>
internal sealed class ChartFrame
{
    internal const double LabelMm = Lettering.SmallMm;
    private const double TickMm = 1;
    private const double LegendRowMm = 4.6;
    private const double SwatchMm = 8;

    private readonly SceneBuilder builder;
    private double topMm;

    internal ChartFrame(PaperSize size)
    {
        if (size.WidthMm < 40 || size.HeightMm < 35)
        {
            throw new ArgumentException("A chart needs at least 40 x 35 mm.", nameof(size));
        }

        builder = new(size);
        topMm = 0.5;
    }

    internal SceneBuilder Builder => builder;

    /// <summary>Text height of one line with a little air.</summary>
    internal static double LabelHeightMm => LabelMm * (Lettering.AscentRatio + Lettering.DescentRatio);

    /// <summary>Rows of names above the plot, each with a sample of its drawing.</summary>
    internal void Legend(IReadOnlyList<string> names, Action<SceneBuilder, int, PaperBox> sample)
    {
        var style = new TextStyle(LabelMm) { Vertical = VerticalAnchor.Middle };
        var xMm = 0.0;
        for (var i = 0; i < names.Count; i++)
        {
            var name = Lettering.Shortened(names[i], builder.Size.WidthMm - SwatchMm - 2, style);
            var widthMm = SwatchMm + 1.5 + Lettering.WidthMm(name, LabelMm);
            if (xMm > 0 && xMm + widthMm > builder.Size.WidthMm)
            {
                xMm = 0;
                topMm += LegendRowMm;
            }

            var midMm = topMm + (LegendRowMm / 2);
            sample(builder, i, new(xMm + 0.5, midMm - 1.4, xMm + SwatchMm, midMm + 1.4));
            builder.Text(new(xMm + SwatchMm + 1.5, midMm), name, style);
            xMm += widthMm + 6;
        }

        topMm += LegendRowMm + 1.2;
    }

    /// <summary>The box of the plot, when the texts round it have their room.</summary>
    internal PaperBox Plot(double yLabelsMm, double xLabelsMm, double xLastHalfMm, bool hasXTitle)
    {
        var bottomMm = TickMm + 0.8 + xLabelsMm + (hasXTitle ? LabelHeightMm + 1 : 0) + 0.3;
        return new(
            yLabelsMm + TickMm + 1,
            topMm + LabelHeightMm + (LabelHeightMm / 2) + 1,
            builder.Size.WidthMm - Math.Max(1, xLastHalfMm),
            builder.Size.HeightMm - bottomMm
        );
    }

    /// <summary>Width of the widest label of an axis.</summary>
    internal static double WidestMm(Ticks ticks) =>
        ticks.Values.Max(value => Lettering.WidthMm(ticks.Label(value), LabelMm));

    /// <summary>Upright axis: title over it, guide lines, ticks, labels.</summary>
    internal void YAxis(PaperBox plot, Ticks ticks, string title)
    {
        var titleStyle = new TextStyle(LabelMm) { Weight = FontWeight.Bold, Vertical = VerticalAnchor.Top };
        builder.Text(new(0, topMm), Lettering.Shortened(title, builder.Size.WidthMm, titleStyle), titleStyle);
        var style = new TextStyle(LabelMm) { Horizontal = HorizontalAnchor.Right, Vertical = VerticalAnchor.Middle };
        foreach (var value in ticks.Values)
        {
            var yMm = plot.BottomMm - ((value - ticks.From) / ticks.Span * plot.HeightMm);
            builder.Line(Layer.Grid, new(plot.LeftMm, yMm), new(plot.RightMm, yMm));
            builder.Line(Layer.Thin, new(plot.LeftMm - TickMm, yMm), new(plot.LeftMm, yMm));
            builder.Text(new(plot.LeftMm - TickMm - 0.8, yMm), ticks.Label(value), style);
        }

        builder.Line(Layer.Thin, new(plot.LeftMm, plot.TopMm), new(plot.LeftMm, plot.BottomMm));
    }

    /// <summary>Level axis under the plot: labels at places given, and a title.</summary>
    internal void XAxis(PaperBox plot, IReadOnlyList<(double XMm, string Text)> labels, Fitted how, string title)
    {
        builder.Line(Layer.Thin, new(plot.LeftMm, plot.BottomMm), new(plot.RightMm, plot.BottomMm));
        for (var i = 0; i < labels.Count; i += how.EveryCount)
        {
            var (xMm, text) = labels[i];
            builder.Line(Layer.Thin, new(xMm, plot.BottomMm), new(xMm, plot.BottomMm + TickMm));
            builder.Text(new(xMm, plot.BottomMm + TickMm + 0.8), how.Cut(text), how.Under);
        }

        if (title.Length > 0)
        {
            var style = new TextStyle(LabelMm)
            {
                Weight = FontWeight.Bold,
                Horizontal = HorizontalAnchor.Right,
                Vertical = VerticalAnchor.Bottom,
            };
            builder.Text(
                new(builder.Size.WidthMm, builder.Size.HeightMm - 0.3),
                Lettering.Shortened(title, builder.Size.WidthMm, style),
                style
            );
        }
    }

    /// <summary>How labels in a row are written so that they never collide.</summary>
    /// <param name="IsUpright">Whether they are turned by a quarter.</param>
    /// <param name="EveryCount">1: all; 2: every second; and so on.</param>
    /// <param name="LongestMm">Longest label [mm]; a longer one is shortened.</param>
    internal sealed record Fitted(bool IsUpright, int EveryCount, double LongestMm)
    {
        internal double HeightMm => IsUpright ? LongestMm : LabelHeightMm;

        internal TextStyle Under =>
            IsUpright
                ? new(LabelMm)
                {
                    RotationDeg = 90,
                    Horizontal = HorizontalAnchor.Right,
                    Vertical = VerticalAnchor.Middle,
                }
                : new(LabelMm) { Horizontal = HorizontalAnchor.Centre, Vertical = VerticalAnchor.Top };

        internal string Cut(string text) => Lettering.Shortened(text, LongestMm + 0.001, Under);

        /// <summary>Level if they fit the pitch, else upright, else upright with some left out.</summary>
        internal static Fitted To(IEnumerable<string> labels, double pitchMm, double mostMm)
        {
            var longestMm = labels.Select(text => Lettering.WidthMm(text, LabelMm)).DefaultIfEmpty().Max();
            if (longestMm + 1 <= pitchMm)
            {
                return new(false, 1, longestMm);
            }

            var every = Math.Max(1, (int)Math.Ceiling((LabelHeightMm + 0.2) / pitchMm));
            return new(true, every, Math.Min(longestMm, mostMm));
        }
    }
}
