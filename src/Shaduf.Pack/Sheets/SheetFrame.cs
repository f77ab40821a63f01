using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>What stands in the title block of a sheet.</summary>
/// <param name="Station">Name of the station.</param>
/// <param name="Title">What is drawn.</param>
/// <param name="Owner">Whose drawing it is: the builder.</param>
/// <param name="Number">Number of the sheet.</param>
/// <param name="Of">Number of sheets.</param>
/// <param name="Scale">Scale in words: <c>1:20</c>.</param>
public sealed record SheetTitle(string Station, string Title, string Owner, int Number, int Of, string Scale)
{
    /// <summary>Status, revision and hash of the brief.</summary>
    public required string Mark { get; init; }

    /// <summary>Date of issue.</summary>
    public required string Date { get; init; }
}

/// <summary>The frame of a drawing sheet with its title block.</summary>
public static class SheetFrame
{
    private const double BindingMm = 20;
    private const double BorderMm = 10;
    private const double GridMm = 5;
    private const double FieldMm = 50;
    private const double CentringMm = 5;

    // I and O are not used.
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private const double TitleWidthMm = 180;
    private const double RowMm = 9;
    private const int Rows = 4;

    /// <summary>The room for drawing, title block left out.</summary>
    /// <param name="size">Size of the sheet.</param>
    /// <returns>The inside of the frame.</returns>
    /// <source>ISO 5457: 20 mm at the binding edge, 10 mm elsewhere (from memory)</source>
    public static PaperBox Inside(PaperSize size) =>
        new(BindingMm, BorderMm, size.WidthMm - BorderMm, size.HeightMm - BorderMm);

    /// <summary>The title block.</summary>
    /// <param name="size">Size of the sheet.</param>
    /// <returns>Its box, in the lower right corner.</returns>
    public static PaperBox TitleBlock(PaperSize size)
    {
        var inside = Inside(size);
        return new(
            Math.Max(inside.LeftMm, inside.RightMm - TitleWidthMm),
            inside.BottomMm - (Rows * RowMm),
            inside.RightMm,
            inside.BottomMm
        );
    }

    /// <summary>A sheet with what is drawn on it.</summary>
    /// <param name="size">Size of the sheet.</param>
    /// <param name="title">What stands in the title block.</param>
    /// <param name="views">Pictures and where their top left corners go.</param>
    /// <returns>The sheet.</returns>
    /// <source>ISO 5457 for the frame, its fields and centring marks, ISO 7200 for the fields (from memory)</source>
    internal static Scene Of(PaperSize size, SheetTitle title, IReadOnlyList<PlacedView> views)
    {
        var builder = new SceneBuilder(size);
        var inside = Inside(size);
        builder.Rectangle(Layer.Frame, inside);
        var grid = inside.Grown(GridMm);
        Fields(builder, size, grid, inside);
        Trimming(builder, size);
        Centring(builder, size, grid, inside);
        foreach (var (view, at) in views)
        {
            builder.Place(view, at);
        }

        Title(builder, TitleBlock(size), title);
        return builder.Build($"{title.Title}, sheet {title.Number} of {title.Of}");
    }

    private static void Centring(SceneBuilder builder, PaperSize size, PaperBox grid, PaperBox inside)
    {
        var (x, y) = (size.WidthMm / 2, size.HeightMm / 2);
        builder.Line(Layer.Frame, new(x, grid.TopMm), new(x, inside.TopMm + CentringMm));
        builder.Line(Layer.Frame, new(x, grid.BottomMm), new(x, inside.BottomMm - CentringMm));
        builder.Line(Layer.Frame, new(grid.LeftMm, y), new(inside.LeftMm + CentringMm, y));
        builder.Line(Layer.Frame, new(grid.RightMm, y), new(inside.RightMm - CentringMm, y));
    }

