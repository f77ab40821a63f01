using System.Text;
using HarfBuzzSharp;
using Buffer = HarfBuzzSharp.Buffer;

namespace Shaduf.Pack;

/// <summary>Glyphs of one font in the order they stand, from the left.</summary>
/// <param name="Face">The font.</param>
/// <param name="Text">The text that they write, in reading order, UTF-8.</param>
/// <param name="Clusters">Byte of the text at which each glyph's character starts.</param>
/// <param name="Glyphs">The glyphs' numbers in the font file.</param>
/// <param name="XEm">Left of each glyph from the start of the line, in ems.</param>
/// <param name="YEm">Height of each glyph above the line, in ems.</param>
internal sealed record ShapedRun(
    FontFace Face,
    byte[] Text,
    uint[] Clusters,
    ushort[] Glyphs,
    float[] XEm,
    float[] YEm
);

/// <summary>A line of text, shaped: the right glyphs in the right places.</summary>
/// <param name="Runs">Its runs from the left.</param>
/// <param name="WidthEm">Its width, in ems.</param>
/// <param name="Missing">Characters that no font has; <see cref="Lettering.NoFont"/> stands for each run of them.</param>
internal sealed record ShapedText(IReadOnlyList<ShapedRun> Runs, double WidthEm, IReadOnlyList<string> Missing)
{
    // Joined Latin letters (fi) would have no code point of their own in a PDF's text layer.
    private static readonly Feature[] NoJoinedLetters =
    [
        Feature.Parse("-liga"),
        Feature.Parse("-clig"),
        Feature.Parse("-dlig"),
    ];

    private static readonly Language English = new("en");

    internal static ShapedText Of(string text, FontWeight weight)
    {
        var runs = new List<ShapedRun>();
        var xEm = 0.0;
        var missing = new List<string>();
        foreach (var (face, part, isRight) in Parts(text, weight, missing))
        {
            xEm += Shape(face, part, isRight, xEm, out var run);
            runs.Add(run);
        }

        return new(runs, xEm, missing);
    }

    private readonly record struct Part(FontFace Face, string Text, bool IsRight);

    private static List<Part> Parts(string text, FontWeight weight, List<string> missing)
    {
        // Most texts are plain letters and figures, which the main font has.
        if (Ascii.IsValid(text) && !text.Any(char.IsControl))
        {
            return text.Length == 0 ? [] : [new(FontFace.For(" ", weight)!, text, false)];
        }

        var graphemes = Graphemes.Of(text);
        var levels = TextDirection.HasRightToLeft(text) ? TextDirection.Levels(graphemes) : new int[graphemes.Count];
        var parts = new List<Part>();
        var partLevels = new List<int>();
        var isRunOn = false;
        for (var i = 0; i < graphemes.Count; i++)
        {
            var found = FontFace.For(graphemes[i], weight);
            if (found is null)
            {
                missing.Add(graphemes[i]);
                graphemes[i] = isRunOn ? "" : Lettering.NoFont;
            }

            isRunOn = found is null;
            var (face, drawn) = (found ?? FontFace.For(" ", weight)!, graphemes[i]);

            if (parts.Count > 0 && parts[^1].Face == face && partLevels[^1] == levels[i])
            {
                parts[^1] = parts[^1] with { Text = parts[^1].Text + drawn };
                continue;
            }

            parts.Add(new(face, drawn, levels[i] % 2 == 1));
            partLevels.Add(levels[i]);
        }

        return [.. TextDirection.VisualOrder(partLevels).Select(i => parts[i])];
    }

    private static double Shape(FontFace face, string text, bool isRight, double startEm, out ShapedRun run)
    {
        using var buffer = new Buffer();
        var utf8 = Encoding.UTF8.GetBytes(text);
        Fill(buffer, utf8, isRight);
        face.Font.Shape(buffer, isRight ? [] : NoJoinedLetters);
        var infos = buffer.GetGlyphInfoSpan();
        var places = buffer.GetGlyphPositionSpan();
        double unit = face.Face.UnitsPerEm;
        var glyphs = new ushort[infos.Length];
        var clusters = new uint[infos.Length];
        var xs = new float[infos.Length];
        var ys = new float[infos.Length];
        var penEm = 0.0;
        for (var i = 0; i < infos.Length; i++)
        {
            glyphs[i] = (ushort)infos[i].Codepoint;
            clusters[i] = infos[i].Cluster;
            xs[i] = (float)(startEm + penEm + (places[i].XOffset / unit));
            ys[i] = (float)(places[i].YOffset / unit);
            penEm += places[i].XAdvance / unit;
        }

        run = new(face, utf8, clusters, glyphs, xs, ys);
        return penEm;
    }

    private static void Fill(Buffer buffer, byte[] utf8, bool isRight)
    {
        buffer.AddUtf8(utf8);
        buffer.Direction = isRight ? Direction.RightToLeft : Direction.LeftToRight;
        buffer.Language = English;
        buffer.GuessSegmentProperties();
    }
}
