using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>A picture at its true size, with a caption under it.</summary>
/// <param name="Picture">The picture; it must fit the page.</param>
/// <param name="Caption">What it shows; empty for none.</param>
public sealed record Figure(Scene Picture, string Caption) : Block
{
    internal override IReadOnlyList<Piece> Lay(Room room)
    {
        var caption = WrappedText.Of(Caption, room.WidthMm, Lettering.SmallMm);
        var captionMm = Caption.Length == 0 ? 0 : caption.HeightMm + 1.5;
        var picture = Whole();
        var size = picture.Size;
        if (size.WidthMm > room.WidthMm + 0.01 || size.HeightMm + captionMm > room.HeightMm + 0.01)
        {
            throw new ArgumentException(
                FormattableString.Invariant(
                    $"The picture '{Caption}' is {size.WidthMm:0.#} x {size.HeightMm:0.#} mm; there is room for {room.WidthMm:0.#} x {room.HeightMm - captionMm:0.#} mm."
                ),
                nameof(room)
            );
        }

        var under =
            Caption.Length == 0
                ? []
                : caption.DrawAll(new(0, size.HeightMm + 1.5), room.WidthMm, HorizontalAnchor.Left);
        return [new(size.HeightMm + captionMm, [.. picture.Items, .. under]) { SpaceBeforeMm = 4 }];
    }

    // The picture, grown where something is drawn beyond its edge: it must not reach into its caption.
    private Scene Whole()
    {
        var box = Picture.Size.Box;
        var drawn = Picture.Bounds() ?? box;
        var (leftMm, topMm) = (Math.Min(0, drawn.LeftMm), Math.Min(0, drawn.TopMm));
        return leftMm == 0 && topMm == 0 && box.Holds(new(drawn.RightMm, drawn.BottomMm))
            ? Picture
            : new(
                new(Math.Max(box.RightMm, drawn.RightMm) - leftMm, Math.Max(box.BottomMm, drawn.BottomMm) - topMm),
                [.. Picture.Items.Select(item => item.Moved(-leftMm, -topMm))]
            );
    }
}

/// <summary>A boxed call-out. Its word and its frame say how grave it is, not its colour alone.</summary>
/// <param name="Status">What the check came to.</param>
/// <param name="Text">What the reader must know.</param>
public sealed record Notice(FindingStatus Status, RichText Text) : Block
{
    private const double PadMm = 2;

    /// <summary>The word in the tag; the status in capitals when left out.</summary>
    public string? Word { get; init; }

    internal override IReadOnlyList<Piece> Lay(Room room)
    {
        var word = Word ?? Status.ToString().ToUpperInvariant();
        var style = new TextStyle(Lettering.BodyMm) { Weight = FontWeight.Bold }.Centred;
        var tagMm = Math.Max(24, Lettering.WidthMm(word, style.SizeMm, style.Weight) + (2 * PadMm));
        var widthMm = room.WidthMm - tagMm - (2 * PadMm);
        var wrapped = WrappedText.Of(Text, widthMm, Lettering.BodyMm);
        var heightMm = Math.Max(8, wrapped.HeightMm + (2 * PadMm));
        if (heightMm > room.HeightMm)
        {
            return new Paragraph(new RichText([new(word + ": ", FontWeight.Bold), .. Text.Spans])).Lay(room);
        }

        var box = new PaperBox(0, 0, room.WidthMm, heightMm);
        var tag = box with { RightMm = tagMm };
        var isGrave = Status == FindingStatus.Stop;
        IReadOnlyList<SceneItem> items =
        [
            new PolyItem(Layer.Thin, tag.Corners, true) { Fill = TagFillOf(Status) },
            new PolyItem(FrameOf(Status), box.Grown(isGrave ? -0.35 : -0.1).Corners, true),
            new TextItem(Layer.Text, tag.Centre, word, style with { Colour = isGrave ? Palette.White : Palette.Ink }),
            .. wrapped.DrawAll(new(tagMm + PadMm, (heightMm - wrapped.HeightMm) / 2), widthMm, HorizontalAnchor.Left),
        ];
        return [new(heightMm, items) { SpaceBeforeMm = 3 }];
    }

    private static Colour? TagFillOf(FindingStatus status) =>
        status switch
        {
            FindingStatus.Stop => Palette.Clay,
            FindingStatus.Look => Palette.Sun.Tint(0.25),
            FindingStatus.Unchecked => Palette.Steel.Tint(0.2),
            _ => null,
        };

    private static Layer FrameOf(FindingStatus status) =>
        status switch
        {
            FindingStatus.Stop => Layer.Frame,
            FindingStatus.Unchecked => Layer.Hidden,
            _ => Layer.Thin,
        };
}

/// <summary>Blocks that share a column.</summary>
/// <param name="Share">The column's part of the width, above 0; parts are relative to each other.</param>
/// <param name="Blocks">Its blocks.</param>
public sealed record Column(double Share, IReadOnlyList<Block> Blocks);

/// <summary>Columns side by side. They stay on one page; too tall for one, they follow each other at full width.</summary>
/// <param name="Sides">The columns from the left.</param>
public sealed record Columns(IReadOnlyList<Column> Sides) : Block
{
    private const double GapMm = 6;

    internal override IReadOnlyList<Piece> Lay(Room room)
    {
        var freeMm = room.WidthMm - (GapMm * (Sides.Count - 1));
        var shares = Sides.Sum(side => side.Share);
        var items = new List<SceneItem>();
        var (xMm, heightMm) = (0.0, 0.0);
        foreach (var side in Sides)
        {
            var widthMm = freeMm * side.Share / shares;
            var column = room with { WidthMm = widthMm };
            var (sideMm, sideItems) = Piece.Stacked(side.Blocks.SelectMany(block => block.Lay(column)));
            items.AddRange(sideItems.Select(item => item.Moved(xMm, 0)));
            heightMm = Math.Max(heightMm, sideMm);
            xMm += widthMm + GapMm;
        }

        return heightMm > room.HeightMm
            ? [.. Sides.SelectMany(side => side.Blocks).SelectMany(block => block.Lay(room))]
            : [new(heightMm, items) { SpaceBeforeMm = 3 }];
    }
}
