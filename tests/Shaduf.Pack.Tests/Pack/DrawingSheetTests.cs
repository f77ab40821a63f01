using System.Globalization;
using Shaduf.Parts;

namespace Shaduf.Pack.Tests;

public sealed class DrawingSheetTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void Nothing_lies_on_a_text_and_nothing_leaves_the_frame(string example)
    {
        Assert.Empty(
            Sheets(example).SelectMany(sheet => SheetFaults.Of(sheet).Select(fault => $"{sheet.Name}: {fault}"))
        );
    }

    // Every pair is a code and a value, every layer that is used is in the table, and the extents are the sheet's.
    [Fact]
    public void A_dxf_names_its_layers_and_is_as_large_as_the_sheet()
    {
        var sheet = Sheets("homestead").First(each => each.Name == "arrangement");
        var pairs = Pairs(DxfRenderer.Write(sheet.Scene, sheet.OneToFactor));
        Assert.Equal((0, "EOF"), pairs[^1]);
        var defined = Between(pairs, "LAYER", "ENDTAB")
            .Where(pair => pair.Code == 2)
            .Select(pair => pair.Value)
            .ToHashSet();
        var entities = Between(pairs, "ENTITIES", "ENDSEC");
        Assert.All(entities.Where(pair => pair.Code == 8), pair => Assert.Contains(pair.Value, defined));
        var widthMm = entities.Where(pair => pair.Code is 10 or 11).Max(pair => Number(pair.Value));
        Assert.Equal(sheet.Scene.Size.WidthMm * sheet.OneToFactor, widthMm, 1e-3);
        var handles = pairs.Where(pair => pair.Code is 5 or 105).Select(pair => pair.Value).ToList();
        Assert.Equal(handles.Count, handles.Distinct().Count());
        Assert.Contains(entities, pair => pair is (0, "TEXT"));
        Assert.Contains(entities, pair => pair is (0, "LWPOLYLINE"));
    }

    // As many entities of each kind as the scene has items, and none beyond the paper.
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void A_dxf_holds_what_the_sheet_holds(string example)
    {
        foreach (var sheet in Sheets(example))
        {
            var entities = Between(Pairs(DxfRenderer.Write(sheet.Scene, sheet.OneToFactor)), "ENTITIES", "ENDSEC");
            int Count(string kind) => entities.Count(pair => pair == (0, kind));
            var items = sheet.Scene.Items;
            Assert.Equal(
                items.OfType<LineItem>().Count() + items.OfType<HatchItem>().Sum(hatch => HatchLines.Of(hatch).Count),
                Count("LINE")
            );
            Assert.Equal(items.OfType<PolyItem>().Count(item => item.IsStroked), Count("LWPOLYLINE"));
            Assert.Equal(items.OfType<CircleItem>().Count(), Count("CIRCLE"));
            Assert.Equal(items.OfType<ArcItem>().Count(), Count("ARC"));
            Assert.Equal(items.OfType<TextItem>().Count(item => item.Text.Length > 0), Count("TEXT"));
            var across = entities.Where(pair => pair.Code is 10 or 11).Select(pair => Number(pair.Value)).ToList();
            Assert.InRange(across.Min(), -1e-3, sheet.Scene.Size.WidthMm * sheet.OneToFactor);
            Assert.InRange(across.Max(), 0, (sheet.Scene.Size.WidthMm * sheet.OneToFactor) + 1e-3);
        }
    }

    // Read back by an independent reader: page sizes of ISO 216 to a tenth of a millimetre, text that can be searched.
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void The_pdf_has_exact_pages_embedded_fonts_and_searchable_text(string example)
    {
        var sheets = Sheets(example);
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(packs[example].Files["sheets.pdf"]);
        Assert.Equal(sheets.Count, pdf.NumberOfPages);
        foreach (var (page, sheet) in pdf.GetPages().Zip(sheets))
        {
            Assert.Equal(sheet.Scene.Size.WidthMm, page.Width / 72 * 25.4, 0.1);
            Assert.Equal(sheet.Scene.Size.HeightMm, page.Height / 72 * 25.4, 0.1);
            Assert.Contains(sheet.Scene.Size, new[] { PaperSize.A3Landscape, PaperSize.A4Landscape });
            var text = string.Concat(page.Letters.Select(letter => letter.Value));
            Assert.Contains(
                "workshopdrawing",
                text.Replace(" ", "", StringComparison.Ordinal),
                StringComparison.Ordinal
            );

            // A subset bears six capitals and a plus before its name: it travels inside the file.
            Assert.All(
                page.Letters.Select(letter => letter.FontName).Distinct(),
                name => Assert.Matches("^[A-Z]{6}[+]", name)
            );
        }
    }

    [Fact]
    public void A_dxf_refuses_a_scale_that_is_none()
    {
        var sheet = Sheets("homestead")[0];
        Assert.Throws<ArgumentOutOfRangeException>(() => DxfRenderer.Write(sheet.Scene, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => DxfRenderer.Write(sheet.Scene, 0));
    }

    // Whoever has only the sheets can put the pits, cut the columns and set them: every figure of the model is on them.
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void Pits_columns_and_parts_can_be_read_off_the_sheets(string example)
    {
        var sheets = Sheets(example).ToDictionary(sheet => sheet.Name, Texts);
        var works = packs[example].Design.Works;
        foreach (var pit in works.Pits.Pits)
        {
            Assert.Superset(
                new HashSet<string>([pit.Name, M(pit.FromAM), M(pit.FromBM), M(pit.GroundM), M(pit.BottomM)]),
                sheets["setting-out"]
            );
            Assert.Superset(
                new HashSet<string>(pit.Columns.SelectMany(column => new[] { M(column.FootM), M(column.PlinthTopM) })),
                sheets["footings"]
            );
        }

        foreach (var part in works.Rack.Steel.Groups)
        {
            Assert.Contains(part.Mark, sheets["parts"]);
            if (part.Mark[0] is 'B' or 'C' or 'D')
            {
                Assert.Superset(
                    new HashSet<string>([part.Mark, Mm(part.Shape.LongPointMm), Mm(part.Shape.ShortPointMm)]),
                    sheets["columns"]
                );
            }
        }
    }

    private static HashSet<string> Texts(DrawingSheet sheet) =>
        [.. sheet.Scene.Items.OfType<TextItem>().Select(item => item.Text)];

    private static string M(double m) => (Math.Round(m, 3) + 0.0).ToString("0.000", CultureInfo.InvariantCulture);

    private static string Mm(double mm) => Part.WholeMm(mm).ToString("0", CultureInfo.InvariantCulture);

    private IReadOnlyList<DrawingSheet> Sheets(string example) =>
        DrawingSheets.Of(packs[example].Design, packs[example].Stamp);

    private static double Number(string value) => double.Parse(value, CultureInfo.InvariantCulture);

    private static List<(int Code, string Value)> Pairs(string text)
    {
        var lines = text.TrimEnd().Split("\r\n");
        Assert.Equal(0, lines.Length % 2);
        return [.. lines.Chunk(2).Select(pair => (int.Parse(pair[0], CultureInfo.InvariantCulture), pair[1]))];
    }

    private static List<(int Code, string Value)> Between(List<(int Code, string Value)> pairs, string name, string end)
    {
        var from = pairs.IndexOf((2, name));
        return [.. pairs.Skip(from + 1).TakeWhile(pair => pair != (0, end))];
    }
}
