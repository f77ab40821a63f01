namespace Shaduf.Pack;

/// <summary>
/// Lays views on a sheet in the order given, row by row like books on shelves, with the notes beside the title block, and
/// spreads them over the room that is left.
/// </summary>
internal static class Shelves
{
    private const double EdgeMm = 3;
    private const double GapMm = 6;

    // Without this much width beside the title block, notes stand above it.
    private const double NotesMm = 70;

    private sealed record Row(List<Scene> Views, double TopMm)
    {
        public double HeightMm => Views.Max(view => view.Size.HeightMm);

        public double WidthMm => Views.Sum(view => view.Size.WidthMm) + (GapMm * (Views.Count - 1));
    }

    /// <summary>Finds a place for each view.</summary>
    /// <param name="views">The views, each as large as what is drawn in it.</param>
    /// <param name="notes">Notes; each begins a new line.</param>
    /// <param name="paper">Size of the sheet.</param>
    /// <returns>The views with their places; null when they find no room.</returns>
    public static IReadOnlyList<PlacedView>? Placed(
        IReadOnlyList<Scene> views,
        IReadOnlyList<string> notes,
        PaperSize paper
    )
    {
        var inside = SheetFrame.Inside(paper).Grown(-EdgeMm);
        var block = SheetFrame.TitleBlock(paper);
        var besideMm = block.LeftMm - inside.LeftMm - GapMm;
        var above = SheetTexts.Notes(notes, inside.WidthMm);
        var beside = besideMm >= NotesMm ? SheetTexts.Notes(notes, besideMm) : above;
        var (aboveTopMm, besideTopMm) = (
            block.TopMm - EdgeMm - above.Size.HeightMm,
            inside.BottomMm - Math.Max(beside.Size.HeightMm, block.HeightMm)
        );
        var (note, noteTopMm) =
            besideMm >= NotesMm && besideTopMm >= aboveTopMm ? (beside, besideTopMm) : (above, aboveTopMm);
        var room = inside with { BottomMm = Math.Min(block.TopMm, noteTopMm) - EdgeMm };
        return Rows(views, room) is { } rows ? [.. Spread(rows, room), new(note, new(inside.LeftMm, noteTopMm))] : null;
    }

    private static List<Row>? Rows(IReadOnlyList<Scene> views, PaperBox room)
    {
        var rows = new List<Row>();
        foreach (var view in views)
        {
            if (rows.Count > 0 && Fits(rows[^1] with { Views = [.. rows[^1].Views, view] }, room))
            {
                rows[^1].Views.Add(view);
                continue;
            }

            var row = new Row([view], rows.Count == 0 ? room.TopMm : rows[^1].TopMm + rows[^1].HeightMm + GapMm);
            if (!Fits(row, room))
            {
                return null;
            }

            rows.Add(row);
        }

        return rows;
    }

    private static bool Fits(Row row, PaperBox room) =>
        row.TopMm + row.HeightMm <= room.BottomMm + 0.001 && row.WidthMm <= room.WidthMm + 0.001;

    private static IEnumerable<PlacedView> Spread(List<Row> rows, PaperBox room)
    {
        var slack = rows.Count == 0 ? 0 : room.BottomMm - rows[^1].TopMm - rows[^1].HeightMm;
        for (var i = 0; i < rows.Count; i++)
        {
            var row = rows[i];
            var down = slack * (i + 0.5) / rows.Count;
            var gap = (room.WidthMm - row.WidthMm) / (row.Views.Count + 1);
            var left = room.LeftMm + gap;
            foreach (var view in row.Views)
            {
                yield return new(view, new(left, row.TopMm + down + ((row.HeightMm - view.Size.HeightMm) / 2)));
                left += view.Size.WidthMm + GapMm + gap;
            }
        }
    }
}
