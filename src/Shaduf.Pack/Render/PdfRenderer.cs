using SkiaSharp;

namespace Shaduf.Pack;

/// <summary>Writes scenes as pages of a PDF file: vectors, searchable text, only the letters used.</summary>
public static class PdfRenderer
{
    private const float PointsPerMm = 72f / 25.4f;

    // Page sizes are rounded to this raster: a tenth of a millimetre. Nothing else is made of dots.
    private const float RasterDpi = 254;

    /// <summary>Writes a document. The same scenes and the same information give the same bytes.</summary>
    /// <param name="stream">Where to write; left open.</param>
    /// <param name="pages">One scene for each page, at least one. Sizes may differ.</param>
    /// <param name="info">What the file says about itself.</param>
    /// <returns>Characters that no font has, drawn as the replacement mark; the caller must tell the reader.</returns>
    /// <exception cref="ArgumentException">There are no pages.</exception>
    public static IReadOnlyList<string> Write(Stream stream, IReadOnlyList<Scene> pages, DocumentInfo info)
    {
        if (pages.Count == 0)
        {
            throw new ArgumentException("A document needs at least one page.", nameof(pages));
        }

        using var fonts = new PdfFonts(pages);
        var dated = info.Dated.UtcDateTime;
        var about = new SKDocumentPdfMetadata
        {
            Title = info.Title,
            Author = info.Author,
            Subject = info.Subject,
            Creator = info.Program,
            Producer = info.Program,
            Creation = dated,
            Modified = dated,
            RasterDpi = RasterDpi,
        };
        using var file = new MemoryStream();
        using var document = SKDocument.CreatePdf(file, about);
        foreach (var scene in pages)
        {
            var size = scene.Size;
            var canvas = document.BeginPage((float)size.WidthMm * PointsPerMm, (float)size.HeightMm * PointsPerMm);
            canvas.Scale(PointsPerMm);
            var page = new PdfPage(canvas, fonts);
            foreach (var item in scene.Items)
            {
                page.Draw(item);
            }

            document.EndPage();
        }

        document.Close();
        var bytes = file.GetBuffer().AsSpan(0, (int)file.Length);
        PutUniversalTime(bytes, "/CreationDate (D:"u8);
        PutUniversalTime(bytes, "/ModDate (D:"u8);
        stream.Write(bytes);
        return fonts.Missing;
    }

    // The library puts the machine's time zone beside the time it is given: +09'00'. The time given is universal.
    private static void PutUniversalTime(Span<byte> file, ReadOnlySpan<byte> field)
    {
        const int digits = 14;
        "+00'00'"u8.CopyTo(file[(file.IndexOf(field) + field.Length + digits)..]);
    }
}
