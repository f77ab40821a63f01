using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>A heading; it never stands alone at the foot of a page.</summary>
/// <param name="Level">1 (chapter) to 3.</param>
/// <param name="Text">Its text.</param>
public sealed record Heading(int Level, string Text) : Block
{
    internal override IReadOnlyList<Piece> Lay(Room room)
    {
        Within.RequireCount(Level, 1, 3);
        var sizeMm = Level switch
        {
            1 => 6.2,
            2 => 4.6,
            _ => 3.8,
        };
        var wrapped = WrappedText.Of(RichText.Bold(Text), room.WidthMm, sizeMm);
        var items = wrapped.DrawAll(new(0, 0), room.WidthMm, HorizontalAnchor.Left).ToList();
        if (Level == 1)
        {
            items.Add(new LineItem(Layer.Frame, new(0, wrapped.HeightMm + 1), new(24, wrapped.HeightMm + 1)));
        }

        return
        [
            new(wrapped.HeightMm + (Level == 1 ? 1.5 : 0), items)
            {
                SpaceBeforeMm = 9 - (1.5 * Level),
                KeepsWithNext = true,
            },
        ];
    }
}

/// <summary>A paragraph of running text.</summary>
/// <param name="Text">Its text.</param>
public sealed record Paragraph(RichText Text) : Block
{
    /// <summary>Size of the letters [mm], 1 to 20.</summary>
    public double SizeMm { get; init; } = Lettering.BodyMm;

    /// <summary>Whether it must stand on one page with what follows: a picture that it speaks of.</summary>
    public bool KeepsWithNext { get; init; }

    internal override IReadOnlyList<Piece> Lay(Room room)
    {
        Within.Require(SizeMm, 1, 20, "mm");
        var lines = Lines(WrappedText.Of(Text, room.WidthMm, SizeMm), room.WidthMm, 0, 2.2);
        return KeepsWithNext ? [.. lines.Select(line => line with { KeepsWithNext = true })] : lines;
    }

    // One piece a line; no line stands alone at the head or the foot of a page.
    internal static List<Piece> Lines(WrappedText text, double widthMm, double leftMm, double spaceMm) =>
        [
            .. Enumerable
                .Range(0, text.Lines.Count)
                .Select(line => new Piece(
                    text.LineMm,
                    [.. text.Draw(line, new(leftMm, 0), widthMm, HorizontalAnchor.Left)]
                )
                {
                    SpaceBeforeMm = line == 0 ? spaceMm : 0,
                    KeepsWithNext = line + 1 < text.Lines.Count && (line == 0 || line + 2 == text.Lines.Count),
                }),
        ];
}

/// <summary>What stands before the points of a list.</summary>
public enum BulletMark
{
    /// <summary>A dot.</summary>
    Dot,

    /// <summary>1, 2, 3: the order matters.</summary>
    Number,

    /// <summary>An empty box to tick.</summary>
    CheckBox,

    /// <summary>A box that was ticked.</summary>
    TickedBox,
}

/// <summary>A list of points.</summary>
/// <param name="Points">Its points.</param>
/// <param name="Mark">What stands before each.</param>
public sealed record Bullets(IReadOnlyList<RichText> Points, BulletMark Mark = BulletMark.Dot) : Block
{
    /// <summary>Size of the letters [mm], 1 to 20.</summary>
    public double SizeMm { get; init; } = Lettering.BodyMm;

    internal override IReadOnlyList<Piece> Lay(Room room)
    {
        Within.Require(SizeMm, 1, 20, "mm");
        var marks = Enumerable.Range(1, Points.Count).Select(MarkOf).ToList();
        var indentMm = marks.Select(mark => Lettering.WidthMm(mark, SizeMm)).DefaultIfEmpty().Max() + 2;
        return [.. Points.SelectMany((point, i) => Point(point, marks[i], i == 0, indentMm, room))];
    }

    private List<Piece> Point(RichText point, string mark, bool isFirst, double indentMm, Room room)
    {
        var widthMm = room.WidthMm - indentMm;
        var wrapped = WrappedText.Of(point, widthMm, SizeMm);
        var pieces = Paragraph.Lines(wrapped, widthMm, indentMm, isFirst ? 2 : 1);
        var marked = WrappedText.Of(mark, indentMm, SizeMm).Draw(0, new(0, 0), indentMm, default);
        pieces[0] = pieces[0] with { Items = [.. marked, .. pieces[0].Items] };
        return pieces;
    }

    private string MarkOf(int number) =>
        Mark switch
        {
            BulletMark.Number => number.ToString(CultureInfo.InvariantCulture) + ".",
            BulletMark.CheckBox => "☐",
            BulletMark.TickedBox => "☑",
            _ => "•",
        };
}

/// <summary>The rest of the page stays empty.</summary>
public sealed record PageBreak : Block
{
    internal override IReadOnlyList<Piece> Lay(Room room) => [new(0, []) { BreaksPastShare = 0 }];
}

/// <summary>A chapter ends: the next one begins on a new page, unless this one is hardly filled.</summary>
public sealed record ChapterBreak : Block
{
    // Less than this of the page: judgement, no source.
    private const double FilledShare = 0.45;

    internal override IReadOnlyList<Piece> Lay(Room room) => [new(0, []) { BreaksPastShare = FilledShare }];
}
