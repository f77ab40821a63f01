using System.Globalization;

namespace Shaduf.Pack;

/// <summary>A colour of paper or ink, sRGB.</summary>
/// <param name="Red">Red, 0 to 255.</param>
/// <param name="Green">Green, 0 to 255.</param>
/// <param name="Blue">Blue, 0 to 255.</param>
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>The colour as <c>#RRGGBB</c>.</summary>
    public string Hex => string.Create(CultureInfo.InvariantCulture, $"#{Red:X2}{Green:X2}{Blue:X2}");

    /// <summary>The colour mixed with white.</summary>
    /// <param name="share">How much of the colour is kept, 0 (white) to 1.</param>
    /// <returns>The lighter colour.</returns>
    public Colour Tint(double share) => new(Mixed(Red, share), Mixed(Green, share), Mixed(Blue, share));

    private static byte Mixed(byte part, double share) => (byte)Math.Round(255 - ((255 - part) * share));
}

/// <summary>The house colours. Nothing is told by colour alone: dash, weight, hatch or a word says it too.</summary>
public static class Palette
{
    /// <summary>White, the ground of every printed page.</summary>
    public static Colour White => new(0xFF, 0xFF, 0xFF);

    /// <summary>Warm paper, for tinted boxes and screens.</summary>
    public static Colour Paper => new(0xFA, 0xF7, 0xF0);

    /// <summary>Ink: text and outlines.</summary>
    public static Colour Ink => new(0x1F, 0x2A, 0x37);

    /// <summary>Water.</summary>
    public static Colour Water => new(0x1F, 0x6F, 0x8B);

    /// <summary>Sun and electricity.</summary>
    public static Colour Sun => new(0xC9, 0x7B, 0x00);

    /// <summary>Steel.</summary>
    public static Colour Steel => new(0x5B, 0x67, 0x70);

    /// <summary>Clay: ground and warnings.</summary>
    public static Colour Clay => new(0xA4, 0x50, 0x2F);

    /// <summary>Leaf: fence, earthing, plants.</summary>
    public static Colour Leaf => new(0x4C, 0x7A, 0x34);
}
