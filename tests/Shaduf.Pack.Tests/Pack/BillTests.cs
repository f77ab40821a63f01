using System.Globalization;
using System.IO.Compression;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using MiniExcelLibs;

namespace Shaduf.Pack.Tests;

/// <summary>The spreadsheet as another program reads it, line by line against design.json.</summary>
public sealed class BillTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    public static TheoryData<string> Names => ExamplePacks.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_line_and_each_addition_comes_to_our_amount(string name)
    {
        var pack = packs[name];
        var sheet = new SpreadsheetText(pack.Files["quantities.xlsx"]);
        var rows = Enumerable.Range(5, sheet.Rows("Quantities") - 4).ToList();
        foreach (var line in pack.Json["quantities"]!.AsArray())
        {
            var row = rows.Single(each =>
                sheet.Text("Quantities", $"A{each}") == (string)line!["code"]!
                && sheet.Text("Quantities", $"D{each}").Length > 0
            );
            Assert.Equal((string)line!["item"]!, sheet.Text("Quantities", $"B{row}"));
            Assert.Equal((string)line["unit"]!, sheet.Text("Quantities", $"D{row}"));
            Assert.Equal((decimal)line["quantity"]!, sheet.Stored("Quantities", $"E{row}"));
            Assert.Equal((decimal)line["rate"]!, sheet.Stored("Quantities", $"F{row}"));
            Assert.Equal((decimal)line["amount"]!, sheet.Value("Quantities", $"G{row}"));
            Assert.Equal((decimal)line["amount"]!, sheet.Stored("Quantities", $"G{row}"));
        }

        var money = pack.Json["money"]!;
        (string Name, string Field)[] additions =
        [
            ("direct cost", "direct"),
            ("preliminaries", "preliminaries"),
            ("contingency", "contingency"),
            ("overhead", "overhead"),
            ("profit", "profit"),
            .. (decimal)money["provisional"]! > 0
                ? [("provisional sums", "provisional")]
                : Array.Empty<(string, string)>(),
            ("tax", "tax"),
            ("offer", "total"),
        ];
        foreach (var (text, field) in additions)
        {
            var row = rows.Single(each => sheet.Text("Quantities", $"C{each}") == text);
            Assert.True(sheet.HasFormula("Quantities", $"G{row}"));
            Assert.Equal((decimal)money[field]!, sheet.Value("Quantities", $"G{row}"));
            Assert.Equal((decimal)money[field]!, sheet.Stored("Quantities", $"G{row}"));
        }

        Assert.Equal((decimal)money["total"]!, additions[..^1].Sum(each => (decimal)money[each.Field]!));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_offers_prices_stand_in_the_spreadsheet_as_formulas(string name)
    {
        var pack = packs[name];
        var sheet = new SpreadsheetText(pack.Files["quantities.xlsx"]);
        var row = Sheet.HeadRows + 1;
        foreach (var line in OfferPaper.Lines(pack.Design))
        {
            Assert.Equal(line.Name, sheet.Text("Offer", $"A{row}"));
            Assert.True(sheet.HasFormula("Offer", $"C{row}"));
            Assert.Equal(line.Price, sheet.Stored("Offer", $"C{row}"));
            row++;
        }

        Assert.Equal(pack.Design.Offer.Total, sheet.Stored("Offer", $"C{row + 1}"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Another_reader_finds_the_same_figures(string name)
    {
        var pack = packs[name];
        var json = pack.Json;
        var summary = Rows(pack, "Summary").ToDictionary(row => Text(row["A"]), row => row["B"]);
        Assert.Equal((string)json["choice"]!["pump"]!, Text(summary["pump"]));
        Assert.Equal((string)json["choice"]!["drive"]!, Text(summary["drive"]));
        Assert.Equal((string)json["choice"]!["module"]!, Text(summary["module"]));
        Assert.Equal((double)json["choice"]!["moduleCount"]!, Figure(summary["modules"]));
        Assert.Equal((double)json["choice"]!["tankM3"]!, Figure(summary["tank"]), 1e-9);
        Assert.Equal((double)json["rack"]!["massKg"]!, Figure(summary["steel of the racks"]), 0.0501);
        Assert.Equal((double)json["money"]!["total"]!, Figure(summary["offer, tax included"]), 1e-9);
        Assert.Equal(
            (double)json["water"]!["worstMetShare"]! * 100,
            Figure(summary["demand met in the worst month"]),
            0.0551
        );

        var months = Rows(pack, "Months").ToList();
        Assert.Equal(12, months.Count);
        foreach (var (month, row) in json["water"]!["months"]!.AsArray().Zip(months))
        {
            Assert.Equal((string)month!["month"]!, Text(row["A"]));
            Assert.Equal((double)month["demandM3PerDay"]!, Figure(row["C"]), 0.0051);
            Assert.Equal((double)month["supplyM3PerDay"]!, Figure(row["D"]), 0.0051);
        }

        // Months may come out alike in the sheet's tenths of a per cent.
        var worst = months.Min(row => Figure(row["F"]));
        Assert.Contains(
            (string)json["water"]!["worstMonth"]!,
            months.Where(row => Figure(row["F"]) == worst).Select(row => Text(row["A"]))
        );
        Assert.Equal(
            json["findings"]!.AsArray().Select(each => (string)each!["id"]!),
            Rows(pack, "Findings").Select(row => Text(row["B"]))
        );
        Assert.Equal(
            json["assumptions"]!.AsArray().Select(each => (string)each!["field"]!),
            Rows(pack, "Assumptions").Select(row => Text(row["A"]))
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Parts_in_the_spreadsheet_are_those_of_the_design(string name)
    {
        var pack = packs[name];
        var rows = Rows(pack, "Parts").ToList();
        var ofStand = pack.Json["stand"]?["parts"]?.AsArray() ?? [];
        var ofFence = pack.Json["guard"]!["fence"]?["parts"]?.AsArray() ?? [];
        var ofPoles = pack.Json["guard"]!["poleParts"]!.AsArray();
        var parts = pack.Json["rack"]!["parts"]!.AsArray().Concat(ofStand).Concat(ofPoles).Concat(ofFence).ToList();
        Assert.Equal(parts.Count + 1, rows.Count);
        foreach (var (part, row) in parts.Zip(rows))
        {
            Assert.Equal((string)part!["mark"]!, Text(row["A"]));
            Assert.Equal((string)part["section"]!, Text(row["C"]));
            Assert.Equal((double)part["lengthMm"]!, Figure(row["D"]), 0.0501);
            Assert.Equal((double)part["count"]!, Figure(row["I"]));
            Assert.Equal((double)part["massKg"]!, Figure(row["J"]), 0.00501);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_printed_sheet_bears_the_stamp_at_its_foot(string name)
    {
        var pack = packs[name];
        using var archive = new ZipArchive(new MemoryStream(pack.Files["quantities.xlsx"]));
        var sheets = archive
            .Entries.Where(entry => entry.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal))
            .ToList();
        Assert.True(sheets.Count >= 6);
        foreach (var entry in sheets)
        {
            using var stream = entry.Open();
            var foot = XDocument.Load(stream).Descendants().Single(each => each.Name.LocalName == "oddFooter").Value;
            Assert.Contains(pack.Stamp.Line, foot);
        }
    }

    private static IEnumerable<IDictionary<string, object?>> Rows(ExamplePacks.Made pack, string sheet) =>
        new MemoryStream(pack.Files["quantities.xlsx"])
            .Query(sheetName: sheet)
            .Cast<IDictionary<string, object?>>()
            .Skip(4)
            .ToList();

    private static string Text(object? cell) => Convert.ToString(cell, CultureInfo.InvariantCulture) ?? "";

    private static double Figure(object? cell) => Convert.ToDouble(cell, CultureInfo.InvariantCulture);
}
