namespace Shaduf.Pack;

/// <summary>Words of one weight.</summary>
/// <param name="Text">The words.</param>
/// <param name="Weight">Their weight.</param>
public sealed record TextSpan(string Text, FontWeight Weight);

/// <summary>Running text that may hold bold words. A <c>\n</c> breaks the line.</summary>
/// <param name="Spans">Its parts in reading order.</param>
public sealed record RichText(IReadOnlyList<TextSpan> Spans)
{
    /// <summary>The text without weights.</summary>
    public string Plain => string.Concat(Spans.Select(span => span.Text));

    /// <summary>Plain text.</summary>
    /// <param name="text">The text, taken as it is.</param>
    public static implicit operator RichText(string text) => From(text);

    /// <summary>Plain text.</summary>
    /// <param name="text">The text, taken as it is.</param>
    /// <returns>The running text.</returns>
    public static RichText From(string text) => new([new(text, FontWeight.Regular)]);

    /// <summary>Bold text.</summary>
    /// <param name="text">The text, taken as it is.</param>
    /// <returns>The running text.</returns>
    public static RichText Bold(string text) => new([new(text, FontWeight.Bold)]);

    /// <summary>Text with bold words between pairs of two stars: <c>the tank holds **10 m³**</c>.</summary>
    /// <param name="marked">The text; only for text of our own, as a client's text may hold stars.</param>
    /// <returns>The running text.</returns>
    public static RichText Marked(string marked) =>
        new([
            .. marked
                .Split("**")
                .Select((part, i) => new TextSpan(part, i % 2 == 1 ? FontWeight.Bold : FontWeight.Regular))
                .Where(span => span.Text.Length > 0),
        ]);

    internal RichText AllBold => new([.. Spans.Select(span => span with { Weight = FontWeight.Bold })]);
}
