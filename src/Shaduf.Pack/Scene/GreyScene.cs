namespace Shaduf.Pack;

/// <summary>A scene for a printer without colours: every colour by its brightness, lines and words black.</summary>
internal static class GreyScene
{
    /// <summary>The same scene in grey.</summary>
    /// <param name="scene">The scene.</param>
    /// <returns>Black lines and words, grey fills.</returns>
    public static Scene Of(Scene scene) => scene with { Items = [.. scene.Items.Select(Grey)] };

    private static SceneItem Grey(SceneItem item) =>
        item switch
        {
            LineItem line => line with { Layer = Black(line.Layer) },
            PolyItem poly => poly with { Layer = Black(poly.Layer), Fill = Grey(poly.Fill) },
            CircleItem circle => circle with { Layer = Black(circle.Layer), Fill = Grey(circle.Fill) },
            ArcItem arc => arc with { Layer = Black(arc.Layer) },
            HatchItem hatch => hatch with { Layer = Black(hatch.Layer) },
            TextItem text => text with { Style = text.Style with { Colour = Word(text.Style.Colour) } },
            _ => item,
        };

    private static Layer Black(Layer layer) => layer with { Colour = Palette.Ink };

    private static Colour? Grey(Colour? fill)
    {
        if (fill is not { } colour)
        {
            return null;
        }

        var light = Brightness(colour);
        return new(light, light, light);
    }

    // White words stand on dark fills and stay white.
    private static Colour Word(Colour colour) => Brightness(colour) > 200 ? Palette.White : Palette.Ink;

    // Rec. 601 luma.
    private static byte Brightness(Colour colour) =>
        (byte)Math.Round((0.299 * colour.Red) + (0.587 * colour.Green) + (0.114 * colour.Blue));
}
