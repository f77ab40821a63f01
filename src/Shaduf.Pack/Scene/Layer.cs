namespace Shaduf.Pack;

/// <summary>What a line stands for; gives its pen. Backends keep layers apart by name.</summary>
/// <param name="Name">The layer's name, one word.</param>
/// <param name="PenWidthMm">Pen width [mm], from the ISO 128 row 0.13 to 1.0.</param>
/// <param name="Colour">Colour of its lines.</param>
/// <source>Pen widths and line kinds after ISO 128-2 (from memory); the assignment is common practice.</source>
public sealed record Layer(string Name, double PenWidthMm, Colour Colour)
{
    /// <summary>Lengths of dash, gap, dash, gap ... [mm]; empty for a full line. Even count.</summary>
    public IReadOnlyList<double> DashMm { get; init; } = [];

    /// <summary>Visible edges.</summary>
    public static Layer Outline { get; } = new("Outline", 0.5, Palette.Ink);

    /// <summary>Lighter visible edges, table rules, boxes.</summary>
    public static Layer Thin { get; } = new("Thin", 0.18, Palette.Ink);

    /// <summary>Edges that are covered.</summary>
    public static Layer Hidden { get; } = new("Hidden", 0.25, Palette.Ink) { DashMm = [3, 1.5] };

    /// <summary>Centre lines and axes.</summary>
    public static Layer Centre { get; } = new("Centre", 0.25, Palette.Ink) { DashMm = [8, 1.5, 1, 1.5] };

    /// <summary>Dimension lines, leaders, their texts.</summary>
    public static Layer Dimension { get; } = new("Dimension", 0.25, Palette.Ink);

    /// <summary>Hatching.</summary>
    public static Layer Hatch { get; } = new("Hatch", 0.18, Palette.Steel);

    /// <summary>Text.</summary>
    public static Layer Text { get; } = new("Text", 0.35, Palette.Ink);

    /// <summary>The frame of a sheet.</summary>
    public static Layer Frame { get; } = new("Frame", 0.7, Palette.Ink);

    /// <summary>Fields along the frame of a sheet, with their letters and figures.</summary>
    public static Layer Fields { get; } = new("Fields", 0.35, Palette.Ink);

    /// <summary>Ground line.</summary>
    public static Layer Ground { get; } = new("Ground", 0.7, Palette.Clay);

    /// <summary>Water levels and the hydraulic grade line.</summary>
    public static Layer Water { get; } = new("Water", 0.35, Palette.Water) { DashMm = [6, 2] };

    /// <summary>Pipes.</summary>
    public static Layer Pipe { get; } = new("Pipe", 0.7, Palette.Water);

    /// <summary>Steel parts.</summary>
    public static Layer Steel { get; } = new("Steel", 0.5, Palette.Steel);

    /// <summary>Weld seams.</summary>
    public static Layer Weld { get; } = new("Weld", 1.0, Palette.Clay);

    /// <summary>Concrete.</summary>
    public static Layer Concrete { get; } = new("Concrete", 0.5, Palette.Ink);

    /// <summary>Solar modules.</summary>
    public static Layer Module { get; } = new("Module", 0.35, Palette.Water);

    /// <summary>Electric cables.</summary>
    public static Layer Electric { get; } = new("Electric", 0.35, Palette.Sun) { DashMm = [5, 1, 1, 1, 1, 1] };

    /// <summary>Earthing conductors and electrodes.</summary>
    public static Layer Earthing { get; } = new("Earthing", 0.5, Palette.Leaf) { DashMm = [1.2, 1.2] };

    /// <summary>Fence and gate.</summary>
    public static Layer Fence { get; } = new("Fence", 0.35, Palette.Leaf) { DashMm = [10, 1.5, 1.5, 1.5] };

    /// <summary>Sun rays, shade lines.</summary>
    public static Layer Sun { get; } = new("Sun", 0.25, Palette.Sun);

    /// <summary>Guide lines behind a chart.</summary>
    public static Layer Grid { get; } = new("Grid", 0.13, Palette.Steel.Tint(0.5));

    /// <summary>The house layers, in the order of this list.</summary>
    public static IReadOnlyList<Layer> All { get; } =
    [
        Outline,
        Thin,
        Hidden,
        Centre,
        Dimension,
        Hatch,
        Text,
        Frame,
        Fields,
        Ground,
        Water,
        Pipe,
        Steel,
        Weld,
        Concrete,
        Module,
        Electric,
        Earthing,
        Fence,
        Sun,
    ];
}
