namespace Shaduf.Pack;

/// <summary>The arrow that tells where north is.</summary>
internal static class NorthArrow
{
    /// <summary>Room that it takes right of what is drawn [mm].</summary>
    public const double RoomMm = 30;

    private const double LengthMm = 20;

    /// <summary>Draws it right of all that is drawn so far.</summary>
    /// <param name="view">The plan.</param>
    /// <param name="turnDeg">Where north lies on the paper, clockwise from straight up [deg].</param>
    public static void Draw(SiteView view, double turnDeg = 0)
    {
        var drawn = view.Builder.Build().Bounds()!.Value;
        var (sine, cosine) = Math.SinCos(turnDeg * Math.PI / 180);
        PaperPoint middle = new(drawn.RightMm + 10 + (8 * Math.Abs(sine)), drawn.TopMm + 16);
        PaperPoint At(double alongMm, double besideMm) =>
            middle.Moved((alongMm * sine) + (besideMm * cosine), (besideMm * sine) - (alongMm * cosine));
        view.Builder.Line(Layer.Outline, At(-LengthMm / 2, 0), At(LengthMm / 2, 0));
        view.Builder.Polygon(Layer.Outline, [At(10, 0), At(2, -2.4), At(2, 2.4)], Palette.Ink);
        view.Builder.Text(At(13, 0), "N", TextStyle.Title.Centred);
    }
}
