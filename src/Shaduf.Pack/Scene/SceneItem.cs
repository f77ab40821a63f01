namespace Shaduf.Pack;

/// <summary>One thing drawn. All places are on the paper.</summary>
/// <param name="Layer">What it stands for; gives pen and colour.</param>
public abstract record SceneItem(Layer Layer)
{
    /// <summary>Name of the thing that this is a picture of (a mark, a field); empty when it stands for nothing.</summary>
    public string About { get; init; } = "";

    /// <summary>The item moved on the paper.</summary>
    /// <param name="rightMm">To the right [mm].</param>
    /// <param name="downMm">Down [mm].</param>
    /// <returns>The moved item.</returns>
    public abstract SceneItem Moved(double rightMm, double downMm);

    /// <summary>The smallest box round the item, pen width left out.</summary>
    public abstract PaperBox Box { get; }
}

/// <summary>A straight line.</summary>
/// <param name="Layer">What it stands for.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
public sealed record LineItem(Layer Layer, PaperPoint From, PaperPoint To) : SceneItem(Layer)
{
    /// <inheritdoc/>
    public override SceneItem Moved(double rightMm, double downMm) =>
        this with
        {
            From = From.Moved(rightMm, downMm),
            To = To.Moved(rightMm, downMm),
        };

    /// <inheritdoc/>
    public override PaperBox Box => PaperBox.Round([From, To]);
}

/// <summary>A line through several points, open or closed, with or without a filling.</summary>
/// <param name="Layer">What it stands for.</param>
/// <param name="Points">Its points, at least two.</param>
/// <param name="IsClosed">Whether the last point is joined to the first.</param>
public sealed record PolyItem(Layer Layer, IReadOnlyList<PaperPoint> Points, bool IsClosed) : SceneItem(Layer)
{
    /// <summary>Colour of the filling; null for none.</summary>
    public Colour? Fill { get; init; }

    /// <summary>Whether the line itself is drawn; false leaves only the filling.</summary>
    public bool IsStroked { get; init; } = true;

    /// <inheritdoc/>
    public override SceneItem Moved(double rightMm, double downMm) =>
        this with
        {
            Points = [.. Points.Select(p => p.Moved(rightMm, downMm))],
        };

    /// <inheritdoc/>
    public override PaperBox Box => PaperBox.Round(Points);
}

/// <summary>A circle.</summary>
/// <param name="Layer">What it stands for.</param>
/// <param name="Centre">Its centre.</param>
/// <param name="RadiusMm">Its radius on the paper [mm], above 0.</param>
public sealed record CircleItem(Layer Layer, PaperPoint Centre, double RadiusMm) : SceneItem(Layer)
{
    /// <summary>Colour of the filling; null for none.</summary>
    public Colour? Fill { get; init; }

    /// <inheritdoc/>
    public override SceneItem Moved(double rightMm, double downMm) =>
        this with
        {
            Centre = Centre.Moved(rightMm, downMm),
        };

    /// <inheritdoc/>
    public override PaperBox Box => new PaperBox(Centre.XMm, Centre.YMm, Centre.XMm, Centre.YMm).Grown(RadiusMm);
}

/// <summary>A piece of a circle, counter-clockwise as seen from its start to its end.</summary>
/// <param name="Layer">What it stands for.</param>
/// <param name="Centre">Centre of the circle.</param>
/// <param name="RadiusMm">Radius on the paper [mm], above 0.</param>
/// <param name="StartDeg">Direction of the start [°], counter-clockwise from the right.</param>
/// <param name="SweepDeg">How far it goes counter-clockwise [°], 0 to 360 (360 excluded).</param>
public sealed record ArcItem(Layer Layer, PaperPoint Centre, double RadiusMm, double StartDeg, double SweepDeg)
    : SceneItem(Layer)
{
    /// <inheritdoc/>
    public override SceneItem Moved(double rightMm, double downMm) =>
        this with
        {
            Centre = Centre.Moved(rightMm, downMm),
        };

    /// <inheritdoc/>
    public override PaperBox Box =>
        PaperBox.Round([
            At(StartDeg),
            At(StartDeg + SweepDeg),
            .. Enumerable
                .Range((int)Math.Ceiling(StartDeg / 90), 5)
                .Where(quarter => quarter * 90 <= StartDeg + SweepDeg)
                .Select(quarter => At(quarter * 90.0)),
        ]);

    /// <summary>The point of the circle in a direction.</summary>
    /// <param name="directionDeg">The direction [°], counter-clockwise from the right.</param>
    /// <returns>The point.</returns>
    public PaperPoint At(double directionDeg)
    {
        var (sin, cos) = Math.SinCos(directionDeg * Math.PI / 180);
        return Centre.Moved(RadiusMm * cos, -RadiusMm * sin);
    }
}

/// <summary>How an area is hatched.</summary>
public enum HatchPattern
{
    /// <summary>Lines rising to the right: cut surface of any material.</summary>
    Diagonal,

    /// <summary>Lines falling to the right: a second part beside the first.</summary>
    DiagonalBack,

    /// <summary>Lines in both diagonals.</summary>
    Cross,

    /// <summary>Level lines.</summary>
    Horizontal,

    /// <summary>Upright lines.</summary>
    Vertical,

    /// <summary>Pairs of diagonals: steel in section.</summary>
    Steel,

    /// <summary>Dots: sand, mortar.</summary>
    Sand,

    /// <summary>Triangles and dots: concrete.</summary>
    Concrete,

    /// <summary>Groups of three strokes in alternating directions: natural ground.</summary>
    Earth,

    /// <summary>Round stones: gravel pack, soakaway.</summary>
    Gravel,

    /// <summary>Broken level lines: water.</summary>
    Water,
}

/// <summary>A hatched area. The outline is not drawn with it.</summary>
/// <param name="Layer">Layer of the hatch lines.</param>
/// <param name="Boundary">Corners of the area, at least three.</param>
/// <param name="Pattern">The pattern.</param>
/// <param name="SpacingMm">Distance of its lines [mm], 0.5 to 20.</param>
public sealed record HatchItem(
    Layer Layer,
    IReadOnlyList<PaperPoint> Boundary,
    HatchPattern Pattern,
    double SpacingMm = 2
) : SceneItem(Layer)
{
    /// <inheritdoc/>
    public override SceneItem Moved(double rightMm, double downMm) =>
        this with
        {
            Boundary = [.. Boundary.Select(p => p.Moved(rightMm, downMm))],
        };

    /// <inheritdoc/>
    public override PaperBox Box => PaperBox.Round(Boundary);
}

/// <summary>A line of text.</summary>
/// <param name="Layer">Layer it belongs to.</param>
/// <param name="At">Anchor point.</param>
/// <param name="Text">The text; one line.</param>
/// <param name="Style">How it looks and which part of it stands at the anchor point.</param>
public sealed record TextItem(Layer Layer, PaperPoint At, string Text, TextStyle Style) : SceneItem(Layer)
{
    /// <inheritdoc/>
    public override SceneItem Moved(double rightMm, double downMm) => this with { At = At.Moved(rightMm, downMm) };

    /// <summary>The text's box, turned as the text is.</summary>
    public TextBox TextBox => TextBox.Of(this);

    /// <inheritdoc/>
    public override PaperBox Box => PaperBox.Round(TextBox.Corners);
}
