namespace Shaduf.Pack;

/// <summary>A pen that draws in site coordinates on a picture. Several views may share one sheet.</summary>
/// <param name="builder">The picture.</param>
/// <param name="placing">How the site lies on the paper.</param>
public sealed class SiteView(SceneBuilder builder, SiteToPaper placing)
{
    /// <summary>The picture drawn on.</summary>
    public SceneBuilder Builder { get; } = builder;

    /// <summary>How the site lies on the paper.</summary>
    public SiteToPaper Placing { get; } = placing;

    /// <summary>Where a point of the site lies on the paper.</summary>
    /// <param name="point">The point of the site.</param>
    /// <returns>Its place on the paper.</returns>
    public PaperPoint At(SitePoint point) => Placing.ToPaper(point);

    /// <summary>A straight line.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <returns>This view.</returns>
    public SiteView Line(Layer layer, SitePoint from, SitePoint to) => With(b => b.Line(layer, At(from), At(to)));

    /// <summary>An open line through points.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="points">At least two points.</param>
    /// <returns>This view.</returns>
    public SiteView Polyline(Layer layer, IReadOnlyList<SitePoint> points) =>
        With(b => b.Polyline(layer, OnPaper(points)));

    /// <summary>A closed line through points.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="points">At least three points.</param>
    /// <param name="fill">Colour of the filling; none when left out.</param>
    /// <returns>This view.</returns>
    public SiteView Polygon(Layer layer, IReadOnlyList<SitePoint> points, Colour? fill = null) =>
        With(b => b.Polygon(layer, OnPaper(points), fill));

    /// <summary>An upright rectangle between two opposite corners.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="corner">One corner.</param>
    /// <param name="opposite">The opposite corner.</param>
    /// <param name="fill">Colour of the filling; none when left out.</param>
    /// <returns>This view.</returns>
    public SiteView Rectangle(Layer layer, SitePoint corner, SitePoint opposite, Colour? fill = null) =>
        With(b => b.Rectangle(layer, PaperBox.Round([At(corner), At(opposite)]), fill));

    /// <summary>A circle.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="centre">Its centre.</param>
    /// <param name="radiusMm">Its radius on the site [mm], above 0.</param>
    /// <param name="fill">Colour of the filling; none when left out.</param>
    /// <returns>This view.</returns>
    /// <exception cref="InvalidOperationException">The view is stretched.</exception>
    public SiteView Circle(Layer layer, SitePoint centre, double radiusMm, Colour? fill = null) =>
        With(b => b.Circle(layer, At(centre), Placing.LengthMm(radiusMm), fill));

    /// <summary>A piece of a circle, counter-clockwise as seen.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="centre">Centre of the circle.</param>
    /// <param name="radiusMm">Radius on the site [mm], above 0.</param>
    /// <param name="startDeg">Direction of the start [°], counter-clockwise from the right.</param>
    /// <param name="sweepDeg">How far it goes [°], 0 to 360 (360 excluded).</param>
    /// <returns>This view.</returns>
    /// <exception cref="InvalidOperationException">The view is stretched.</exception>
    public SiteView Arc(Layer layer, SitePoint centre, double radiusMm, double startDeg, double sweepDeg) =>
        With(b => b.Arc(layer, At(centre), Placing.LengthMm(radiusMm), startDeg, sweepDeg));

    /// <summary>A hatched area without outline.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="boundary">At least three corners.</param>
    /// <param name="layer">Layer of the hatch lines; the hatch layer when left out.</param>
    /// <param name="spacingMm">Distance of the lines on the paper [mm], 0.5 to 20.</param>
    /// <returns>This view.</returns>
    public SiteView Hatch(
        HatchPattern pattern,
        IReadOnlyList<SitePoint> boundary,
        Layer? layer = null,
        double spacingMm = 2
    ) => With(b => b.Hatch(pattern, OnPaper(boundary), layer, spacingMm));

    /// <summary>Concrete that is cut, between two opposite corners.</summary>
    /// <param name="corner">One corner.</param>
    /// <param name="opposite">The opposite corner.</param>
    /// <returns>This view.</returns>
    public SiteView Concrete(SitePoint corner, SitePoint opposite)
    {
        SitePoint[] outline = [corner, new(opposite.XMm, corner.YMm), opposite, new(corner.XMm, opposite.YMm)];
        return Hatch(HatchPattern.Concrete, outline).Polygon(Layer.Concrete, outline);
    }

