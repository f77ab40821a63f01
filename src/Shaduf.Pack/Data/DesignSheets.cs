using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The sheets beside the bill.</summary>
internal static class DesignSheets
{
    /// <summary>Writes summary, and what comes before the bill.</summary>
    /// <param name="sheet">The spreadsheet.</param>
    /// <param name="design">The design.</param>
    public static async Task SummaryAsync(Sheet sheet, Design design)
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
        if (design.Works.Stand is { } stands)
        {
            await Row("steel of the stands", Math.Round(stands.MassKg, 1, MidpointRounding.AwayFromZero), "kg");
        }

        await Row("concrete", Math.Round(design.Works.Footings.ConcreteM3, 2), "m3");
        await Row("demand met in the worst month", Math.Round(design.Year.WorstShare * 100, 1), "%");
        await sheet.RowAsync(new("offer, tax included"), sheet.Money(design.Offer.Total), new(design.Offer.Currency));
    }

    /// <summary>Writes parts, bars, months, findings and assumptions.</summary>
    /// <param name="sheet">The spreadsheet.</param>
    /// <param name="design">The design.</param>
    public static async Task RestAsync(Sheet sheet, Design design)
    {
        await PartsAsync(sheet, design);
        await BarsAsync(sheet, design);
        await MonthsAsync(sheet, design);
        await FindingsAsync(sheet, design);
        await AssumptionsAsync(sheet, design);
    }

    private static async Task PartsAsync(Sheet sheet, Design design)
    {
        await sheet.StartAsync(
            "Parts",
            $"{design.Brief.Head.Name}: parts of all steel",
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
        var groups = design
            .Works.SawnLots.SelectMany(lot => lot.Steel.Groups.Select(part => (part, lot.Count)))
            .ToList();
        foreach (var (part, racks) in groups)
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
        var mass = groups.Sum(each => Math.Round((decimal)(each.part.MassKg * each.Count), 2));
        await sheet.RowAsync(
            new(""),
            sheet.Bold("all of them"),
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
                    sheet.Number(bar.Stock.LengthMm),
                    sheet.Text(
                        string.Join(
                            ", ",
                            bar.Pieces.Select(piece =>
                                Invariant($"{StandRelease.Told(design, piece.Mark)} {piece.LengthMm:0}")
                            )
                        )
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
}
