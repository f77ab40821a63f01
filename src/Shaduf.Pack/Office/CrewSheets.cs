namespace Shaduf.Pack;

/// <summary>
/// Brings sheets onto a number of pages without leaving a word out: letters grow smaller where a sheet is too full, and
/// sheets follow each other on one page where there are still too many.
/// </summary>
internal static class CrewSheets
{
    // Body letters of 3.5 mm down to 2.6 mm: what is still read at arm's length; judgement, no source.
    private static readonly double[] s_sizes = [1, 0.93, 0.86, 0.8, 0.73];

    /// <summary>Lays the sheets.</summary>
    /// <param name="sheets">The blocks of each sheet, in the order of use.</param>
    /// <param name="style">Size, margins and running texts.</param>
    /// <param name="mostPages">Most pages.</param>
    /// <returns>The pages; null when all of it does not go on so few.</returns>
    public static IReadOnlyList<Scene>? Lay(IReadOnlyList<IReadOnlyList<Block>> sheets, PageStyle style, int mostPages)
    {
        var parts = Joined([.. sheets.Select(sheet => Part.Of(sheet, style))], style, mostPages);
        IEnumerable<Block>[] tries =
        [
            parts.SelectMany((part, i) => i == 0 ? part.Laid : part.Laid.Prepend(new PageBreak())),
            .. s_sizes.Select(size => sheets.SelectMany(sheet => Sized(sheet, size))),
        ];
        return tries.Select(tried => Flow.Lay([.. tried], style)).FirstOrDefault(pages => pages.Count <= mostPages);
    }

    // Blocks that stand together: in the largest letters in which they go on one page, as they are where they do in none.
    private sealed record Part(IReadOnlyList<Block> Blocks, double Size, int PageCount)
    {
        public IReadOnlyList<Block> Laid => Sized(Blocks, Size);

        public static Part Of(IReadOnlyList<Block> blocks, PageStyle style)
        {
            var fitting = s_sizes.FirstOrDefault(size => Flow.Lay(Sized(blocks, size), style).Count == 1);
            return fitting > 0 ? new(blocks, fitting, 1) : new(blocks, 1, Flow.Lay(blocks, style).Count);
        }
    }

    // Two neighbours on one page, those in the largest letters first, again and again until there are few enough.
    private static List<Part> Joined(List<Part> parts, PageStyle style, int mostPages)
    {
        while (parts.Sum(part => part.PageCount) > mostPages)
        {
            var pairs = parts
                .Zip(parts.Skip(1), (one, next) => Part.Of([.. one.Blocks, .. next.Blocks], style))
                .Index()
                .Where(pair => pair.Item.PageCount < parts[pair.Index].PageCount + parts[pair.Index + 1].PageCount)
                .ToList();
            if (pairs.Count == 0)
            {
                break;
            }

            var (at, both) = pairs.MaxBy(pair => pair.Item.Size);
            parts = [.. parts[..at], both, .. parts[(at + 2)..]];
        }

        return parts;
    }

    private static IReadOnlyList<Block> Sized(IReadOnlyList<Block> blocks, double factor) =>
        [.. blocks.Select(block => Sized(block, factor))];

    private static Block Sized(Block block, double factor) =>
        block switch
        {
            Paragraph paragraph => paragraph with { SizeMm = paragraph.SizeMm * factor },
            Bullets bullets => bullets with { SizeMm = bullets.SizeMm * factor },
            Table table => table with { SizeMm = table.SizeMm * factor },
            Columns columns => new Columns([
                .. columns.Sides.Select(side => side with { Blocks = Sized(side.Blocks, factor) }),
            ]),
            _ => block,
        };
}
