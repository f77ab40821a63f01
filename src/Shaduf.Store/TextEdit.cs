namespace Shaduf.Store;

/// <summary>One edit of a text: at a place, what was taken out and what was put in.</summary>
/// <param name="Start">Where, in characters from the beginning, 0 to the text's length.</param>
/// <param name="Removed">What stood there.</param>
/// <param name="Inserted">What stands there now.</param>
public sealed record TextEdit(int Start, string Removed, string Inserted)
{
    /// <summary>The edit that takes this one back.</summary>
    public TextEdit Inverse => new(Start, Inserted, Removed);

    /// <summary>The smallest single edit that makes one text of another.</summary>
    /// <param name="before">The text as it was.</param>
    /// <param name="after">The text as it shall be.</param>
    /// <returns>The edit; it removes and inserts nothing when both are the same.</returns>
    public static TextEdit Between(string before, string after)
    {
        var start = before.AsSpan().CommonPrefixLength(after);
        var most = Math.Min(before.Length, after.Length) - start;
        var same = 0;
        while (same < most && before[^(same + 1)] == after[^(same + 1)])
        {
            same++;
        }

        return new(start, before[start..^same], after[start..^same]);
    }

    /// <summary>The text after the edit.</summary>
    /// <param name="text">The text before it.</param>
    /// <returns>The changed text.</returns>
    /// <exception cref="ArgumentException">What the edit takes out does not stand there.</exception>
    public string Apply(string text)
    {
        if (Start < 0 || Start > text.Length || !text.AsSpan(Start).StartsWith(Removed, StringComparison.Ordinal))
        {
            throw new ArgumentException("The text is not the one that was edited.", nameof(text));
        }

        return string.Concat(text.AsSpan(0, Start), Inserted, text.AsSpan(Start + Removed.Length));
    }
}
