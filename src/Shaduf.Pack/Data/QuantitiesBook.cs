using System.IO.Compression;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using Shaduf.Station;
using SpreadCheetah;
using SpreadCheetah.Metadata;
using static System.FormattableString;
using Cell = SpreadCheetah.Cell;
using Margins = DocumentFormat.OpenXml.Spreadsheet.PageMargins;

namespace Shaduf.Pack;

/// <summary>The spreadsheet of the pack: summary, bill with live formulas, offer, purchases, rates, payment, parts, bars, months, findings, assumptions.</summary>
internal static class QuantitiesBook
{
    /// <summary>Writes the spreadsheet.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">Status, revision, hash.</param>
    /// <returns>The file; the same bytes for the same design and stamp.</returns>
    public static async Task<byte[]> OfAsync(Design design, Stamp stamp)
    {
        using var stream = new MemoryStream();
        var options = new SpreadCheetahOptions
        {
            DocumentProperties = new DocumentProperties
            {
                Title = $"{design.Brief.Head.Name}: quantities",
                Author = "shaduf",
            },
        };
        await using (var book = await Spreadsheet.CreateNewAsync(stream, options))
        {
            var sheet = new Sheet(book, CellStyles.AddTo(book), stamp);
            await DesignSheets.SummaryAsync(sheet, design);
            var bill = await BillSheet.WriteAsync(sheet, design);
            await OfficeSheets.WriteAsync(sheet, design, bill);
            await DesignSheets.RestAsync(sheet, design);
            await book.FinishAsync();
        }

        SetPrint(stream, stamp);
        return WithFixedTimes(stream.ToArray(), stamp.Dated);
    }

    // A4 across, as wide as the paper, the heading on each page, the stamp at its foot.
    private static void SetPrint(MemoryStream stream, Stamp stamp)
    {
        stream.Position = 0;
        using var document = SpreadsheetDocument.Open(stream, isEditable: true);
        foreach (var part in document.WorkbookPart!.WorksheetParts)
        {
            var sheet = part.Worksheet!;
            var properties = sheet.GetFirstChild<SheetProperties>() ?? sheet.PrependChild(new SheetProperties());
            properties.PageSetupProperties = new PageSetupProperties { FitToPage = true };
            sheet.Append(
                new Margins
                {
                    Left = 0.5,
                    Right = 0.4,
                    Top = 0.5,
                    Bottom = 0.6,
                    Header = 0.3,
                    Footer = 0.3,
                },
                new PageSetup
                {
                    PaperSize = 9,
                    Orientation = OrientationValues.Landscape,
                    FitToWidth = 1,
                    FitToHeight = 0,
                },
                new HeaderFooter
                {
                    OddFooter = new OddFooter($"&L{stamp.Line.Replace("&", "&&", StringComparison.Ordinal)}&R&P / &N"),
                }
            );
            sheet.Save();
        }
    }

    // The archive again with one time for every entry, so that the same design gives the same bytes.
    private static byte[] WithFixedTimes(byte[] file, DateOnly dated)
    {
        var time = new DateTimeOffset(dated, new(12, 0), TimeSpan.Zero);
        using var result = new MemoryStream();
        using (var from = new ZipArchive(new MemoryStream(file), ZipArchiveMode.Read))
        using (var to = new ZipArchive(result, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var entry in from.Entries.OrderBy(entry => entry.FullName, StringComparer.Ordinal))
            {
                var copy = to.CreateEntry(entry.FullName, CompressionLevel.Optimal);
                copy.LastWriteTime = time;
                using var source = entry.Open();
                using var target = copy.Open();
                using var reader = new StreamReader(source);
                using var writer = new StreamWriter(target);
                writer.Write(
                    Created()
                        .Replace(reader.ReadToEnd(), Invariant($"${{open}}{time:yyyy-MM-dd'T'HH:mm:ss'Z'}${{close}}"))
                );
            }
        }

        return result.ToArray();
    }

    private static System.Text.RegularExpressions.Regex Created() =>
        new(
            @"(?<open><dcterms:created[^>]*>)[^<]*(?<close></dcterms:created>)",
            System.Text.RegularExpressions.RegexOptions.ExplicitCapture,
            TimeSpan.FromSeconds(2)
        );
}
