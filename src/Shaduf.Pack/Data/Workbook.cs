using SpreadCheetah;
using SpreadCheetah.Styling;
using SpreadCheetah.Worksheets;

namespace Shaduf.Pack;

/// <summary>Styles of the spreadsheet's cells.</summary>
internal sealed record CellStyles(
    StyleId Title,
    StyleId Head,
    StyleId Number,
    StyleId Money,
    StyleId Percent,
    StyleId Rate,
    StyleId Total,
    StyleId Wrap
)
{
    /// <summary>Adds the styles to a spreadsheet.</summary>
    public static CellStyles AddTo(Spreadsheet book) =>
        new(
            book.AddStyle(new Style { Font = { Bold = true, Size = 13 } }),
            book.AddStyle(
                new Style
                {
                    Font = { Bold = true },
                    Alignment = { WrapText = true },
                    Fill = { Color = System.Drawing.Color.FromArgb(0xE6, 0xE1, 0xD6) },
                }
            ),
            book.AddStyle(new Style { Format = NumberFormat.Custom("#,##0.##") }),
            book.AddStyle(new Style { Format = NumberFormat.Custom("#,##0.00") }),
            book.AddStyle(new Style { Format = NumberFormat.Custom("0.0%") }),
            book.AddStyle(new Style { Format = NumberFormat.Custom("#,##0.00##") }),
            book.AddStyle(new Style { Format = NumberFormat.Custom("#,##0.00"), Font = { Bold = true } }),
            book.AddStyle(new Style { Alignment = { WrapText = true } })
        );
}

/// <summary>One sheet while it is written: the stamp first, then a heading, then rows.</summary>
/// <param name="book">The spreadsheet.</param>
/// <param name="styles">Its styles.</param>
/// <param name="stamp">Status, revision, hash.</param>
internal sealed class Sheet(Spreadsheet book, CellStyles styles, Stamp stamp)
{
    /// <summary>Rows above the first row of data.</summary>
    public const int HeadRows = 4;

    /// <summary>Number of the next row, from 1.</summary>
    public int NextRow => book.NextRowNumber;

    /// <summary>Starts the sheet with title, stamp and heading.</summary>
    public async Task StartAsync(
        string name,
        string title,
        params IReadOnlyList<(string Heading, double Width)> columns
    )
    {
        var options = new WorksheetOptions { FrozenRows = HeadRows };
        for (var i = 0; i < columns.Count; i++)
        {
            options.Column(i + 1).Width = columns[i].Width;
        }

        await book.StartWorksheetAsync(name, options);
        await book.AddRowAsync([new Cell(title, styles.Title)]);
        await book.AddRowAsync([new Cell(stamp.Line)]);
        await book.AddRowAsync(Array.Empty<Cell>());
        await book.AddRowAsync([.. columns.Select(column => new Cell(column.Heading, styles.Head))]);
    }

    /// <summary>Adds a row.</summary>
    public async Task RowAsync(params Cell[] cells) => await book.AddRowAsync(cells);

    /// <summary>A text that wraps.</summary>
    public Cell Text(string text) => new(text, styles.Wrap);

    /// <summary>A figure.</summary>
    public Cell Number(double? value) => new(value, styles.Number);

    /// <summary>An amount of money.</summary>
    public Cell Money(decimal? value) => new(value, styles.Money);

    /// <summary>A rate, with the decimals that it needs.</summary>
    public Cell Rate(decimal? value) => new(value, styles.Rate);

    /// <summary>A share.</summary>
    public Cell Percent(double value) => new(value, styles.Percent);

    /// <summary>An amount computed by the spreadsheet, with the figure that it comes to.</summary>
    public Cell Computed(string formula, decimal value, bool isTotal = false) =>
        new(new Formula(formula), value, isTotal ? styles.Total : styles.Money);

    /// <summary>A bold text.</summary>
    public Cell Bold(string text) => new(text, styles.Head);
}
