namespace Shaduf.Pack;

/// <summary>A column of a table.</summary>
/// <param name="Heading">Its heading; name the unit here.</param>
/// <param name="Share">Its part of the width left by the fixed columns, above 0; relative to the other shares.</param>
/// <param name="Align">How its cells stand; numbers stand right.</param>
public sealed record TableColumn(string Heading, double Share = 1, HorizontalAnchor Align = HorizontalAnchor.Left)
{
    /// <summary>Fixed width [mm]; null to take a share.</summary>
    public double? WidthMm { get; init; }
}

/// <summary>A row of a table.</summary>
/// <param name="Cells">One cell for each column; a single cell spans the table.</param>
public sealed record TableRow(IReadOnlyList<RichText> Cells)
{
    /// <summary>Whether it is a sum: bold, under a rule.</summary>
    public bool IsTotal { get; init; }

    /// <summary>A row of plain texts.</summary>
    /// <param name="cells">One text for each column.</param>
    /// <returns>The row.</returns>
    public static TableRow Of(params IReadOnlyList<string> cells) => new([.. cells.Select(RichText.From)]);

    /// <summary>A row of plain texts that is a sum.</summary>
    /// <param name="cells">One text for each column.</param>
    /// <returns>The row.</returns>
    public static TableRow Total(params IReadOnlyList<string> cells) => Of(cells) with { IsTotal = true };

    /// <summary>A heading between rows, over the whole width.</summary>
    /// <param name="text">The heading.</param>
    /// <returns>The row.</returns>
    public static TableRow Section(string text) => new([RichText.Bold(text)]);
}

/// <summary>What parts the rows of a table for the eye.</summary>
public enum TableLook
{
    /// <summary>A thin rule under each row.</summary>
    Rules,

    /// <summary>Every second row is tinted.</summary>
    Zebra,
}

/// <summary>
/// A table. Its header is repeated after a page break; a row stays whole unless it is taller than a page.
/// </summary>
/// <param name="Columns">Its columns from the left, at least one.</param>
/// <param name="Rows">Its rows.</param>
public sealed record Table(IReadOnlyList<TableColumn> Columns, IReadOnlyList<TableRow> Rows) : Block
{
    /// <summary>What parts the rows.</summary>
    public TableLook Look { get; init; }

    /// <summary>Size of the letters [mm], 1 to 10.</summary>
    public double SizeMm { get; init; } = 3.1;

    /// <summary>What the table shows, set above it; empty for none.</summary>
    public string Caption { get; init; } = "";

    internal override IReadOnlyList<Piece> Lay(Room room) => TableLayout.Lay(this, room);
}
