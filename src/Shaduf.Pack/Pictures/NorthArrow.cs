namespace Shaduf.Pack;

/// <summary>The arrow that tells where north is.</summary>
internal static class NorthArrow
{
    /// <summary>Draws it right of all that is drawn so far.</summary>
    /// <param name="view">The plan, north up.</param>
    public static void Draw(SiteView view)
    {
        var drawn = view.Builder.Build().Bounds()!.Value;
        PaperPoint foot = new(drawn.RightMm + 10, drawn.TopMm + 26);
        view.Builder.Line(Layer.Outline, foot, foot.Moved(0, -20));
        view.Builder.Polygon(
            Layer.Outline,
            [foot.Moved(0, -20), foot.Moved(-2.4, -12), foot.Moved(2.4, -12)],
            Palette.Ink
        );
        view.Builder.Text(foot.Moved(0, -21.5), "N", TextStyle.Title with { Horizontal = HorizontalAnchor.Centre });
    }
}
