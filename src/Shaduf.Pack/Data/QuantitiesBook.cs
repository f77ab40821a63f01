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

/// <summary>The spreadsheet of the pack: summary, bill with live formulas, parts, bars, months, findings, assumptions.</summary>
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
            await SummaryAsync(sheet, design);
            await BillAsync(sheet, design);
            await PartsAsync(sheet, design);
            await BarsAsync(sheet, design);
            await MonthsAsync(sheet, design);
            await FindingsAsync(sheet, design);
            await AssumptionsAsync(sheet, design);
            await book.FinishAsync();
        }

        SetPrint(stream, stamp);
        return WithFixedTimes(stream.ToArray(), stamp.Dated);
    }

    private static async Task SummaryAsync(Sheet sheet, Design design)
    {
        var choice = design.Choice;
        await sheet.StartAsync("Summary", design.Brief.Head.Name, ("figure", 34), ("value", 18), ("unit", 12));
        async Task Row(string name, double value, string unit) =>
            await sheet.RowAsync(new(name), sheet.Number(value), new(unit));
        await sheet.RowAsync(new("pump"), new(choice.Pump.Name), new(""));
        await sheet.RowAsync(new("drive"), new(choice.Drive.Name), new(""));
        await sheet.RowAsync(new("module"), new(choice.Module.Name), new(""));
        await Row("modules", choice.ModuleCount, "nr");
        await Row("modules in series", choice.SeriesCount, "nr");
        await Row("strings", choice.StringCount, "nr");
        await Row("array", Math.Round(choice.ArrayW / 1000, 3), "kWp");
        await Row("tank", choice.TankM3, "m3");
        await Row(
            "total dynamic head",
            Math.Round(choice.Lift.System.HeadM(design.ShownFlowM3PerH / 3600), 1, MidpointRounding.AwayFromZero),
            "m"
        );
        await Row("largest flow", Math.Round(design.ShownFlowM3PerH, 2), "m3/h");
        await Row("steel of the racks", Math.Round(design.Works.Rack.MassKg, 1, MidpointRounding.AwayFromZero), "kg");
        await Row("concrete", Math.Round(design.Works.Footings.ConcreteM3, 2), "m3");
        await Row("demand met in the worst month", Math.Round(design.Year.WorstShare * 100, 1), "%");
        await sheet.RowAsync(new("offer, tax included"), sheet.Money(design.Offer.Total), new(design.Offer.Currency));
    }

    private static async Task BillAsync(Sheet sheet, Design design)
    {
        await sheet.StartAsync(
            "Quantities",
            $"{design.Brief.Head.Name}: quantities, rates of {design.File.Prices.Name}, {design.File.Prices.Date}, in {design.Bill.Currency}",
            ("code", 7),
            ("item", 18),
            ("description", 46),
            ("unit", 6),
            ("quantity", 11),
            ("rate", 12),
            ("amount", 14),
            ("origin", 60)
        );
        var digits = design.Bill.MinorDigits;
        var first = sheet.NextRow;
        foreach (var section in design.Bill.Lines.GroupBy(line => line.Quantity.Section))
        {
            await sheet.RowAsync(sheet.Bold($"{(char)section.Key}"), sheet.Bold(BookTables.SectionName(section.Key)));
            foreach (var line in section)
            {
                var row = sheet.NextRow;
                await sheet.RowAsync(
                    new(line.Code),
                    new(line.Quantity.Item),
                    sheet.Text(line.Quantity.Description),
                    new(line.Quantity.Unit),
                    sheet.Number(line.Quantity.Quantity),
                    sheet.Money(line.UnitRate),
                    line.Amount is { } amount
                        ? sheet.Computed(Invariant($"ROUND(E{row}*F{row},{digits})"), amount)
                        : new("no rate"),
                    sheet.Text(line.Quantity.Origin)
                );
            }
        }

        await TotalsAsync(sheet, design, first, digits);
    }

    private static async Task TotalsAsync(Sheet sheet, Design design, int first, int digits)
    {
        var (offer, survey) = (design.Offer, design.Survey);
        var last = sheet.NextRow - 1;
        var direct = sheet.NextRow;
        async Task Row(string name, double? share, string formula, decimal value) =>
            await sheet.RowAsync(
                new(""),
                new(""),
                sheet.Bold(name),
                new(""),
                new(""),
                share is { } given ? sheet.Percent(given) : new(""),
                sheet.Computed(formula, value, isTotal: true)
            );
        await Row("direct cost", null, Invariant($"SUM(G{first}:G{last})"), offer.Direct);
        (string Name, double Share, decimal Value)[] added =
        [
            ("contingency", survey["contingency"], offer.Contingency),
            ("overhead", survey["overhead"], offer.Overhead),
            ("profit", survey["markup"], offer.Profit),
            ("tax", survey["tax"], offer.Tax),
        ];
        foreach (var (name, share, value) in added)
        {
            var row = sheet.NextRow;
            await Row(name, share, Invariant($"ROUND(SUM(G{direct}:G{row - 1})*F{row},{digits})"), value);
        }

        await Row(
            offer.Complete ? "offer" : "offer, INCOMPLETE",
            null,
            Invariant($"SUM(G{direct}:G{sheet.NextRow - 1})"),
            offer.Total
        );
    }

    private static async Task PartsAsync(Sheet sheet, Design design)
    {
        var rack = design.Works.Rack;
        var racks = rack.Grid.RackCount;
        await sheet.StartAsync(
            "Parts",
            $"{design.Brief.Head.Name}: parts of all racks",
            ("mark", 7),
            ("part", 24),
            ("section", 12),
            ("long point, mm", 14),
            ("short point, mm", 14),
            ("saw at start, deg", 14),
            ("saw at end, deg", 14),
            ("pieces, mm", 24),
            ("number", 9),
            ("mass, kg", 11)
        );
        foreach (var part in rack.Steel.Groups)
        {
            await sheet.RowAsync(
                new(part.Mark),
                new(part.Role),
                new(part.Section.Name),
                sheet.Number(Math.Round(part.Shape.LongPointMm, 1)),
                sheet.Number(Math.Round(part.Shape.ShortPointMm, 1)),
                sheet.Number(Math.Round(part.Shape.StartDeg, 1)),
                sheet.Number(Math.Round(part.Shape.EndDeg, 1)),
                new(string.Join(" + ", part.PiecesMm.Select(mm => Invariant($"{mm:0}")))),
                sheet.Number(part.Count * racks),
                sheet.Number(Math.Round(part.MassKg * racks, 2))
            );
        }

        var last = sheet.NextRow - 1;
        var mass = rack.Steel.Groups.Sum(part => Math.Round((decimal)(part.MassKg * racks), 2));
        await sheet.RowAsync(
            new(""),
            sheet.Bold("all racks"),
            new(""),
            new(""),
            new(""),
            new(""),
            new(""),
            new(""),
            new(""),
            sheet.Computed(Invariant($"SUM(J{Sheet.HeadRows + 1}:J{last})"), mass, isTotal: true)
        );
    }

    private static async Task BarsAsync(Sheet sheet, Design design)
    {
        await sheet.StartAsync(
            "Bars",
            $"{design.Brief.Head.Name}: what is cut from each bar",
            ("section", 12),
            ("bar", 6),
            ("length, mm", 11),
            ("pieces in order of cutting", 70),
            ("left over, mm", 13)
        );
        foreach (var plan in design.Takeoff.BarPlans)
        {
            foreach (var (bar, i) in plan.Plan.Bars.Select((bar, i) => (bar, i + 1)))
            {
                await sheet.RowAsync(
                    new(plan.Section.Name),
                    sheet.Number(i),
                    sheet.Number(plan.Section.BarMm),
                    sheet.Text(
                        string.Join(", ", bar.Pieces.Select(piece => Invariant($"{piece.Mark} {piece.LengthMm:0}")))
                    ),
                    sheet.Number(Math.Round(bar.RemainderMm, 1))
                );
            }
        }
    }

    private static async Task MonthsAsync(Sheet sheet, Design design)
    {
        await sheet.StartAsync(
            "Months",
            $"{design.Brief.Head.Name}: the promise by month",
            ("month", 12),
            ("sun on modules, kWh/m2/d", 16),
            ("demand, m3/d", 14),
            ("supply, m3/d", 14),
            ("could be pumped, m3/d", 16),
            ("met", 9)
        );
        foreach (var (month, i) in design.Months.Select((month, i) => (month, i)))
        {
            await sheet.RowAsync(
                new(YearCalendarNames.Months[i]),
                sheet.Number(Math.Round(month.SunKWhPerM2Day, 2)),
                sheet.Number(Math.Round(month.DemandM3PerDay, 2)),
                sheet.Number(Math.Round(month.SupplyM3PerDay, 2)),
                sheet.Number(Math.Round(month.PumpableM3PerDay, 2)),
                sheet.Percent(Math.Round(month.MetShare, 4))
            );
        }
    }

    private static async Task FindingsAsync(Sheet sheet, Design design)
    {
        await sheet.StartAsync(
            "Findings",
            $"{design.Brief.Head.Name}: findings, worst first",
            ("status", 12),
            ("finding", 24),
            ("what it says", 70),
            ("value", 11),
            ("limit", 11),
            ("unit", 8),
            ("source", 40),
            ("leans on", 30)
        );
        foreach (var finding in design.Findings)
        {
            await sheet.RowAsync(
                new(finding.Status.ToString().ToUpperInvariant()),
                new(finding.Id),
                sheet.Text(finding.Says),
                sheet.Number(Round(finding.Value)),
                sheet.Number(Round(finding.Limit)),
                new(finding.Unit),
                sheet.Text(finding.Source),
                sheet.Text(string.Join(", ", finding.LeansOn))
            );
        }
    }

    private static async Task AssumptionsAsync(Sheet sheet, Design design)
    {
        await sheet.StartAsync(
            "Assumptions",
            $"{design.Brief.Head.Name}: what was assumed",
            ("field", 26),
            ("taken", 24),
            ("how to find it out", 50),
            ("source", 50),
            ("best status", 12)
        );
        foreach (var each in design.Survey.Assumptions)
        {
            await sheet.RowAsync(
                new(each.Field),
                sheet.Text(each.Taken),
                sheet.Text(each.HowToFind),
                sheet.Text(each.Source),
                new(each.Best.ToString().ToUpperInvariant())
            );
        }
    }

    private static double? Round(double? value) => value is { } given ? Math.Round(given, 3) : null;

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
