namespace Shaduf.Pack;

/// <summary>A thing that stands in the text of a document. It measures itself first and is drawn after.</summary>
public abstract record Block
{
    /// <summary>Measures the block and cuts it into pieces that a page break must not part.</summary>
    internal abstract IReadOnlyList<Piece> Lay(Room room);
}

/// <summary>The room of a page's text.</summary>
/// <param name="WidthMm">Width [mm].</param>
/// <param name="HeightMm">Height [mm].</param>
internal readonly record struct Room(double WidthMm, double HeightMm);

/// <summary>A piece of a block that stays whole. Its items lie in a box from (0, 0) downwards.</summary>
/// <param name="HeightMm">Its height [mm].</param>
/// <param name="Items">Its items.</param>
internal sealed record Piece(double HeightMm, IReadOnlyList<SceneItem> Items)
{
    /// <summary>Space above it unless it starts a page [mm].</summary>
    public double SpaceBeforeMm { get; init; }

    /// <summary>Whether it must stand on one page with the next piece.</summary>
    public bool KeepsWithNext { get; init; }

    /// <summary>What stands above it again when it starts a page: a table's header.</summary>
    public Piece? Repeat { get; init; }

    /// <summary>Share of the page that must be filled for it to end the page; null when it does not end it.</summary>
    public double? BreaksPastShare { get; init; }

    /// <summary>The pieces one under the other, as one box.</summary>
    internal static (double HeightMm, IReadOnlyList<SceneItem> Items) Stacked(IEnumerable<Piece> pieces)
    {
        var items = new List<SceneItem>();
        var yMm = 0.0;
        foreach (var piece in pieces)
        {
            yMm += yMm > 0 ? piece.SpaceBeforeMm : 0;
            items.AddRange(piece.Items.Select(item => item.Moved(0, yMm)));
            yMm += piece.HeightMm;
        }

        return (yMm, items);
    }
}