    /// <summary>A line of text.</summary>
    /// <param name="at">Anchor point.</param>
    /// <param name="text">The text; one line.</param>
    /// <param name="style">How it looks and is anchored; body text from the left on its baseline when left out.</param>
    /// <returns>This view.</returns>
    public SiteView Text(SitePoint at, string text, TextStyle? style = null) => With(b => b.Text(At(at), text, style));

    /// <summary>A label beside a thing; see <see cref="SceneBuilder.Leader"/>.</summary>
    /// <param name="tip">The point of the site that is spoken of.</param>
    /// <param name="rightMm">How far to the right on the paper the text begins [mm]; negative: to the left.</param>
    /// <param name="downMm">How far down on the paper the text stands [mm]; negative: up.</param>
    /// <param name="text">The text; several lines are parted by <c>\n</c>.</param>
    /// <returns>This view.</returns>
    public SiteView Leader(SitePoint tip, double rightMm, double downMm, string text) =>
        With(b => b.Leader(At(tip), At(tip).Moved(rightMm, downMm), text));

    /// <summary>Level or upright dimensions on one side of the thing, spread so that nothing collides.</summary>
    /// <param name="side">Above or below: measured across; left or right: measured upwards.</param>
    /// <param name="row">The dimensions, in any order.</param>
    /// <param name="layout">Distances and letter size; the house's when left out.</param>
    /// <returns>This view.</returns>
    public SiteView Dimensions(DimensionSide side, IReadOnlyList<Dimension> row, DimensionLayout? layout = null) =>
        With(b => b.Add(DimensionRow.Compose(Placing, side, row, layout ?? DimensionLayout.House)));

    /// <summary>A chain of level or upright dimensions from point to point.</summary>
    /// <param name="side">Above or below: measured across; left or right: measured upwards.</param>
    /// <param name="points">At least two points, in order.</param>
    /// <param name="withOverall">Whether the distance from first to last is given too.</param>
    /// <returns>This view.</returns>
    public SiteView DimensionChain(DimensionSide side, IReadOnlyList<SitePoint> points, bool withOverall = true)
    {
        // Figures count from the first point in whole millimetres, so that the links of a chain add up to its total.
        var isAcross = side is DimensionSide.Above or DimensionSide.Below;
        double Whole(SitePoint at) =>
            Math.Round(isAcross ? at.XMm - points[0].XMm : at.YMm - points[0].YMm, MidpointRounding.AwayFromZero);
        var links = points
            .Zip(
                points.Skip(1),
                (a, b) =>
                    new Dimension(a, b) { Text = FormattableString.Invariant($"{Math.Abs(Whole(b) - Whole(a)):0}") }
            )
            .ToList();
        if (withOverall && links.Count > 1)
        {
            links.Add(new(points[0], points[^1]));
        }

        return Dimensions(side, links);
    }

    /// <summary>The true distance of two points, drawn along the line that joins them.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <param name="offsetMm">Distance of the dimension line on the paper [mm]; positive: left of the way from the
    /// first point to the second.</param>
    /// <param name="layout">Distances and letter size; the house's when left out.</param>
    /// <returns>This view.</returns>
    /// <exception cref="ArgumentException">The points coincide on the paper.</exception>
    public SiteView AlignedDimension(Dimension dimension, double offsetMm, DimensionLayout? layout = null) =>
        With(b => b.Add(DimensionRow.Aligned(Placing, dimension, offsetMm, layout ?? DimensionLayout.House)));

    /// <summary>Small lines of text under all that is drawn.</summary>
    /// <param name="leftMm">Where they begin on the paper [mm].</param>
    /// <param name="lines">The lines.</param>
    /// <returns>This view.</returns>
    public SiteView Under(double leftMm, IReadOnlyList<string> lines)
    {
        var drawn = Builder.Build().Bounds()!.Value;
        return With(b =>
            lines
                .Index()
                .Aggregate(
                    b,
                    (all, line) =>
                        all.Text(new(leftMm, drawn.BottomMm + 5 + (line.Index * 4)), line.Item, TextStyle.Small)
                )
        );
    }

    private SiteView With(Func<SceneBuilder, SceneBuilder> draw)
    {
        draw(Builder);
        return this;
    }

    private List<PaperPoint> OnPaper(IReadOnlyList<SitePoint> points) => [.. points.Select(At)];
}
