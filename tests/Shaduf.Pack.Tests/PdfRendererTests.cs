using Shaduf.Working;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Shaduf.Pack.Tests;

public sealed class PdfRendererTests
{
    private const double PointsPerMm = 72 / 25.4;

    private static byte[] Pdf(params IReadOnlyList<Scene> pages)
    {
        using var stream = new MemoryStream();
        PdfRenderer.Write(stream, pages, SampleDocument.Info);
        return stream.ToArray();
    }

    private static Word Find(Page page, string word) => page.GetWords().First(w => w.Text == word);

    [Fact]
    public void EachTextStandsOnItsPageAtItsPlace()
    {
        var first = new SceneBuilder(PaperSize.A4Upright).Text(new(40, 60), "Borehole").Build();
        var second = new SceneBuilder(PaperSize.A3Landscape)
            .Text(new(300, 200), "Tank", TextStyle.Title with { Horizontal = HorizontalAnchor.Right })
            .Build();
        using var document = PdfDocument.Open(Pdf(first, second));

        var borehole = Find(document.GetPage(1), "Borehole");
        Assert.Equal(40 * PointsPerMm, borehole.Letters[0].StartBaseLine.X, 0.05);
        Assert.Equal((297 - 60) * PointsPerMm, borehole.Letters[0].StartBaseLine.Y, 0.05);
        var tank = Find(document.GetPage(2), "Tank");
        Assert.Equal(300 * PointsPerMm, tank.Letters[^1].EndBaseLine.X, 0.05);
        Assert.DoesNotContain(document.GetPage(2).GetWords(), w => w.Text == "Borehole");
    }

    [Fact]
    public void PageSizesAreExact()
    {
        using var document = PdfDocument.Open(
            Pdf(
                new SceneBuilder(PaperSize.A4Upright).Build(),
                new SceneBuilder(PaperSize.A4Landscape).Build(),
                new SceneBuilder(PaperSize.A3Landscape).Build()
            )
        );
        (double WidthMm, double HeightMm)[] sizes = [(210, 297), (297, 210), (420, 297)];
        for (var i = 0; i < sizes.Length; i++)
        {
            Assert.Equal(sizes[i].WidthMm, document.GetPage(i + 1).Width / PointsPerMm, 0.001);
            Assert.Equal(sizes[i].HeightMm, document.GetPage(i + 1).Height / PointsPerMm, 0.001);
        }
    }

    [Fact]
    public void TheSameDocumentGivesTheSameBytes() =>
        Assert.Equal(Pdf(SampleDocument.Pages()), Pdf(SampleDocument.Pages()));

    [Fact]
    public void SeveralThreadsGiveTheSameBytes()
    {
        var alone = Pdf(SampleDocument.Pages());
        var together = new byte[6][];
        Parallel.For(0, together.Length, i => together[i] = Pdf(SampleDocument.Pages()));
        Assert.All(together, bytes => Assert.Equal(alone, bytes));
    }

    [Fact]
    public void TheMachinesTimeZoneLeavesNoTrace()
    {
        var here = Pdf(SampleDocument.Frame());
        var zone = Environment.GetEnvironmentVariable("TZ");
        try
        {
            Environment.SetEnvironmentVariable("TZ", "Asia/Kathmandu");
            TimeZoneInfo.ClearCachedData();
            Assert.Equal(here, Pdf(SampleDocument.Frame()));
        }
        finally
        {
            Environment.SetEnvironmentVariable("TZ", zone);
            TimeZoneInfo.ClearCachedData();
        }

        using var document = PdfDocument.Open(here);
        Assert.Equal("D:20260314083000+00'00'", document.Information.CreationDate);
    }

    [Fact]
    public void OnlyTheLettersUsedAreEmbedded()
    {
        var text = Pdf(new SceneBuilder(PaperSize.A4Upright).Text(new(20, 20), "Pump 6.4 m³/h, Ø 63, ☐ ⌀").Build());
        Assert.InRange(text.Length, 2_000, 25_000);
        using var document = PdfDocument.Open(text);
        var names = document.GetPage(1).Letters.Select(letter => letter.FontName).Distinct().ToList();
        Assert.Contains(names, name => name!.EndsWith("+SourceSans3-Regular", StringComparison.Ordinal));
        Assert.Contains(names, name => name!.EndsWith("+DejaVuSans", StringComparison.Ordinal));
        Assert.Equal("Pump 6.4 m³/h, Ø 63, ☐ ⌀", document.GetPage(1).Text);
    }

    [Fact]
    public void AMissingCharacterIsReportedAndMarked()
    {
        var scene = new SceneBuilder(PaperSize.A4Upright).Text(new(20, 20), "गाँव station").Build();
        using var stream = new MemoryStream();
        var missing = PdfRenderer.Write(stream, [scene], SampleDocument.Info);

        Assert.NotEmpty(missing);
        Assert.Equal(missing, scene.MissingCharacters());
        Assert.Contains("व", missing);
        using var document = PdfDocument.Open(stream.ToArray());
        Assert.Equal("[no font] station", document.GetPage(1).Text);
    }

    [Fact]
    public void ADocumentNeedsAPage() => Assert.Throws<ArgumentException>(() => Pdf());
}
