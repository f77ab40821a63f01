using System.Globalization;
using Shaduf.Pack;
using Shaduf.Station;

namespace Shaduf.Bench.Pack;

/// <summary>All drawing sheets of the examples in their three formats, and the solid model.</summary>
internal static class SheetTimes
{
    private static readonly string[] s_examples =
    [
        "homestead",
        "market-garden",
        "hilltop-village",
        "river-terrace",
        "plain-school",
    ];

    /// <summary>Writes the table.</summary>
    public static void Write()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Shaduf.slnx")))
        {
            folder = folder.Parent!;
        }

        foreach (var name in s_examples)
        {
            var file = StationFile.Read(Path.Combine(folder.FullName, "examples", name, "station.yaml"));
            var design = DesignRun.Run(file);
            var stamp = Stamp.Of(design, "bench", new(2026, 1, 31));
            var count = 0;
            var (firstMs, leastMs) = ProcessorTime.Of(() => count = Sheets(design, stamp));
            var (firstModelMs, leastModelMs) = ProcessorTime.Of(() => GlbRenderer.Write(StationModel.Of(design)));
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {name} | {count} | {firstMs:0} ms | {leastMs:0} ms | {firstModelMs:0} ms, {leastModelMs:0.0} ms |"
                )
            );
        }
    }

    private static int Sheets(Design design, Stamp stamp)
    {
        var sheets = DrawingSheets.Of(design, stamp);
        using var stream = new MemoryStream();
        PdfRenderer.Write(
            stream,
            [.. sheets.Select(sheet => sheet.Scene)],
            new DocumentInfo("sheets", "", stamp.Line, "bench", new(stamp.Dated, TimeOnly.MinValue, TimeSpan.Zero))
        );
        foreach (var sheet in sheets)
        {
            _ = SvgRenderer.Write(sheet.Scene);
            _ = DxfRenderer.Write(sheet.Scene, sheet.OneToFactor);
        }

        return sheets.Count;
    }
}
