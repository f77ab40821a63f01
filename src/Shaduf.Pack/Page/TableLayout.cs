using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>Measures a table and cuts it into rows.</summary>
internal static class TableLayout
{
    private const double PadXMm = 1.4;
    private const double PadYMm = 0.8;

    // A table as short as a year's months stands on one page; of a longer one no page holds fewer rows than three.
    private const double WholeMm = 90;
    private const int FewestRows = 3;

    internal static IReadOnlyList<Piece> Lay(Table table, Room room)
    {
        Within.Require(table.SizeMm, 1, 10, "mm");
        var widths = Widths(table.Columns, room.WidthMm);
        var header = Header(table, widths, room);
        var roomMm = room.HeightMm - header.HeightMm;
        var pieces = new List<Piece>();
        if (table.Caption.Length > 0)
        {
            pieces.Add(Caption(table, room.WidthMm));
        }

        pieces.Add(
            header with
            {
                SpaceBeforeMm = table.Caption.Length > 0 ? 0 : 3.5,
                KeepsWithNext = table.Rows.Count > 0,
            }
        );
        List<Piece>[] rows = [.. table.Rows.Select((_, i) => Row(table, i, widths, roomMm).ToList())];
        var isShort = rows.Sum(row => row.Sum(piece => piece.HeightMm)) <= WholeMm;
        foreach (var (i, row) in rows.Index())
        {
            var isHeld = i + 1 < rows.Length && (isShort || i + 1 < FewestRows || i >= rows.Length - FewestRows);
            pieces.AddRange(
                row.Select(piece => piece with { Repeat = header, KeepsWithNext = piece.KeepsWithNext || isHeld })
            );
        }

        return pieces;
    }

    private static Piece Caption(Table table, double widthMm)
    {
        var caption = WrappedText.Of(RichText.Bold(table.Caption), widthMm, table.SizeMm);
        return new(caption.HeightMm + 1, [.. caption.DrawAll(new(0, 0), widthMm, HorizontalAnchor.Left)])
        {
            SpaceBeforeMm = 3.5,
            KeepsWithNext = true,
        };
    }

    private static double[] Widths(IReadOnlyList<TableColumn> columns, double roomMm)
    {
        var freeMm = roomMm - columns.Sum(column => column.WidthMm ?? 0);
        var shares = columns.Where(column => column.WidthMm is null).Sum(column => column.Share);
        double[] widths = [.. columns.Select(column => column.WidthMm ?? (freeMm * column.Share / shares))];
        for (var i = 0; i < widths.Length; i++)
        {
            if (!(widths[i] >= (2 * PadXMm) + 1) || freeMm < -0.01)
            {
                throw new ArgumentException(
                    FormattableString.Invariant(
                        $"Column '{columns[i].Heading}' would be {widths[i]:0.#} mm wide in {roomMm:0.#} mm; give the columns other widths or shares."
                    ),
                    nameof(columns)
                );
            }
        }

        return widths;
    }

    private static Piece Header(Table table, double[] widths, Room room)
    {
        var cells = table
            .Columns.Select((column, i) => Wrapped(RichText.Bold(column.Heading), widths[i], table.SizeMm))
            .ToList();
        var heightMm = cells.Max(cell => cell.HeightMm) + (2 * PadYMm);
        if (heightMm > room.HeightMm / 2)
        {
            throw new ArgumentException("The table's header takes more than half a page.", nameof(table));
        }

        var box = new PaperBox(0, 0, widths.Sum(), heightMm);
        List<SceneItem> items =
        [
            new PolyItem(Layer.Thin, box.Corners, true) { Fill = Palette.Steel.Tint(0.16), IsStroked = false },
            Rule(Layer.Outline, box, heightMm),
        ];
        for (var i = 0; i < cells.Count; i++)
        {
            // Headings stand on the rule, so that a short one is not lost above a long one's second line.
            var topMm = heightMm - PadYMm - cells[i].HeightMm;
            items.AddRange(
                Cell(
                    cells[i],
                    0..cells[i].Lines.Count,
                    new(LeftMm(widths, i), topMm),
                    widths[i],
                    table.Columns[i].Align
                )
            );
        }

        return new(heightMm, items);
    }

    private static IEnumerable<Piece> Row(Table table, int index, double[] widths, double roomMm)
    {
        var row = table.Rows[index];
        var isSpanning = row.Cells.Count == 1 && table.Columns.Count > 1;
        if (!isSpanning && row.Cells.Count != table.Columns.Count)
        {
            throw new ArgumentException(
                $"Row {index + 1} has {row.Cells.Count} cells under {table.Columns.Count} headings.",
                nameof(table)
            );
        }

        double[] cellWidths = isSpanning ? [widths.Sum()] : widths;
        var cells = row
            .Cells.Select((cell, i) => Wrapped(row.IsTotal ? cell.AllBold : cell, cellWidths[i], table.SizeMm))
            .ToList();
        var lines = cells.Max(cell => cell.Lines.Count);
        var lineMm = cells[0].LineMm;
        var most = Math.Max(1, (int)Math.Floor((roomMm - (2 * PadYMm)) / lineMm));
        for (var first = 0; first < lines; first += most)
        {
            var count = Math.Min(most, lines - first);
            var heightMm = (count * lineMm) + (2 * PadYMm);
            var box = new PaperBox(0, 0, widths.Sum(), heightMm);
            var items = Ground(table, index, box).ToList();
            for (var i = 0; i < cells.Count; i++)
            {
                var align = isSpanning ? HorizontalAnchor.Left : table.Columns[i].Align;
                items.AddRange(
                    Cell(cells[i], first..(first + count), new(LeftMm(cellWidths, i), PadYMm), cellWidths[i], align)
                );
            }

            yield return new(heightMm, items) { KeepsWithNext = isSpanning && index + 1 < table.Rows.Count };
        }
    }

    private static IEnumerable<SceneItem> Ground(Table table, int index, PaperBox box)
    {
        var row = table.Rows[index];
        if (table.Look == TableLook.Zebra && index % 2 == 1 && !row.IsTotal)
        {
            yield return new PolyItem(Layer.Thin, box.Corners, true)
            {
                Fill = Palette.Steel.Tint(0.07),
                IsStroked = false,
            };
        }

        if (row.IsTotal)
        {
            yield return Rule(Layer.Outline, box, 0);
        }

        if (table.Look == TableLook.Rules || index + 1 == table.Rows.Count)
        {
            yield return Rule(Layer.Thin, box, box.BottomMm);
        }
    }

    private static LineItem Rule(Layer layer, PaperBox box, double yMm) =>
        new(layer, new(box.LeftMm, yMm), new(box.RightMm, yMm));

    private static WrappedText Wrapped(RichText text, double widthMm, double sizeMm) =>
        WrappedText.Of(text, widthMm - (2 * PadXMm), sizeMm);

    private static double LeftMm(double[] widths, int column) => widths.Take(column).Sum() + PadXMm;

    // The lines of a cell that stand in this piece of its row.
    private static IEnumerable<SceneItem> Cell(
        WrappedText text,
        Range lines,
        PaperPoint topLeft,
        double widthMm,
        HorizontalAnchor align
    )
    {
        var first = lines.Start.Value;
        return Enumerable
            .Range(first, Math.Max(0, Math.Min(lines.End.Value, text.Lines.Count) - first))
            .SelectMany(line =>
                text.Draw(line, topLeft.Moved(0, (line - first) * text.LineMm), widthMm - (2 * PadXMm), align)
            );
    }
}
