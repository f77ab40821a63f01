namespace Shaduf.Pack;

/// <summary>Tables and notes as views of a sheet.</summary>
internal static class SheetTexts
{
    private const double RowMm = 4.6;
    private const double CellMm = 1.4;

    /// <summary>Notes in a column.</summary>
    /// <param name="lines">The notes; each begins a new line.</param>
    /// <param name="widthMm">Width of the column [mm], 40 to 400.</param>
    public static Scene Notes(IReadOnlyList<string> lines, double widthMm)
    {
        var text = WrappedText.Of(RichText.From(string.Join("\n", lines)), widthMm, Lettering.SmallMm);
        var builder = new SceneBuilder(new(widthMm, text.HeightMm));
        builder.Add(text.DrawAll(new(0, 0), widthMm, HorizontalAnchor.Left));
        return builder.Build("notes");
    }

    /// <summary>Views one below the other as one view.</summary>
    /// <param name="views">The views, from above.</param>
    public static Scene Stack(IReadOnlyList<Scene> views)
    {
        const double gapMm = 5;
        var size = new PaperSize(
            views.Max(view => view.Size.WidthMm),
            views.Sum(view => view.Size.HeightMm) + (gapMm * (views.Count - 1))
        );
        var builder = new SceneBuilder(size);
        var top = 0.0;
        foreach (var view in views)
        {
            builder.Place(view, new(0, top));
            top += view.Size.HeightMm + gapMm;
        }

        return builder.Build();
    }

    /// <summary>A table, in as many pieces side by side as its height asks for.</summary>
    /// <param name="title">What it tells.</param>
    /// <param name="heads">Heads of the columns.</param>
    /// <param name="rows">Cells row by row.</param>
    /// <param name="heightMm">Greatest height of a piece [mm], 30 or more.</param>
    public static IEnumerable<Scene> Table(
        string title,
        IReadOnlyList<string> heads,
        IReadOnlyList<IReadOnlyList<string>> rows,
        double heightMm
    )
    {
        var each = Math.Max(1, (int)((heightMm / RowMm) - 2));
        var widths = heads.Select((head, i) => Widest(head, rows.Select(row => row[i]))).ToList();
        return rows.Chunk(each).Select((piece, i) => Piece(i == 0 ? title : $"{title}, on", heads, piece, widths));
    }

    private static double Widest(string head, IEnumerable<string> cells) =>
        (2 * CellMm)
        + cells
            .Select(cell => Lettering.WidthMm(cell, Lettering.SmallMm))
            .Append(Lettering.WidthMm(head, Lettering.SmallMm, FontWeight.Bold))
            .Max();

    private static Scene Piece(
        string title,
        IReadOnlyList<string> heads,
        IReadOnlyList<IReadOnlyList<string>> rows,
        List<double> widths
    )
    {
        var bold = TextStyle.Small with { Weight = FontWeight.Bold };
        var widthMm = Math.Max(widths.Sum(), Lettering.WidthMm(title, bold.SizeMm, bold.Weight));
        var builder = new SceneBuilder(new(widthMm + 1, ((rows.Count + 2) * RowMm) + 1));
        builder.Text(new(0, RowMm - 1.4), title, bold);
        var bottom = (rows.Count + 2) * RowMm;
        for (var line = 1; line <= rows.Count + 2; line++)
        {
            var layer = line is 1 or 2 || line == rows.Count + 2 ? Layer.Outline : Layer.Thin;
            builder.Line(layer, new(0, line * RowMm), new(widths.Sum(), line * RowMm));
        }

        var left = 0.0;
        foreach (var (column, width) in widths.Index())
        {
            builder.Line(Layer.Thin, new(left, RowMm), new(left, bottom));
            builder.Text(new(left + CellMm, (2 * RowMm) - 1.4), heads[column], bold);
            foreach (var (row, cells) in rows.Index())
            {
                builder.Text(new(left + CellMm, ((row + 3) * RowMm) - 1.4), cells[column], TextStyle.Small);
            }

            left += width;
        }

        builder.Line(Layer.Thin, new(left, RowMm), new(left, bottom));
        return builder.Build(title);
    }
}
