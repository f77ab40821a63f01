namespace Shaduf.Pack;

/// <summary>
/// Symbols of a wiring diagram, drawn by ourselves after IEC 60617 (from memory). Each stands on a line that runs down the
/// page through its centre; the caller draws the line first.
/// </summary>
internal static class ElectricSymbols
{
    /// <summary>A line that current flows along.</summary>
    public static Layer Wire { get; } = Layer.Outline with { Name = "Wire", PenWidthMm = 0.35 };

    private static readonly Layer s_symbol = Layer.Outline with { PenWidthMm = 0.35 };

    /// <summary>A photovoltaic module: a box with a wedge at its plus end.</summary>
    public static void Module(SceneBuilder builder, PaperPoint at)
    {
        builder.Rectangle(s_symbol, Round(at, 4, 3), Palette.White);
        builder.Polyline(s_symbol, [at.Moved(-4, -3), at.Moved(0, 0.5), at.Moved(4, -3)]);
    }

    /// <summary>A fuse: a box that the line runs through.</summary>
    public static void Fuse(SceneBuilder builder, PaperPoint at)
    {
        builder.Rectangle(s_symbol, Round(at, 1.3, 3), Palette.White);
        builder.Line(Wire, at.Moved(0, -3), at.Moved(0, 3));
    }

    /// <summary>A switch-disconnector, open: bar and ring at the fixed contact, the blade aside.</summary>
    public static void Isolator(SceneBuilder builder, PaperPoint at)
    {
        builder.Area(s_symbol, Round(at, 1, 3.2).Corners, Palette.White);
        builder.Line(s_symbol, at.Moved(-1.8, -3), at.Moved(1.8, -3));
        builder.Circle(s_symbol, at.Moved(0, -2.2), 0.8, Palette.White);
        builder.Line(s_symbol, at.Moved(0, 3.2), at.Moved(-2.8, -2));
    }

    /// <summary>A surge arrester in a branch to the left that ends at the earth bar.</summary>
    public static void Arrester(SceneBuilder builder, PaperPoint at, double earthMm)
    {
        builder.Line(Wire, at, new(earthMm, at.YMm));
        var centre = new PaperPoint((at.XMm + earthMm) / 2, at.YMm);
        builder.Rectangle(s_symbol, Round(centre, 3.6, 1.9), Palette.White);
        builder.Polyline(s_symbol, [centre.Moved(-2.6, 2.8), centre.Moved(-1.4, 2.8), centre.Moved(1.6, -2.8)]);
        builder.Circle(s_symbol, at, 0.6, s_symbol.Colour);
        builder.Circle(s_symbol, new(earthMm, at.YMm), 0.6, s_symbol.Colour);
    }

    /// <summary>A converter from direct current to three phases.</summary>
    public static void Drive(SceneBuilder builder, PaperPoint at)
    {
        builder.Rectangle(s_symbol, Round(at, 7, 6), Palette.White);
        builder.Line(s_symbol, at.Moved(-7, 6), at.Moved(7, -6));
        Equals(builder, at.Moved(-3.4, -3));
        builder.Text(at.Moved(1.2, 3.4), "3", TextStyle.Small.Centred);
        Wave(builder, at.Moved(4.4, 3.4), 1.6);
    }

    /// <summary>A filter: coils in the line.</summary>
    public static void Filter(SceneBuilder builder, PaperPoint at, bool isSine)
    {
        builder.Rectangle(s_symbol, Round(at, 4.5, 4.5), Palette.White);
        foreach (var down in new[] { -2.4, -0.8, 0.8, 2.4 })
        {
            builder.Arc(s_symbol, at.Moved(-1.6, down), 0.8, 270, 180);
        }

        builder.Line(Wire, at.Moved(-1.6, -3.2), at.Moved(-1.6, -4.5));
        builder.Line(Wire, at.Moved(-1.6, 3.2), at.Moved(-1.6, 4.5));
        if (isSine)
        {
            Wave(builder, at.Moved(1.9, 0), 1.6);
        }
        else
        {
            builder.Polyline(
                s_symbol,
                [at.Moved(0.4, 1.4), at.Moved(1.6, 1.4), at.Moved(2.4, -1.4), at.Moved(3.6, -1.4)]
            );
        }
    }