    // Fields of 50 mm from the middle of the sheet, what is left over in the corners: figures across, letters down. A4 has
    // them above and at the right only.
    private static void Fields(SceneBuilder builder, PaperSize size, PaperBox grid, PaperBox inside)
    {
        builder.Rectangle(Layer.Fields, grid);
        var isSmall = Math.Max(size.WidthMm, size.HeightMm) < 300;
        foreach (var (from, to, name) in Names(size.WidthMm, (grid.LeftMm, grid.RightMm), i => Invariant($"{i + 1}")))
        {
            foreach (var (outer, inner) in Sides((grid.TopMm, inside.TopMm), (grid.BottomMm, inside.BottomMm), isSmall))
            {
                builder.Line(Layer.Fields, new(to, outer), new(to, inner));
                Name(builder, new((from + to) / 2, (outer + inner) / 2), name);
            }
        }

        foreach (var (from, to, name) in Names(size.HeightMm, (grid.TopMm, grid.BottomMm), i => Letters[i..(i + 1)]))
        {
            foreach (var (outer, inner) in Sides((grid.RightMm, inside.RightMm), (grid.LeftMm, inside.LeftMm), isSmall))
            {
                builder.Line(Layer.Fields, new(outer, to), new(inner, to));
                Name(builder, new((outer + inner) / 2, (from + to) / 2), name);
            }
        }
    }

    // The corners of the sheet, where a larger paper is trimmed; with them a drawing file is as large as its sheet.
    private static void Trimming(SceneBuilder builder, PaperSize size)
    {
        foreach (var (x, inwards) in new[] { (0.0, 1), (size.WidthMm, -1) })
        {
            foreach (var (y, downwards) in new[] { (0.0, 1), (size.HeightMm, -1) })
            {
                builder.Line(Layer.Fields, new(x, y), new(x + (inwards * CentringMm), y));
                builder.Line(Layer.Fields, new(x, y), new(x, y + (downwards * CentringMm)));
            }
        }
    }

    private static (double Outer, double Inner)[] Sides(
        (double, double) first,
        (double, double) second,
        bool isSmall
    ) => isSmall ? [first] : [first, second];

    private static IEnumerable<(double From, double To, string Name)> Names(
        double sheetMm,
        (double First, double Last) edge,
        Func<int, string> name
    )
    {
        var half = (int)Math.Round(sheetMm / 2 / FieldMm);
        double At(int i) => (sheetMm / 2) + ((i - half) * FieldMm);
        return Enumerable
            .Range(0, 2 * half)
            .Select(i => (i == 0 ? edge.First : At(i), i == (2 * half) - 1 ? edge.Last : At(i + 1), name(i)));
    }

    private static void Name(SceneBuilder builder, PaperPoint at, string name) =>
        builder.Add(new TextItem(Layer.Fields, at, name, TextStyle.Small.Centred));

    private static void Title(SceneBuilder builder, PaperBox box, SheetTitle title)
    {
        builder.Rectangle(Layer.Outline, box, Palette.White);
        (double From, double To, int Row, string Field, string Text)[] cells =
        [
            (0, 0.62, 0, "title", title.Title),
            (0.62, 1, 0, "station", title.Station),
            (0, 0.62, 1, "legal owner", title.Owner),
            (0.62, 0.81, 1, "document", "workshop drawing"),
            (0.81, 1, 1, "language", "en"),
            (0, 0.62, 2, "status, revision, brief", title.Mark),
            (0.62, 0.81, 2, "date of issue", title.Date),
            (0.81, 1, 2, "scale", title.Scale),
            (0, 0.31, 3, "drawn by", "shaduf"),
            (0.31, 0.62, 3, "approved by", ""),
            (0.62, 0.81, 3, "number", Invariant($"S{title.Number:00}")),
            (0.81, 1, 3, "sheet", Invariant($"{title.Number}/{title.Of}")),
        ];
        foreach (var (from, to, row, field, text) in cells)
        {
            PaperBox cell = new(
                box.LeftMm + (from * box.WidthMm),
                box.TopMm + (row * RowMm),
                box.LeftMm + (to * box.WidthMm),
                box.TopMm + ((row + 1) * RowMm)
            );
            builder.Rectangle(Layer.Thin, cell);
            builder.Text(new(cell.LeftMm + 1, cell.TopMm + 2.6), field, new TextStyle(1.9));
            var style = TextStyle.Small with { Weight = row == 0 ? FontWeight.Bold : FontWeight.Regular };
            builder.Text(
                new(cell.LeftMm + 1, cell.BottomMm - 1.6),
                Lettering.Shortened(text, cell.WidthMm - 2, style),
                style
            );
        }
    }
}
