using Shaduf.Parts;
using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The tables of the engineer's book.</summary>
internal static class BookTables
{
    public static Table Months(Design design) =>
        new(
            [
                new("month"),
                new("sun on modules, kWh/m2/d", 1, HorizontalAnchor.Right),
                new("demand, m3/d", 1, HorizontalAnchor.Right),
                new("supply, m3/d", 1, HorizontalAnchor.Right),
                new("could be pumped, m3/d", 1, HorizontalAnchor.Right),
                new("met, %", 0.8, HorizontalAnchor.Right),
            ],
            [.. design.Months.Select(MonthRow)]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = "The promise by month",
        };

    private static TableRow MonthRow(MonthPromise month, int index) =>
        TableRow.Of(
            YearCalendarNames.Months[index],
            Invariant($"{month.SunKWhPerM2Day:0.00}"),
            Invariant($"{month.DemandM3PerDay:0.0}"),
            Invariant($"{month.SupplyM3PerDay:0.0}"),
            Invariant($"{month.PumpableM3PerDay:0.0}"),
            Invariant($"{month.MetShare * 100:0.0}")
        );

    public static Table Verdicts(Design design) =>
        new(
            [new("pump card"), new("what became of it", 3), new("cost of what differs", 1, HorizontalAnchor.Right)],
            [
                .. design.Sizing.Verdicts.Select(verdict =>
                    TableRow.Of(
                        verdict.Pump.Name,
                        verdict.Outcome,
                        verdict.Cost is { } cost ? Invariant($"{cost:#,0}") : "-"
                    )
                ),
            ]
        )
        {
            Caption = "The runners-up, and why they lost",
        };

    public static Table PartsOf(Design design, SteelLot lot)
    {
        var racks = lot.Count;
        return new(
            [
                new("mark", 0.6),
                new("part", 1.7),
                new("section"),
                new("long point, mm", 0.9, HorizontalAnchor.Right),
                new("short point, mm", 0.9, HorizontalAnchor.Right),
                new("saw, deg", 1, HorizontalAnchor.Right),
                new("pieces, mm", 1.3, HorizontalAnchor.Right),
                new("number", 0.7, HorizontalAnchor.Right),
                new("mass, kg", 0.8, HorizontalAnchor.Right),
            ],
            [
                .. lot.Steel.Groups.Select(part =>
                    TableRow.Of(
                        part.Mark,
                        part.Role,
                        part.Section.Name,
                        Invariant($"{Part.WholeMm(part.Shape.LongPointMm):0}"),
                        Invariant($"{Part.WholeMm(part.Shape.ShortPointMm):0}"),
                        Invariant($"{part.Shape.StartDeg:0.0} / {part.Shape.EndDeg:0.0}"),
                        part.PiecesMm.Count == 1
                            ? "one"
                            : string.Join(" + ", part.PiecesMm.Select(mm => Invariant($"{Part.WholeMm(mm):0}"))),
                        Invariant($"{part.Count * racks}"),
                        Invariant($"{part.MassKg * racks:0.0}")
                    )
                ),
                TableRow.Total(
                    "",
                    $"all {lot.Name}",
                    "",
                    "",
                    "",
                    "",
                    "",
                    Invariant($"{lot.Steel.Parts.Count * racks}"),
                    Invariant($"{lot.MassKg:0.0}")
                ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption =
                $"Parts of all {lot.Name}; saw angles from a square cut, start and end{StandRelease.After(design, lot)}",
        };
    }

    public static IEnumerable<Block> Findings(Design design)
    {
        yield return new Heading(1, "Findings");
        yield return new Paragraph(
            "Worst first. 'Look' means that a figure leans on an assumption or is close to its limit; 'unchecked' that the check could not be made. No finding is better than the worst figure it leans on."
        );
        yield return new Table(
            [
                new("status") { WidthMm = 18 },
                new("finding") { WidthMm = 29 },
                new("what it says", 2.6),
                new("value", 1, HorizontalAnchor.Right) { WidthMm = 13 },
                new("limit", 1, HorizontalAnchor.Right) { WidthMm = 12 },
                new("unit") { WidthMm = 10 },
                new("source; leans on", 1.4),
            ],
            [
                .. design.Findings.Select(finding =>
                    TableRow.Of(
                        finding.Status.ToString().ToUpperInvariant(),
                        finding.Id,
                        finding.Says,
                        finding.Value is { } value ? Invariant($"{value:#,0.##}") : "",
                        finding.Limit is { } limit ? Invariant($"{limit:#,0.##}") : "",
                        finding.Unit,
                        finding.LeansOn.Count == 0
                            ? finding.Source
                            : $"{finding.Source}{(finding.Source.Length > 0 ? "; " : "")}leans on {string.Join(", ", finding.LeansOn)}"
                    )
                ),
            ]
        )
        {
            SizeMm = 2.6,
        };
    }

    public static IEnumerable<Block> Workings(Design design)
    {
        yield return new Heading(1, "Workings");
        foreach (var sheet in design.Workings)
        {
            yield return new Table(
                [
                    new("", 0.7),
                    new("formula", 1.7),
                    new("numbers", 3.4),
                    new("result", 1, HorizontalAnchor.Right),
                    new("unit", 0.6),
                    new("method") { WidthMm = 31 },
                ],
                [.. sheet.Lines.Select(WorkingRow)]
            )
            {
                SizeMm = 2.6,
                Caption = sheet.Title,
            };
        }
    }

    private static TableRow WorkingRow(Line line) =>
        TableRow.Of(line.Symbol, line.Formula, line.Numbers, Invariant($"{line.Value:0.###}"), line.Unit, line.Method);

    public static IEnumerable<Block> Assumptions(Design design)
    {
        yield return new Heading(1, "What was assumed, and what was chosen");
        yield return new Table(
            [
                new("field", 1.4),
                new("taken", 1.1),
                new("how to find it out", 2.2),
                new("source", 2),
                new("best status") { WidthMm = 18 },
            ],
            [
                .. design.Survey.Assumptions.Select(each =>
                    TableRow.Of(
                        each.Field,
                        each.Taken,
                        each.HowToFind,
                        each.Source,
                        each.Best.ToString().ToUpperInvariant()
                    )
                ),
            ]
        )
        {
            SizeMm = 2.6,
            Caption = "Assumptions: the brief does not say, so the design took these",
        };
        yield return new Table(
            [new("choice", 1.2), new("chosen", 1.4), new("why", 4)],
            [.. design.Notes.Select(note => TableRow.Of(note.What, note.Chosen, note.Why))]
        )
        {
            SizeMm = 2.6,
            Caption = "Choices: the brief left these open",
        };
    }
}
