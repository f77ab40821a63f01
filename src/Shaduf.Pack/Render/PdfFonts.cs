using SkiaSharp;

namespace Shaduf.Pack;

/// <summary>The texts of a document, shaped once, and its fonts cut down to the letters that these use.</summary>
internal sealed class PdfFonts : IDisposable
{
    private readonly Dictionary<TextItem, ShapedText> shaped = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<FontFace, SKTypeface> typefaces = [];

    internal PdfFonts(IEnumerable<Scene> scenes)
    {
        foreach (var item in scenes.SelectMany(scene => scene.Items.OfType<TextItem>()))
        {
            shaped[item] = ShapedText.Of(item.Text, item.Style.Weight);
        }

        foreach (var runs in shaped.Values.SelectMany(text => text.Runs).GroupBy(run => run.Face))
        {
            typefaces[runs.Key] = Cut(runs.Key, [.. runs]);
        }
    }

    internal IReadOnlyList<string> Missing => Lettering.Missing(shaped.Values);

    internal ShapedText this[TextItem item] => shaped[item];

    internal SKTypeface this[FontFace face] => typefaces[face];

    public void Dispose()
    {
        foreach (var typeface in typefaces.Values)
        {
            typeface.Dispose();
        }
    }

    private static SKTypeface Cut(FontFace face, IReadOnlyList<ShapedRun> runs)
    {
        var glyphs = runs.SelectMany(run => run.Glyphs).Select(glyph => (uint)glyph).ToHashSet();
        var codePoints = runs.SelectMany(run => System.Text.Encoding.UTF8.GetString(run.Text).EnumerateRunes())
            .Select(rune => (uint)rune.Value)
            .ToHashSet();

        // Joined Arabic letters are other glyphs than their code points name; their presentation forms name them.
        codePoints.UnionWith(
            PresentationForms()
                .Where(form => face.TryGlyph(form, out var glyph) && glyphs.Contains(glyph))
                .Select(form => (uint)form)
        );
        return FontSubset.Of(face.Face, glyphs.Order(), codePoints.Order());
    }

    private static IEnumerable<int> PresentationForms() =>
        Enumerable.Range(0xFB50, 0xFE00 - 0xFB50).Concat(Enumerable.Range(0xFE70, 0xFEFD - 0xFE70));
}
