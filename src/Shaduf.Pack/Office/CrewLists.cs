using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The crew's long lists: what is loaded, where the pits lie, what is cut from which bar.</summary>
internal static class CrewLists
{
    // Rows in one of the columns that a page holds.
    private const int RowsAColumn = 46;

    /// <summary>What is loaded, in pieces as they are sold.</summary>
    /// <param name="design">The design.</param>
    /// <param name="mostRows">Most rows.</param>
    public static IEnumerable<Block> Loading(Design design, int mostRows)
    {
        var purchases = design.Office.Purchases;
        yield return new Paragraph("Pieces as they are sold, for the whole station; what the yard has is struck out.");
        foreach (
            var columns in InColumns(
                3,
                [
                    .. purchases.Select(each =>
                        TableRow.Of(
                            "☐",
                            Invariant($"{each.PieceCount}"),
                            Invariant($"{each.SoldUnits:0.##} {each.Unit}"),
                            each.Item
                        )
                    ),
                ],
                mostRows,
                rows =>
                    new(
                        [
                            new("") { WidthMm = 5 },
                            new("nr", 0.6, HorizontalAnchor.Right),
                            new("of", 0.9),
                            new("item", 2),
                        ],
                        rows
                    )
                    {
                        SizeMm = 2.6,
                    }
            )
        )
        {
            yield return columns;
        }

        foreach (var rest in Rest(purchases.Count, mostRows, "the sheet Purchases of quantities.xlsx"))
        {
            yield return rest;
        }
    }

    /// <summary>The middle of each pit by two tapes.</summary>
    /// <param name="design">The design.</param>
    /// <param name="mostRows">Most rows.</param>
    public static IEnumerable<Block> Pits(Design design, int mostRows)
    {
        var whole = SettingOutTables.Pits(design);
        if (whole.Rows.Count <= 24)
        {
            return [whole];
        }

        return
        [
            new Paragraph(whole.Caption + "."),
            .. InColumns(2, whole.Rows, mostRows, rows => whole with { Rows = rows, Caption = "", SizeMm = 2.6 }),
            .. Rest(whole.Rows.Count, mostRows, "the sheet setting-out"),
        ];
    }

    /// <summary>What is cut from which bar.</summary>
    /// <param name="design">The design.</param>
    /// <param name="mostRows">Most rows.</param>
    public static IEnumerable<Block> Cuts(Design design, int mostRows)
    {
        TableRow[] rows =
        [
            .. design.Takeoff.BarPlans.SelectMany(plan =>
                plan.Plan.Alike.Select(alike =>
                    TableRow.Of(
                        plan.Section.Name,
                        Invariant($"{alike.Count}"),
                        string.Join(
                            ", ",
                            alike.Bar.Pieces.Select(piece =>
                                Invariant($"{StandRelease.Told(design, piece.Mark)} {piece.LengthMm:0}")
                            )
                        ),
                        Invariant($"{alike.Bar.RemainderMm:0}")
                    )
                )
            ),
        ];
        return
        [
            new Table(
                [
                    new("section", 0.8),
                    new("bars", 0.4, HorizontalAnchor.Right),
                    new("pieces of each: mark and length in mm", 5),
                    new("left, mm", 0.6, HorizontalAnchor.Right),
                ],
                [.. rows.Take(mostRows)]
            )
            {
                SizeMm = 2.8,
            },
            .. Rest(rows.Length, mostRows, "the engineer's book, 'Bars to buy and what is cut from each'"),
        ];
    }

    // Tables side by side, page after page.
    private static IEnumerable<Block> InColumns(
        int columns,
        IReadOnlyList<TableRow> rows,
        int mostRows,
        Func<IReadOnlyList<TableRow>, Table> table
    ) =>
        rows.Take(mostRows)
            .Chunk(columns * RowsAColumn)
            .Select(page => page.Chunk((page.Length + columns - 1) / columns))
            .Select(parts => new Columns([.. parts.Select(part => new Column(1, [table(part)]))]));

    private static IEnumerable<Block> Rest(int count, int mostRows, string where) =>
        count > mostRows
            ? [new Paragraph(RichText.Bold(Invariant($"{count - mostRows} more lines stand in {where}.")))]
            : [];
}
