using System.Globalization;
using System.Text;

namespace Shaduf.Pack;

/// <summary>
/// The order in which the parts of a line stand when it holds writing from right to left. A plain reading of the
/// bidirectional algorithm: strong letters, numbers and what stands between them; no embedding marks.
/// </summary>
/// <source>Unicode Standard Annex 9, rules P2, W2, W4, W5, W7, N1, N2, I1, I2, L2 (from memory).</source>
internal static class TextDirection
{
    private enum Kind
    {
        Left,
        Right,
        Number,
        Between,
    }

    internal static bool IsRightToLeft(string text)
    {
        foreach (var rune in text.EnumerateRunes())
        {
            if (KindOf(rune) is var kind && kind is Kind.Left or Kind.Right)
            {
                return kind == Kind.Right;
            }
        }

        return false;
    }

    internal static bool HasRightToLeft(string text)
    {
        foreach (var c in text)
        {
            if (c >= '\u0590' && KindOf(new Rune(char.IsSurrogate(c) ? 'a' : c)) == Kind.Right)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The level of each grapheme: even reads from the left, odd from the right.</summary>
    internal static int[] Levels(IReadOnlyList<string> graphemes)
    {
        var isRight = IsRightToLeft(string.Concat(graphemes));
        var kinds = graphemes.Select(g => KindOf(Rune.GetRuneAt(g, 0))).ToArray();
        JoinNumbers(kinds, graphemes);
        var levels = new int[kinds.Length];
        var strong = isRight ? Kind.Right : Kind.Left;
        for (var i = 0; i < kinds.Length; i++)
        {
            strong = kinds[i] is Kind.Left or Kind.Right ? kinds[i] : strong;
            levels[i] = kinds[i] switch
            {
                Kind.Right => 1,
                Kind.Left => isRight ? 2 : 0,
                Kind.Number => strong == Kind.Right || isRight ? 2 : 0,
                _ => -1,
            };
            if (kinds[i] == Kind.Number)
            {
                // For its neighbours a number after right-to-left letters counts as right-to-left.
                kinds[i] = strong;
            }
        }

        FillBetween(kinds, levels, isRight);
        return levels;
    }

    /// <summary>The visual order of parts with the levels given.</summary>
    internal static int[] VisualOrder(IReadOnlyList<int> levels)
    {
        var order = Enumerable.Range(0, levels.Count).ToArray();
        for (var level = levels.DefaultIfEmpty().Max(); level >= 1; level--)
        {
            for (var start = 0; start < order.Length; start++)
            {
                var end = start;
                while (end < order.Length && levels[order[end]] >= level)
                {
                    end++;
                }

                Array.Reverse(order, start, end - start);
                start = end;
            }
        }

        return order;
    }

    // Separators inside a number and signs beside it belong to it: 1,250.5 and 45 °.
    private static void JoinNumbers(Kind[] kinds, IReadOnlyList<string> graphemes)
    {
        for (var i = 1; i < kinds.Length; i++)
        {
            if (kinds[i] != Kind.Between || kinds[i - 1] != Kind.Number)
            {
                continue;
            }

            var isSeparator = ".,:/+-".Contains(graphemes[i], StringComparison.Ordinal);
            var isSign = "%‰°€£$".Contains(graphemes[i], StringComparison.Ordinal);
            if (isSign || (isSeparator && i + 1 < kinds.Length && kinds[i + 1] == Kind.Number))
            {
                kinds[i] = Kind.Number;
            }
        }
    }

    private static void FillBetween(Kind[] kinds, int[] levels, bool isRight)
    {
        var outer = isRight ? Kind.Right : Kind.Left;
        for (var start = 0; start < kinds.Length; start++)
        {
            if (levels[start] >= 0)
            {
                continue;
            }

            var end = start;
            while (end < kinds.Length && levels[end] < 0)
            {
                end++;
            }

            var before = start == 0 ? outer : kinds[start - 1];
            var after = end == kinds.Length ? outer : kinds[end];
            var agreed = before == after ? before : outer;
            var level =
                agreed == Kind.Right ? 1
                : isRight ? 2
                : 0;
            Array.Fill(levels, level, start, end - start);
            start = end - 1;
        }
    }

    private static Kind KindOf(Rune rune) =>
        rune.Value switch
        {
            0x200E => Kind.Left,
            0x200F => Kind.Right,
            (>= 0x0660 and <= 0x0669) or (>= 0x06F0 and <= 0x06F9) => Kind.Number,
            (>= 0x0590 and <= 0x08FF) or (>= 0xFB1D and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFE) => Kind.Right,
            _ when Rune.GetUnicodeCategory(rune) == UnicodeCategory.DecimalDigitNumber => Kind.Number,
            _ when Rune.IsLetter(rune) => Kind.Left,
            _ => Kind.Between,
        };
}
