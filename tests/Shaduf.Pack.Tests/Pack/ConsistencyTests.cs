using System.Globalization;
using System.Text;
using UglyToad.PdfPig;
using static System.FormattableString;

namespace Shaduf.Pack.Tests;

/// <summary>The same figures stand in design.json, on paper and in the spreadsheet.</summary>
public sealed class ConsistencyTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    public static TheoryData<string> Names => ExamplePacks.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Json_paper_and_spreadsheet_say_the_same(string name)
    {
        var pack = packs[name];
        var json = pack.Json;
        var book = Text(pack.Files["engineer-book.pdf"]);
        var sheet = new SpreadsheetText(pack.Files["quantities.xlsx"]);
        var summary = Enumerable
            .Range(5, sheet.Rows("Summary") - 4)
            .ToDictionary(row => sheet.Text("Summary", $"A{row}"), row => $"B{row}");
        decimal Summary(string figure) => sheet.Value("Summary", summary[figure]);

        var count = (int)json["choice"]!["moduleCount"]!;
        Assert.Equal(count, Summary("modules"));
        Assert.Contains(Invariant($"{count} x {json["choice"]!["module"]}"), book);
        Assert.Equal((int)json["choice"]!["seriesCount"]!, Summary("modules in series"));
        Assert.Equal((int)json["choice"]!["stringCount"]!, Summary("strings"));
        Assert.Equal((decimal)json["choice"]!["tankM3"]!, Summary("tank"));

        var headM = (double)json["lift"]!["headM"]!;
        Assert.InRange((double)Summary("total dynamic head") - headM, -0.0501, 0.0501);
        Assert.Contains(Invariant($"{Math.Round(headM, 1, MidpointRounding.AwayFromZero):0.0} m"), book);

        var massKg = (double)json["rack"]!["massKg"]!;
        Assert.InRange((double)Summary("steel of the racks") - massKg, -0.0501, 0.0501);
        Assert.Contains(Invariant($"steel {massKg:0.0} kg"), book);
        var partsKg = json["rack"]!["parts"]!.AsArray().Sum(part => (double)part!["massKg"]!);
        Assert.InRange(partsKg - massKg, -0.01, 0.01);

        var total = (decimal)json["money"]!["total"]!;
        Assert.Equal(total, Summary("offer, tax included"));
        Assert.Contains(Invariant($"{total:#,0.00} {json["money"]!["currency"]}"), book);
        var worst = pack.Design.Year.WorstShare;
        Assert.Equal(worst, (double)json["water"]!["worstMetShare"]!, 0.00005);
        Assert.Contains(Invariant($"{worst * 100:0.0} % of demand"), book);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_bill_worked_out_by_its_formulas_comes_to_our_total(string name)
    {
        var pack = packs[name];
        var sheet = new SpreadsheetText(pack.Files["quantities.xlsx"]);
        var rows = Enumerable.Range(5, sheet.Rows("Quantities") - 4).ToList();
        var lines = rows.Where(row =>
                sheet.Text("Quantities", $"B{row}").Length > 0 && sheet.Text("Quantities", $"D{row}").Length > 0
            )
            .ToList();
        Assert.Equal(pack.Design.Bill.Lines.Count, lines.Count);
        Assert.All(lines, row => Assert.True(sheet.HasFormula("Quantities", $"G{row}")));
        foreach (var row in rows.Where(row => sheet.Text("Quantities", $"C{row}") is "direct cost" or "offer"))
        {
            var expected =
                sheet.Text("Quantities", $"C{row}") == "offer" ? pack.Design.Offer.Total : pack.Design.Offer.Direct;
            Assert.Equal(expected, sheet.Value("Quantities", $"G{row}"));
            Assert.Equal(expected, sheet.Stored("Quantities", $"G{row}"));
        }

        Assert.Contains(rows, row => sheet.Text("Quantities", $"C{row}") == "offer");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_page_and_sheet_bears_status_revision_and_hash(string name)
    {
        var pack = packs[name];
        var sheet = new SpreadsheetText(pack.Files["quantities.xlsx"]);
        Assert.All(sheet.Names, each => Assert.Equal(pack.Stamp.Line, sheet.Text(each, "A2")));
        using var document = PdfDocument.Open(pack.Files["engineer-book.pdf"]);
        foreach (var page in document.GetPages())
        {
            Assert.Equal(595.28, page.Width, 0.2);
            Assert.Equal(841.89, page.Height, 0.2);
            var words = string.Join(' ', page.GetWords().Select(word => word.Text));
            Assert.Contains(pack.Stamp.Status, words);
            Assert.Contains($"Revision {pack.Stamp.Revision}", words);
            Assert.Contains(pack.Stamp.BriefHash, words);
            Assert.Contains(Invariant($"page {page.Number} of {document.NumberOfPages}"), words);
        }

        Assert.Contains(pack.Stamp.BriefHash, Encoding.UTF8.GetString(pack.Files["year.csv"])[..300]);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_on_a_page_overlaps_or_leaves_it(string name)
    {
        foreach (var (page, i) in packs[name].Pages.Select((page, i) => (page, i + 1)))
        {
            Assert.True(
                page.TextOverlaps().Count == 0,
                $"page {i}: "
                    + string.Join(
                        "; ",
                        page.TextOverlaps().Select(pair => $"'{pair.First.Item.Text}' over '{pair.Second.Item.Text}'")
                    )
            );
            Assert.True(
                page.TextsOutside().Count == 0,
                $"page {i}: " + string.Join("; ", page.TextsOutside().Select(box => box.Item.Text))
            );
            Assert.Empty(page.MissingCharacters());
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_first_page_holds_the_promise_the_cost_and_all_that_stops_or_is_unchecked(string name) =>
        FirstPageSaysAll(packs[name]);

    [Fact]
    public void The_first_page_holds_every_stop_of_a_bad_station_too()
    {
        var brief = ExamplePacks.Changed(
            "hilltop-village",
            ("soil: clay", "soil: expansive-clay"),
            ("testedYield: 10.5 m3/h", "testedYield: 2.5 m3/h"),
            ("transport: 85 km", "transport: 85 km\n  budget: 1000")
        );
        var pack = ExamplePacks.Make(brief);
        Assert.True(pack.Design.Findings.Count(finding => finding.Status == Working.FindingStatus.Stop) >= 3);
        FirstPageSaysAll(pack);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_year_has_8760_rows_whose_sums_are_the_promise(string name)
    {
        var pack = packs[name];
        var rows = Encoding
            .UTF8.GetString(pack.Files["year.csv"])
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(line => !line.StartsWith('#'))
            .ToList();
        Assert.Equal(
            "hour_ending,air_degC,global_w_m2,plane_w_m2,array_w,pumped_m3,demand_m3,delivered_m3,tank_m3,cells_w_m2",
            rows[0]
        );
        Assert.Equal(8760, rows.Count - 1);
        var hours = rows.Skip(1).Select(row => row.Split(',')).ToList();
        for (var month = 1; month <= 12; month++)
        {
            // An hour that ends at midnight belongs to the day before.
            var ofMonth = hours
                .Where(hour => DateTime.Parse(hour[0], CultureInfo.InvariantCulture).AddMinutes(-1).Month == month)
                .ToList();
            var days = ofMonth.Count / 24.0;
            double Mean(int column) =>
                ofMonth.Sum(hour => double.Parse(hour[column], CultureInfo.InvariantCulture)) / days;
            var promised = pack.Json["water"]!["months"]![month - 1]!;
            Assert.Equal((double)promised["demandM3PerDay"]!, Mean(6), 0.01);
            Assert.Equal((double)promised["supplyM3PerDay"]!, Mean(7), 0.01);
        }
    }

    private static void FirstPageSaysAll(ExamplePacks.Made pack)
    {
        using var document = PdfDocument.Open(pack.Files["engineer-book.pdf"]);
        var words = string.Concat(document.GetPage(1).GetWords().Select(word => word.Text));
        foreach (
            var finding in pack.Design.Findings.Where(finding =>
                finding.Status is Working.FindingStatus.Stop or Working.FindingStatus.Unchecked
            )
        )
        {
            Assert.Contains(finding.Id.Replace(" ", "", StringComparison.Ordinal), words);
        }

        Assert.Contains("Anengineermustcheckallofit", words);
        Assert.Contains(Invariant($"{pack.Design.Offer.Total:#,0.00}{pack.Design.Offer.Currency}"), words);
        Assert.Contains("demand", words);
        Assert.Contains("supply", words);
        Assert.All(new[] { "Jan", "Jun", "Dec" }, month => Assert.Contains(month, words));
    }

    private static string Text(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return string.Join(
            '\n',
            document.GetPages().Select(page => string.Join(' ', page.GetWords().Select(word => word.Text)))
        );
    }
}
