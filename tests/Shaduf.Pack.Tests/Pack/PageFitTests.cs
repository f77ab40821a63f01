using System.Text;
using Shaduf.Station;
using Shaduf.Working;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Shaduf.Pack.Tests;

/// <summary>Stations far from the examples fill the pages too, and still nothing overlaps, leaves the sheet or is lost.</summary>
public sealed class PageFitTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    private const double PointsPerMm = 72 / 25.4;

    public static TheoryData<string> Names => ExamplePacks.Names;

    public static TheoryData<string> OddNames { get; } = ["stops everywhere", "long names", "many uses and taps"];

    [Theory]
    [MemberData(nameof(OddNames))]
    public void An_odd_station_fits_its_pages(string odd)
    {
        var pack = ExamplePacks.Make(OddBrief(odd));
        Fits(pack);
        FirstPageNamesAllThatIsOpen(pack);
        EveryFootIsWhole(pack);
        Pictures_are_well_formed(pack);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pages_are_A4_to_the_tenth_of_a_millimetre_and_their_letters_travel_along(string name)
    {
        using var document = PdfDocument.Open(packs[name].Files["engineer-book.pdf"]);
        foreach (var page in document.GetPages())
        {
            Assert.Equal(210, page.Width / PointsPerMm, 0.001);
            Assert.Equal(297, page.Height / PointsPerMm, 0.001);
            Assert.NotEmpty(page.Letters);
        }

        var objects = document.Structure;
        var fonts = objects
            .CrossReferenceTable.ObjectOffsets.Keys.Select(objects.GetObject)
            .Select(each => each.Data)
            .OfType<DictionaryToken>()
            .Where(each => each.TryGet(NameToken.Type, out NameToken type) && type.Data == "FontDescriptor")
            .ToList();
        Assert.NotEmpty(fonts);
        Assert.All(
            fonts,
            font => Assert.Contains(font.Data.Keys, key => key is "FontFile" or "FontFile2" or "FontFile3")
        );
        Assert.All(document.GetPage(1).Letters, letter => Assert.Contains('+', letter.FontName!));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_picture_of_a_design_is_well_formed(string name) => Pictures_are_well_formed(packs[name]);

    [Theory]
    [MemberData(nameof(Names))]
    public void The_first_page_gives_the_promise_of_each_month(string name)
    {
        var pack = packs[name];
        var texts = pack.Pages[0].Items.OfType<TextItem>().Select(item => item.Text).ToHashSet();
        Assert.Superset(
            new HashSet<string>("Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec demand supply".Split(' ')),
            texts
        );
        var promise = pack.Json["water"]!;
        Assert.Contains(texts, text => text.StartsWith((string)promise["worstMonth"]!, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(FindingStatus.Stop)]
    [InlineData(FindingStatus.Unchecked)]
    public void The_first_page_names_all_even_when_every_finding_is_open(FindingStatus status)
    {
        var (design, stamp, _) = packs["hilltop-village"];
        var grave = design with { Findings = [.. design.Findings.Select(each => each with { Status = status })] };
        var pages = EngineerBook.Pages(grave, stamp);
        var text = Squeezed(string.Concat(pages[0].Items.OfType<TextItem>().Select(item => item.Text)));
        Assert.All(grave.Findings, finding => Assert.Contains(finding.Id, text));
        Assert.Empty(pages[0].TextOverlaps());
    }

    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static void Fits(ExamplePacks.Made pack)
    {
        foreach (var (i, page) in pack.Pages.Index())
        {
            var faults = page.TextOverlaps()
                .Select(pair => $"'{pair.First.Item.Text}' lies over '{pair.Second.Item.Text}'")
                .Concat(page.TextsOutside().Select(box => $"'{box.Item.Text}' leaves the page"))
                .Concat(page.MissingCharacters().Select(each => $"no font has '{each}'"))
                .ToList();
            Assert.True(faults.Count == 0, $"page {i + 1}: {string.Join("; ", faults)}");
        }
    }

    private static void FirstPageNamesAllThatIsOpen(ExamplePacks.Made pack)
    {
        using var document = PdfDocument.Open(pack.Files["engineer-book.pdf"]);
        var text = Squeezed(document.GetPage(1).Text);
        var open = pack
            .Design.Findings.Where(each => each.Status is FindingStatus.Stop or FindingStatus.Unchecked)
            .Select(each => each.Id)
            .ToList();
        Assert.NotEmpty(open);
        var lost = open.Where(id => !text.Contains(id, StringComparison.Ordinal)).ToList();
        Assert.True(
            lost.Count == 0,
            $"the first page leaves out {lost.Count} of {open.Count}: {string.Join(", ", lost)}"
        );
    }

    private static void EveryFootIsWhole(ExamplePacks.Made pack)
    {
        using var document = PdfDocument.Open(pack.Files["engineer-book.pdf"]);
        var foot = $"Status: {pack.Stamp.Status} · Revision {pack.Stamp.Revision} · Brief {pack.Stamp.BriefHash}";
        Assert.All(document.GetPages(), page => Assert.Contains(foot, page.Text));
    }

    private static void Pictures_are_well_formed(ExamplePacks.Made pack)
    {
        var (design, size) = (pack.Design, new PaperSize(173, 118));
        Scene[] pictures =
        [
            Charts.Water(design, size),
            DemandCharts.Months(design, size),
            DemandCharts.Hours(design, size),
            PumpChart.Of(design, size),
            ChoiceCharts.LifeCycle(design, size),
            ChoiceCharts.Sensitivity(design, size),
            Charts.Tank(design, size),
            LongSection.Of(design, size),
            StringDiagram.Of(design, 173),
            RackPlane.Of(design.Works.Rack, size),
            RackSide.Of(design.Works.Rack, design.Works.Footings, size),
            RackModelPicture.Of(design.Works.Rack, size),
            LightColumnPicture.Of(LightColumn.Of(5000, LightColumnSize.All[0]), new(1200, 1200, 1500, 0, 0), size),
            GuardPlan.Of(design.Works.Guard, design.Choice.Facing.AzimuthDeg, size),
            .. design.Works.Guard.Light is null ? [] : new[] { GuardPlan.OfLight(design.Works.Guard, size) },
            .. design.Works.Guard.Lightning.Rods.Count == 0
                ? []
                : new[] { LightningSection.Of(design.Works.Guard, design.Works.Rack, size) },
            .. pack.Pages,
        ];
        foreach (var picture in pictures)
        {
            var drawn = System.Xml.Linq.XDocument.Parse(SvgRenderer.Write(picture));
            Assert.Equal("svg", drawn.Root!.Name.LocalName);
            Assert.NotEmpty(drawn.Root.Elements());
        }
    }

    private static string OddBrief(string odd) =>
        odd switch
        {
            "stops everywhere" => ExamplePacks.Changed(
                "homestead",
                ("soil: unknown", "soil: expansive-clay"),
                ("count: 62", "count: 900"),
                ("transport: 160 km", "transport: 160 km\n  budget: 500")
            ),
            "long names" => ExamplePacks.Changed(
                "hilltop-village",
                ("name: Hilltop village", $"name: {Long("Upper and lower hilltop villages", 50)}"),
                ("place: Orelo ridge, Tavoland", $"place: {Long("Örélo ridge", 80)}"),
                ("client: Water committee of Orelo", $"client: {Long("Water committee", 80)}"),
                ("builder: Kibo and Daughters, Waterworks", $"builder: {new string('W', 80)}"),
                ("revision: A", "revision: B2"),
                ("name: school gate", $"name: {Long("school gate", 40)}"),
                ("to: school gate", $"to: {Long("school gate", 40)}"),
                ("name: clinic", $"name: {new string('W', 40)}"),
                ("to: clinic", $"to: {new string('W', 40)}")
            ),
            _ => ExamplePacks.Changed(
                "hilltop-village",
                (
                    "  points:\n",
                    "  points:\n" + Many(20, i => $"    - {{ name: tap {i}, elevation: 1250 m, flow: 0.05 L/s }}")
                ),
                (
                    "  pipes:\n",
                    "  pipes:\n"
                        + Many(20, i => $"    - {{ from: lower fork, to: tap {i}, length: 200 m, pipe: pe-40-pn16 }}")
                ),
                (
                    "  livestock:\n",
                    "  fixed:\n"
                        + Many(16, i => $"    - {{ name: workshop number {i}, water: 60 L/d }}")
                        + "  livestock:\n"
                )
            ),
        };

    // The longest text that the brief takes.
    private static string Long(string words, int longest) =>
        string.Join(' ', Enumerable.Repeat(words, longest))[..longest].Trim();

    private static string Many(int count, Func<int, string> line) =>
        Enumerable
            .Range(1, count)
            .Aggregate(new StringBuilder(), (text, i) => text.Append(line(i)).Append('\n'))
            .ToString();
}
