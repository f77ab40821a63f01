namespace Shaduf.Pack;

/// <summary>Composes a scene in paper coordinates; <see cref="View"/> gives a pen in site coordinates.</summary>
/// <param name="size">Size of the picture.</param>
public sealed class SceneBuilder(PaperSize size)
{
    private readonly List<SceneItem> items = [];
    private string about = "";

    /// <summary>Size of the picture.</summary>
    public PaperSize Size { get; } = size;

    /// <summary>A pen that draws in site coordinates on this picture.</summary>
    /// <param name="placing">How the site lies on the paper.</param>
    /// <returns>The pen.</returns>
    public SiteView View(SiteToPaper placing) => new(this, placing);

    /// <summary>Names the thing that the following items are a picture of.</summary>
    /// <param name="name">A mark or a field; empty to end.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder About(string name)
    {
        about = name;
        return this;
    }

    /// <summary>What is drawn now; empty for nothing.</summary>
    internal string Subject => about;

    /// <summary>Adds an item as it is.</summary>
    /// <param name="item">The item.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Add(SceneItem item)
    {
        items.Add(item.About.Length == 0 && about.Length > 0 ? item with { About = about } : item);
        return this;
    }

    /// <summary>Adds items as they are.</summary>
    /// <param name="several">The items, from the bottom to the top.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Add(IEnumerable<SceneItem> several)
    {
        foreach (var item in several)
        {
            Add(item);
        }

        return this;
    }

    /// <summary>A straight line.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Line(Layer layer, PaperPoint from, PaperPoint to) => Add(new LineItem(layer, from, to));

    /// <summary>An open line through points.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="points">At least two points.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Polyline(Layer layer, IReadOnlyList<PaperPoint> points) =>
        Add(new PolyItem(layer, points, false));

    /// <summary>A closed line through points.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="points">At least three points.</param>
    /// <param name="fill">Colour of the filling; none when left out.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Polygon(Layer layer, IReadOnlyList<PaperPoint> points, Colour? fill = null) =>
        Add(new PolyItem(layer, points, true) { Fill = fill });

    /// <summary>An upright rectangle.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="box">The rectangle.</param>
    /// <param name="fill">Colour of the filling; none when left out.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Rectangle(Layer layer, PaperBox box, Colour? fill = null) => Polygon(layer, box.Corners, fill);

    /// <summary>A filled area without outline.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="points">At least three corners.</param>
    /// <param name="fill">Colour of the filling.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Area(Layer layer, IReadOnlyList<PaperPoint> points, Colour fill) =>
        Add(new PolyItem(layer, points, true) { Fill = fill, IsStroked = false });

    /// <summary>A circle.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="centre">Its centre.</param>
    /// <param name="radiusMm">Its radius on the paper [mm], above 0.</param>
    /// <param name="fill">Colour of the filling; none when left out.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Circle(Layer layer, PaperPoint centre, double radiusMm, Colour? fill = null) =>
        Add(new CircleItem(layer, centre, radiusMm) { Fill = fill });

    /// <summary>A piece of a circle, counter-clockwise as seen.</summary>
    /// <param name="layer">What it stands for.</param>
    /// <param name="centre">Centre of the circle.</param>
    /// <param name="radiusMm">Radius on the paper [mm], above 0.</param>
    /// <param name="startDeg">Direction of the start [°], counter-clockwise from the right.</param>
    /// <param name="sweepDeg">How far it goes [°], 0 to 360 (360 excluded).</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Arc(Layer layer, PaperPoint centre, double radiusMm, double startDeg, double sweepDeg) =>
        Add(new ArcItem(layer, centre, radiusMm, startDeg, sweepDeg));

    /// <summary>A hatched area without outline.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="boundary">At least three corners.</param>
    /// <param name="layer">Layer of the hatch lines; the hatch layer when left out.</param>
    /// <param name="spacingMm">Distance of the lines [mm], 0.5 to 20.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Hatch(
        HatchPattern pattern,
        IReadOnlyList<PaperPoint> boundary,
        Layer? layer = null,
        double spacingMm = 2
    ) => Add(new HatchItem(layer ?? Layer.Hatch, boundary, pattern, spacingMm));

    /// <summary>A line of text.</summary>
    /// <param name="at">Anchor point.</param>
    /// <param name="text">The text; one line.</param>
    /// <param name="style">How it looks and is anchored; body text from the left on its baseline when left out.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Text(PaperPoint at, string text, TextStyle? style = null) =>
        Add(new TextItem(Layer.Text, at, text, style ?? TextStyle.Body));

    /// <summary>A label beside a thing, with a bent line that leads to it and ends in a dot.</summary>
    /// <param name="tip">Where the line ends, on the thing.</param>
    /// <param name="elbow">Where the line bends; the text goes on from here, away from the tip.</param>
    /// <param name="text">The text; several lines are parted by <c>\n</c>.</param>
    /// <param name="sizeMm">Size of the letters [mm].</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Leader(PaperPoint tip, PaperPoint elbow, string text, double sizeMm = Lettering.SmallMm)
    {
        var isLeft = elbow.XMm < tip.XMm;
        var style = new TextStyle(sizeMm)
        {
            Horizontal = isLeft ? HorizontalAnchor.Right : HorizontalAnchor.Left,
            IsOpaque = true,
        };
        var lines = text.Split('\n');
        var lengthMm = lines.Max(line => Lettering.WidthMm(line, sizeMm));
        Polyline(Layer.Dimension, [tip, elbow, elbow.Moved(isLeft ? -lengthMm : lengthMm, 0)]);
        Circle(Layer.Dimension, tip, 0.5, Layer.Dimension.Colour);
        for (var i = 0; i < lines.Length; i++)
        {
            // The first line stands on the leader, the others below it.
            var downMm = i == 0 ? -1 : (sizeMm * (Lettering.AscentRatio + ((i - 1) * Lettering.LineRatio))) + 0.5;
            Add(new TextItem(Layer.Dimension, elbow.Moved(0, downMm), lines[i], style));
        }

        return this;
    }

    /// <summary>A mark in a circle, as painted on a part.</summary>
    /// <param name="centre">Centre of the circle.</param>
    /// <param name="mark">The mark.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Balloon(PaperPoint centre, string mark)
    {
        var style = TextStyle.Small.Centred with { Weight = FontWeight.Bold };
        var radiusMm = Math.Max(3, (Lettering.WidthMm(mark, style.SizeMm, style.Weight) / 2) + 1);
        return Circle(Layer.Dimension, centre, radiusMm, Palette.White).Text(centre, mark, style);
    }

    /// <summary>Puts another scene on this one.</summary>
    /// <param name="inner">The other scene.</param>
    /// <param name="topLeft">Where its top left corner goes.</param>
    /// <returns>This builder.</returns>
    public SceneBuilder Place(Scene inner, PaperPoint topLeft) =>
        Add(inner.Items.Select(item => item.Moved(topLeft.XMm, topLeft.YMm)));

    /// <summary>The scene composed so far.</summary>
    /// <param name="title">What the picture shows, for those who cannot see it.</param>
    /// <returns>The scene.</returns>
    public Scene Build(string title = "") => new(Size, [.. items]) { Title = title };
}
