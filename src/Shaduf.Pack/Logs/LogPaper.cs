using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The report on a log: what it tells of the station, week by week, and what is wrong in it.</summary>
internal static class LogPaper
{
    private const int MostFaults = 60;

    /// <summary>Lays the report out.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every page bears.</param>
    /// <param name="report">The log.</param>
    /// <returns>The pages in order.</returns>
    public static IReadOnlyList<Scene> Pages(Design design, Stamp stamp, LogReport report)
    {
        var style = new PageStyle(
            PaperSize.A4Upright,
            PageMargins.House,
            design.Brief.Head.Name,
            "log report",
            stamp.Mark
        );
        return Flow.Lay([.. First(design, report), .. Weeks(report), .. Faults(report)], style);
    }

    private static IEnumerable<Block> First(Design design, LogReport report)
    {
        var weeks = report.Weeks;
        yield return new Heading(1, $"{design.Brief.Head.Name}: what the log tells");
        yield return new Paragraph(
            Invariant(
                $"{Path.GetFileName(report.File)}: {report.RowCount:#,0} rows, {report.IntervalS / 60.0:0.#} min apart, {weeks.Count} weeks from {weeks[0].From:d MMMM yyyy}. Expected by {report.Basis}."
            )
        );
        foreach (var finding in report.Findings.Where(finding => finding.Status == FindingStatus.Look))
        {
            yield return new Notice(FindingStatus.Look, finding.Says);
        }

        yield return new Table(
            [new("what", 1.1), new("", 0.9), new("says", 5)],
            [
                .. report.Findings.Select(finding =>
                    TableRow.Of(
                        finding.Id["logs/".Length..],
                        finding.Status.ToString().ToLowerInvariant(),
                        finding.Says
                    )
                ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = "Findings; rules and limits stand on the method page station/logs",
        };
        if (report.Unused.Count > 0)
        {
            yield return new Paragraph($"Columns that are not used: {string.Join(", ", report.Unused)}.");
        }
    }

    private static IEnumerable<Block> Weeks(LogReport report)
    {
        yield return new Heading(1, "Week by week");
        yield return new Figure(
            Lines(report, "m3 a week", [("came", week => week.WaterM3), ("expected", week => week.ExpectedM3)], 0),
            "Water that came and that was to be expected in the same hours."
        );
        var ratios = new (string, Func<LogWeek, double?>)[]
        {
            ("array: power in the same light", week => week.ArrayRatio * 100),
            ("pump: water at the same power", week => week.PumpRatio * 100),
        }
            .Where(line => report.Weeks.Any(week => line.Item2(week) is not null))
            .ToArray();
        if (ratios.Length > 0)
        {
            yield return new Figure(
                Lines(report, "% of the design's", ratios, Lowest(report, ratios)),
                "Array and pump beside the design's."
            );
        }

        yield return new Table(
            [
                new("week from", 1.3),
                .. new[]
                {
                    "h told",
                    "m3",
                    "expected",
                    "%",
                    "array, %",
                    "pump, %",
                    "rest, m",
                    "night, L/h",
                    "stood, h",
                }.Select(name => new TableColumn(name, 1, HorizontalAnchor.Right)),
            ],
            [.. report.Weeks.Select(Row)]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = "night: loss of the tank in the quietest night; stood: the pump stood in light enough to run",
        };
    }

    // The tens below the lowest figure, so that a few per cent can be seen.
    private static double Lowest(LogReport report, IReadOnlyList<(string Name, Func<LogWeek, double?> Of)> lines) =>
        10 * Math.Floor(lines.SelectMany(line => report.Weeks.Select(line.Of)).OfType<double>().Min() / 10);

    private static TableRow Row(LogWeek week)
    {
        static string Of(double? figure, string format) =>
            figure?.ToString(format, System.Globalization.CultureInfo.InvariantCulture) ?? "-";
        return TableRow.Of(
            Invariant($"{week.From:yyyy-MM-dd}"),
            Of(week.LoggedH, "0"),
            Of(week.WaterM3, "0.0"),
            Of(week.ExpectedM3, "0.0"),
            Of(week.WaterShare * 100, "0"),
            Of(week.ArrayRatio * 100, "0.0"),
            Of(week.PumpRatio * 100, "0.0"),
            Of(week.RestM, "0.0"),
            Of(week.NightLossM3PerH * 1000, "0"),
            Of(week.StoodH, "0")
        );
    }

    private static Scene Lines(
        LogReport report,
        string unit,
        IReadOnlyList<(string Name, Func<LogWeek, double?> Of)> lines,
        double from
    )
    {
        var start = report.Weeks[0].From;
        return new LineChart(
            new(Invariant($"weeks from {start:d MMMM yyyy}")),
            new(unit) { From = from },
            [
                .. lines.Select(line => new LineSeries(
                    line.Name,
                    [
                        .. report
                            .Weeks.Where(week => line.Of(week) is not null)
                            .Select(week => new ChartPoint(
                                (week.From.DayNumber - start.DayNumber) / 7.0,
                                line.Of(week)!.Value
                            )),
                    ]
                )),
            ]
        ).ToScene(new(173, 70), unit);
    }

    private static IEnumerable<Block> Faults(LogReport report)
    {
        yield return new Heading(1, "What is wrong in the log");
        if (report.Faults.Count == 0)
        {
            yield return new Paragraph("Nothing: every line was read and counted.");
            yield break;
        }

        yield return new Table(
            [new("line", 0.8, HorizontalAnchor.Right), new("column", 0.7, HorizontalAnchor.Right), new("what", 6)],
            [
                .. report
                    .Faults.Take(MostFaults)
                    .Select(fault =>
                        TableRow.Of(
                            Invariant($"{fault.Line}"),
                            fault.Column > 0 ? Invariant($"{fault.Column}") : "",
                            fault.Says
                        )
                    ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = Invariant(
                $"{report.FaultCounts.Values.Sum():#,0} faults; the first of each kind stand here, columns as numbered in the heading"
            ),
        };
    }
}
