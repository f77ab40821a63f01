using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace Shaduf.Pack;

/// <summary>
/// A piece of a page. What is put into a piece is escaped, unless it is a piece itself: no text of a client or a card can
/// become part of the page's own writing.
/// </summary>
/// <param name="Text">Its text, as it stands in the page.</param>
internal sealed record Html(string Text)
{
    /// <summary>Nothing.</summary>
    public static Html None { get; } = new("");

    /// <summary>A piece with its gaps filled.</summary>
    /// <param name="text">The piece.</param>
    /// <returns>The piece.</returns>
    public static Html Of(Filling text) => new(text.ToString());

    /// <summary>Pieces one after the other.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <returns>One piece.</returns>
    public static Html Join(IEnumerable<Html> pieces) => new(string.Concat(pieces.Select(piece => piece.Text)));

    /// <summary>Fills the gaps of a piece.</summary>
    [InterpolatedStringHandler]
    internal readonly ref struct Filling
    {
        private readonly StringBuilder text;

        /// <summary>An empty piece.</summary>
        public Filling(int literalLength, int formattedCount) => text = new(literalLength + (formattedCount * 16));

        /// <summary>What we wrote ourselves.</summary>
        public void AppendLiteral(string literal) => text.Append(literal);

        /// <summary>A piece stands as it is.</summary>
        public void AppendFormatted(Html piece) => text.Append(piece.Text);

        /// <summary>A text is escaped.</summary>
        public void AppendFormatted(string? plain) => text.Append(SvgRenderer.Escaped(plain ?? ""));

        /// <summary>A number is written the same everywhere.</summary>
        public void AppendFormatted<T>(T number, string? format = null)
            where T : IFormattable =>
            text.Append(SvgRenderer.Escaped(number.ToString(format, CultureInfo.InvariantCulture)));

        /// <summary>The filled piece.</summary>
        public override string ToString() => text.ToString();
    }
}
