using System.Runtime.InteropServices;
using HarfBuzzSharp;
using SkiaSharp;

namespace Shaduf.Pack;

/// <summary>
/// A font cut down to the letters that a document shows. The library that shapes the text can do it, but its managed
/// wrapper does not offer it.
/// </summary>
internal static class FontSubset
{
    private const string Library = "libHarfBuzzSharp";

    // HB_SUBSET_FLAGS_RETAIN_GIDS | HB_SUBSET_FLAGS_NO_LAYOUT_CLOSURE: glyphs keep the numbers that the shaper gave.
    private const int Flags = 0x2 | 0x200;

    /// <summary>Makes a typeface that holds the glyphs named and knows the code points named.</summary>
    /// <exception cref="InvalidOperationException">The font cannot be cut.</exception>
    internal static SKTypeface Of(Face face, IEnumerable<uint> glyphs, IEnumerable<uint> codePoints)
    {
        var input = hb_subset_input_create_or_fail();
        try
        {
            hb_subset_input_set_flags(input, Flags);
            AddAll(hb_subset_input_glyph_set(input), glyphs);
            AddAll(hb_subset_input_unicode_set(input), codePoints);
            var subset = hb_subset_or_fail(face.Handle, input);
            if (subset == 0)
            {
                throw new InvalidOperationException("A font could not be cut down to the letters used.");
            }

            var blob = hb_face_reference_blob(subset);
            hb_face_destroy(subset);
            var bytes = hb_blob_get_data(blob, out var length);
            using var data = SKData.CreateCopy(bytes, length);
            hb_blob_destroy(blob);
            return SKTypeface.FromData(data);
        }
        finally
        {
            hb_subset_input_destroy(input);
        }
    }

    private static void AddAll(nint set, IEnumerable<uint> values)
    {
        foreach (var value in values)
        {
            hb_set_add(set, value);
        }
    }

    [DllImport(Library)]
    private static extern nint hb_subset_input_create_or_fail();

    [DllImport(Library)]
    private static extern void hb_subset_input_set_flags(nint input, int flags);

    [DllImport(Library)]
    private static extern nint hb_subset_input_glyph_set(nint input);

    [DllImport(Library)]
    private static extern nint hb_subset_input_unicode_set(nint input);

    [DllImport(Library)]
    private static extern void hb_set_add(nint set, uint value);

    [DllImport(Library)]
    private static extern nint hb_subset_or_fail(nint face, nint input);

    [DllImport(Library)]
    private static extern nint hb_face_reference_blob(nint face);

    [DllImport(Library)]
    private static extern nint hb_blob_get_data(nint blob, out uint length);

    [DllImport(Library)]
    private static extern void hb_blob_destroy(nint blob);

    [DllImport(Library)]
    private static extern void hb_face_destroy(nint face);

    [DllImport(Library)]
    private static extern void hb_subset_input_destroy(nint input);
}
