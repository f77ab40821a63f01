using System.Runtime.InteropServices;
using System.Text;
using HarfBuzzSharp;

namespace Shaduf.Pack;

/// <summary>One font file that travels inside the program. Read when first needed, then shared by all threads.</summary>
internal sealed class FontFace
{
    // Stands in SVG for characters that XML refuses.
    internal const string ReplacementMark = "\uFFFD";

    private static readonly Lazy<FontFace> Main = new(() => new("SourceSans3_400Regular"));
    private static readonly Lazy<FontFace> MainBold = new(() => new("SourceSans3_700Bold"));
    private static readonly Lazy<FontFace> Fallback = new(() => new("DejaVuSans"));
    private static readonly Lazy<FontFace> FallbackBold = new(() => new("DejaVuSans-Bold"));

    private FontFace(string name)
    {
        Name = name;
        using var stream = typeof(FontFace).Assembly.GetManifestResourceStream($"fonts/{name}.ttf")!;
        using var file = Duplicate(stream);
        Face = new(file, 0);
        Face.MakeImmutable();
        Font = new(Face);
        Font.SetFunctionsOpenType();
        Font.SetScale(Face.UnitsPerEm, Face.UnitsPerEm);
    }

    /// <summary>The file's name without ending.</summary>
    internal string Name { get; }

    /// <summary>The font file.</summary>
    internal Face Face { get; }

    /// <summary>The font at one unit per design unit.</summary>
    internal Font Font { get; }

    /// <summary>The first shipped font that has all characters of a grapheme; null when none has.</summary>
    internal static FontFace? For(string grapheme, FontWeight weight)
    {
        var main = weight == FontWeight.Bold ? MainBold : Main;
        if (main.Value.Has(grapheme))
        {
            return main.Value;
        }

        var fallback = (weight == FontWeight.Bold ? FallbackBold : Fallback).Value;
        return fallback.Has(grapheme) ? fallback : null;
    }

    internal bool TryGlyph(int codePoint, out uint glyph) => Font.TryGetNominalGlyph((uint)codePoint, out glyph);

    private bool Has(string grapheme)
    {
        foreach (var rune in grapheme.EnumerateRunes())
        {
            if (!IsInvisible(rune) && !TryGlyph(rune.Value, out _))
            {
                return false;
            }
        }

        return true;
    }

    // Blob.FromStream keeps a pointer into managed memory that may move; here the library keeps a copy of its own.
    private static Blob Duplicate(Stream stream)
    {
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        var pinned = GCHandle.Alloc(bytes, GCHandleType.Pinned);
        try
        {
            return new(pinned.AddrOfPinnedObject(), bytes.Length, MemoryMode.Duplicate);
        }
        finally
        {
            pinned.Free();
        }
    }

    // Joiners and marks of direction shape their neighbours and have no picture.
    private static bool IsInvisible(Rune rune) => rune.Value is (>= 0x200B and <= 0x200F) or 0x2060 or 0xFEFF or 0x00AD;
}
