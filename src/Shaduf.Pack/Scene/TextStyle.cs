namespace Shaduf.Pack;

/// <summary>How heavy letters are.</summary>
public enum FontWeight
{
    /// <summary>Normal.</summary>
    Regular,

    /// <summary>Bold.</summary>
    Bold,
}

/// <summary>Which part of a text stands at its anchor point, across.</summary>
public enum HorizontalAnchor
{
    /// <summary>Its left end.</summary>
    Left,

    /// <summary>Its middle.</summary>
    Centre,

    /// <summary>Its right end.</summary>
    Right,
}

/// <summary>Which part of a text stands at its anchor point, upwards.</summary>
public enum VerticalAnchor
{
    /// <summary>The line it is written on.</summary>
    Baseline,

    /// <summary>Its upper edge.</summary>
    Top,

    /// <summary>The middle of its capitals.</summary>
    Middle,

    /// <summary>Its lower edge.</summary>
    Bottom,
}

/// <summary>How a text looks and which part of it stands at its anchor point.</summary>
/// <param name="SizeMm">Size of the letters' em [mm], 0.5 to 100; capitals are about two thirds of it.</param>
public sealed record TextStyle(double SizeMm = Lettering.BodyMm)
{
    /// <summary>Weight of the letters.</summary>
    public FontWeight Weight { get; init; }

    /// <summary>Part that stands at the anchor point, across.</summary>
    public HorizontalAnchor Horizontal { get; init; }

    /// <summary>Part that stands at the anchor point, upwards.</summary>
    public VerticalAnchor Vertical { get; init; }

    /// <summary>Turn about the anchor point [°], counter-clockwise as seen.</summary>
    public double RotationDeg { get; init; }

    /// <summary>Colour of the letters; keep to ink unless the ground is dark.</summary>
    public Colour Colour { get; init; } = Palette.Ink;

    /// <summary>Whether a white ground is laid under the text, to keep it readable over lines and hatching.</summary>
    public bool IsOpaque { get; init; }

    /// <summary>Small notes, 2.8 mm (8 point).</summary>
    public static TextStyle Small { get; } = new(Lettering.SmallMm);

    /// <summary>Body text, 3.5 mm (10 point).</summary>
    public static TextStyle Body { get; } = new(Lettering.BodyMm);

    /// <summary>Drawing text with capitals of 2.5 mm, the smallest of ISO 3098.</summary>
    public static TextStyle Drawing { get; } = new(Lettering.DrawingMm);

    /// <summary>Titles, 5 mm, bold.</summary>
    public static TextStyle Title { get; } = new(Lettering.TitleMm) { Weight = FontWeight.Bold };

    /// <summary>The style with the text's middle at the anchor point.</summary>
    public TextStyle Centred => this with { Horizontal = HorizontalAnchor.Centre, Vertical = VerticalAnchor.Middle };
}
