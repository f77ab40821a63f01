using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Pack;

/// <summary>Lays blocks on pages, one under the other.</summary>
public static class Flow
{
    /// <summary>Lays a document.</summary>
    /// <param name="blocks">The document's blocks in order.</param>
    /// <param name="style">Size, margins and running texts.</param>
    /// <returns>One scene for each page; at least one.</returns>
    /// <exception cref="ArgumentException">A picture does not fit the page, or a table's columns or cells do not fit.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A margin or a size is out of range.</exception>
    public static IReadOnlyList<Scene> Lay(IReadOnlyList<Block> blocks, PageStyle style)
    {
        Within.Require(style.Margins.LeftMm, 0, 100, "mm");
        Within.Require(style.Margins.RightMm, 0, 100, "mm");
        Within.Require(style.Margins.TopMm, 12, 100, "mm");
        Within.Require(style.Margins.BottomMm, 14, 100, "mm");
        var body = style.Body;
        var stack = new PageStack(body);
        foreach (var chain in Chains(blocks.SelectMany(block => block.Lay(new(body.WidthMm, body.HeightMm)))))
        {
            stack.Add(chain);
        }

        return
        [
            .. stack.Pages.Select(
                (page, i) =>
                    new Scene(style.Size, [.. Running(style, i + 1, stack.Pages.Count), .. page])
                    {
                        Title = $"{style.HeadRight}, page {i + 1}",
                    }
            ),
        ];
    }

    // Pieces that must stand on one page.
    private static IEnumerable<List<Piece>> Chains(IEnumerable<Piece> pieces)
    {
        var chain = new List<Piece>();
        foreach (var piece in pieces)
        {
            chain.Add(piece);
            if (!piece.KeepsWithNext)
            {
                yield return chain;
                chain = [];
            }
        }

        if (chain.Count > 0)
        {
            yield return chain;
        }
    }

    private sealed class PageStack(PaperBox body)
    {
        private double yMm = body.TopMm;

        public List<List<SceneItem>> Pages { get; } =
        [
            [],
        ];

        private bool IsFresh => yMm <= body.TopMm;

        public void Add(List<Piece> chain)
        {
            // A chain taller than a page is parted where it must be.
            var chainMm = chain.Sum(piece => piece.SpaceBeforeMm + piece.HeightMm);
            if (!IsFresh && chainMm <= body.HeightMm && yMm + chainMm > body.BottomMm + 0.001)
            {
                Turn();
            }

            foreach (var piece in chain)
            {
                Add(piece);
            }
        }

        private void Add(Piece piece)
        {
            if (piece.BreaksPastShare is { } share)
            {
                if (yMm - body.TopMm >= share * body.HeightMm)
                {
                    Turn();
                }

                return;
            }

            if (!IsFresh && yMm + piece.SpaceBeforeMm + piece.HeightMm > body.BottomMm + 0.001)
            {
                Turn();
            }

            if (IsFresh && piece.Repeat is not null)
            {
                Put(piece.Repeat);
            }

            Put(piece);
        }

        private void Put(Piece piece)
        {
            yMm += IsFresh ? 0 : piece.SpaceBeforeMm;
            Pages[^1].AddRange(piece.Items.Select(item => item.Moved(body.LeftMm, yMm)));
            yMm += piece.HeightMm;
        }

        private void Turn()
        {
            if (Pages[^1].Count > 0)
            {
                Pages.Add([]);
            }

            yMm = body.TopMm;
        }
    }

    private static IEnumerable<SceneItem> Running(PageStyle style, int number, int count)
    {
        var body = style.Body;
        var headMm = body.TopMm - 6;
        var footMm = body.BottomMm + 5;
        var mark = style.Mark;
        var page = string.Create(CultureInfo.InvariantCulture, $"page {number} of {count}");
        var foot = $"Status: {mark.Status} · Revision {mark.Revision} · Brief {mark.BriefHash}";
        return
        [
            .. Ends(body, headMm, style.HeadLeft, style.HeadRight),
            new LineItem(Layer.Thin, new(body.LeftMm, headMm + 1.8), new(body.RightMm, headMm + 1.8)),
            new LineItem(Layer.Thin, new(body.LeftMm, footMm), new(body.RightMm, footMm)),
            .. Ends(body, footMm + 4, foot, page),
        ];
    }

    // Two texts at the ends of a line; the left one gives way when both do not fit.
    private static IEnumerable<SceneItem> Ends(PaperBox body, double yMm, string left, string right)
    {
        var style = TextStyle.Small;
        var rightText = Lettering.Shortened(right, body.WidthMm * 0.5, style);
        var leftMm = body.WidthMm - Lettering.WidthMm(rightText, style.SizeMm) - 4;
        yield return new TextItem(Layer.Text, new(body.LeftMm, yMm), Lettering.Shortened(left, leftMm, style), style);
        yield return new TextItem(
            Layer.Text,
            new(body.RightMm, yMm),
            rightText,
            style with
            {
                Horizontal = HorizontalAnchor.Right,
            }
        );
    }
}