    /// <summary>A motor on three phases: a cage motor, or one with magnets that its controller turns.</summary>
    public static void Motor(SceneBuilder builder, PaperPoint at, bool hasMagnets)
    {
        builder.Circle(s_symbol, at, 7, Palette.White);
        builder.Text(
            at.Moved(0, -1.6),
            hasMagnets ? "MS" : "M",
            TextStyle.Body.Centred with
            {
                Weight = FontWeight.Bold,
            }
        );
        builder.Text(at.Moved(-2, 3), "3", TextStyle.Small.Centred);
        Wave(builder, at.Moved(1.4, 3), 1.6);
    }

    /// <summary>A battery on a line that runs across: a long and a short plate.</summary>
    public static void Battery(SceneBuilder builder, PaperPoint at)
    {
        builder.Area(s_symbol, Round(at, 0.8, 3).Corners, Palette.White);
        builder.Line(s_symbol, at.Moved(-0.8, -3), at.Moved(-0.8, 3));
        builder.Line(s_symbol, at.Moved(0.8, -1.5), at.Moved(0.8, 1.5));
    }

    /// <summary>A lamp: a circle with a cross.</summary>
    public static void Lamp(SceneBuilder builder, PaperPoint at)
    {
        const double aside = 1.9;
        builder.Circle(s_symbol, at, 2.7, Palette.White);
        builder.Line(s_symbol, at.Moved(-aside, -aside), at.Moved(aside, aside));
        builder.Line(s_symbol, at.Moved(-aside, aside), at.Moved(aside, -aside));
    }

    /// <summary>A contact at the end of a line that runs across: a blade over a gap.</summary>
    public static void Contact(SceneBuilder builder, PaperPoint at)
    {
        builder.Area(s_symbol, Round(at, 3, 1.5).Corners, Palette.White);
        builder.Circle(s_symbol, at.Moved(-3, 0), 0.6, Palette.White);
        builder.Circle(s_symbol, at.Moved(3, 0), 0.6, Palette.White);
        builder.Line(s_symbol, at.Moved(-2.4, 0), at.Moved(2.6, -2.2));
    }

    /// <summary>A box at which a line begins.</summary>
    public static void Terminal(SceneBuilder builder, PaperPoint at) =>
        builder.Rectangle(s_symbol, Round(at, 2.4, 2.4), Palette.White);

    /// <summary>Earth: three bars, each shorter than the one above.</summary>
    public static void Earth(SceneBuilder builder, PaperPoint at)
    {
        foreach (var (i, half) in new[] { 3.2, 2.1, 1.0 }.Index())
        {
            builder.Line(s_symbol, at.Moved(-half, i * 1.2), at.Moved(half, i * 1.2));
        }
    }

    /// <summary>A small dot where lines are joined.</summary>
    public static void Joint(SceneBuilder builder, PaperPoint at) => builder.Circle(s_symbol, at, 0.6, s_symbol.Colour);

    /// <summary>Strokes across a line: as many as it has conductors.</summary>
    public static void Conductors(SceneBuilder builder, PaperPoint at, int count)
    {
        for (var i = 0; i < count; i++)
        {
            var middle = at.Moved(0, (i - ((count - 1) / 2.0)) * 1.1);
            builder.Line(s_symbol, middle.Moved(-1.4, 0.9), middle.Moved(1.4, -0.9));
        }
    }

    private static void Equals(SceneBuilder builder, PaperPoint at)
    {
        builder.Line(s_symbol, at.Moved(-1.8, -0.6), at.Moved(1.8, -0.6));
        builder.Line(s_symbol, at.Moved(-1.8, 0.6), at.Moved(1.8, 0.6));
    }

    // One period, as two half circles.
    private static void Wave(SceneBuilder builder, PaperPoint at, double halfMm)
    {
        builder.Arc(s_symbol, at.Moved(-halfMm / 2, 0), halfMm / 2, 0, 180);
        builder.Arc(s_symbol, at.Moved(halfMm / 2, 0), halfMm / 2, 180, 180);
    }

    private static PaperBox Round(PaperPoint at, double halfWidthMm, double halfHeightMm) =>
        new(at.XMm - halfWidthMm, at.YMm - halfHeightMm, at.XMm + halfWidthMm, at.YMm + halfHeightMm);
}
