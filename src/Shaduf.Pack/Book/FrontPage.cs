using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The first page: what was chosen, the promise, the cost, and all that stops or is unchecked.</summary>
internal static class FrontPage
{
    // At length while that fits one page; else what is unchecked, and at last what stops too, by name alone: the first
    // page must hold all of it, and the findings tell the rest.
    public static IReadOnlyList<Block> Blocks(Design design, PageStyle style)
    {
        IReadOnlyList<Block> Told(bool areStopsFull, bool areUncheckedFull) =>
            [.. Top(design), .. Stops(design, areStopsFull), .. Unchecked(design, areUncheckedFull)];
        var full = Told(areStopsFull: true, areUncheckedFull: true);
        var shorter = Told(areStopsFull: true, areUncheckedFull: false);
        return IsOnePage(full) ? full
            : IsOnePage(shorter) ? shorter
            : Told(areStopsFull: false, areUncheckedFull: false);
        bool IsOnePage(IReadOnlyList<Block> blocks) => Flow.Lay(blocks, style).Count == 1;
    }

    private static IEnumerable<Block> Top(Design design)
    {
        var head = design.Brief.Head;
        yield return new Heading(1, head.Name);
        yield return new Paragraph(string.Join("; ", PlaceAndPeople(head).Where(text => text.Length > 0)));
        foreach (var notice in Notices(design))
        {
            yield return notice;
        }

        yield return new Columns([new(1, [Chosen(design)]), new(1, [Promise(design)])]);
        yield return new Figure(
            Charts.Water(design, new(173, 52)),
            "The water promised by month against the demand in the design year."
        );
        yield return new Heading(3, "Stop and unchecked");
    }

    private static string[] PlaceAndPeople(BriefHead head) =>
        [
            head.Place,
            head.Client.Length > 0 ? $"for {head.Client}" : "",
            head.Builder.Length > 0 ? $"by {head.Builder}" : "",
        ];

    private static IEnumerable<Block> Stops(Design design, bool isFull)
    {
        List<(string Status, List<Finding> Findings)> told =
        [
            ("STOP", With(design, FindingStatus.Stop)),
            ("ENGINEER", [.. design.Findings.Where(finding => finding.IsHandedOver)]),
        ];
        told.RemoveAll(each => each.Findings.Count == 0);
        if (told.Count > 0 && isFull)
        {
            yield return new Table(
                [new("status") { WidthMm = 19 }, new("finding") { WidthMm = 36 }, new("what it says")],
                [
                    .. from each in told
                    from finding in each.Findings
                    select TableRow.Of(each.Status, finding.Id, Says(finding)),
                ]
            )
            {
                SizeMm = 2.6,
            };
        }
        else if (told.Count > 0)
        {
            foreach (var (status, findings) in told)
            {
                yield return Names(status, findings);
            }
        }
        else if (With(design, FindingStatus.Unchecked).Count == 0)
        {
            yield return new Paragraph("None.");
        }
    }

    private static IEnumerable<Block> Unchecked(Design design, bool isFull)
    {
        var open = With(design, FindingStatus.Unchecked).FindAll(finding => !finding.IsHandedOver);
        var half = (open.Count + 1) / 2;
        if (open.Count > 0)
        {
            yield return isFull
                ? new Columns([new(1, [List(open.Take(half))]), new(1, [List(open.Skip(half))])])
                : Names("UNCHECKED", open);
        }
    }

    private static List<Finding> With(Design design, FindingStatus status) =>
        [.. design.Findings.Where(finding => finding.Status == status)];

    private static Paragraph Names(string status, List<Finding> findings) =>
        new(
            RichText.Marked(
                $"**{status}:** {string.Join(", ", findings.Select(finding => finding.Id))}. What each says stands under Findings."
            )
        )
        {
            SizeMm = 2.6,
        };

    private static Table List(IEnumerable<Finding> findings) =>
        new(
            [new("status") { WidthMm = 17 }, new("what is not checked")],
            [.. findings.Select(finding => TableRow.Of("UNCHECKED", Short(finding)))]
        )
        {
            SizeMm = 2.4,
        };

    private static string Short(Finding finding) => $"{finding.Id}: {finding.Says.Split(':', ';', '(')[0].Trim()}";

    private static IEnumerable<Block> Notices(Design design)
    {
        var stops = design.Findings.Count(finding => finding.Status == FindingStatus.Stop);
        if (stops > 0)
        {
            yield return new Notice(
                FindingStatus.Stop,
                Invariant($"{stops} findings stop this design: do not build it as it stands. They are listed below.")
            );
        }

        yield return new Notice(
            FindingStatus.Unchecked,
            "Steel, welds, blocks in the ground, stands under tanks, masts and light columns are checked by the rules named in the findings. An engineer must check all of it before anything is cut or dug."
        );
    }

    private static Table Chosen(Design design)
    {
        var choice = design.Choice;
        return new(
            [new("chosen"), new("", 2.3)],
            [
                TableRow.Of("pump", choice.Pump.Name),
                TableRow.Of("drive", choice.Drive.Name),
                TableRow.Of("array", ArrayText(choice)),
                TableRow.Of(
                    "facing",
                    Invariant($"tilt {design.Sky.Facing.TiltDeg:0} deg, azimuth {design.Sky.Facing.AzimuthDeg:0} deg")
                ),
                TableRow.Of("racks", RackTables.RacksText(choice.Grid)),
                TableRow.Of("steel", Invariant($"{design.Works.Rack.MassKg:0.0} kg")),
                TableRow.Of("main", Invariant($"{choice.Lift.Lay.Name}, {choice.Lift.MainM:0} m")),
                TableRow.Of(
                    "tank",
                    Invariant($"{choice.TankM3:0.#} m3 ({choice.TankCount} x {choice.Tank.Name})")
                        + (
                            design.Works.Stand is { } stands
                                ? Invariant(
                                    $", on {stands.Stand.Plan.LegCount} legs, its floor at {stands.Stand.Plan.FloorMm / 1000:0.0} m"
                                )
                                : ""
                        )
                ),
            ]
        );
    }

    private static string ArrayText(Choice choice) =>
        Invariant(
            $"{choice.ModuleCount} x {choice.Module.Name} ({choice.SeriesCount} in series, {choice.StringCount} {(choice.StringCount == 1 ? "string" : "strings")}), {choice.ArrayW / 1000:0.00} kWp"
        );

    private static Table Promise(Design design)
    {
        var year = design.Year;
        var offer = design.Offer;
        return new(
            [new("figure"), new("", 1.5, HorizontalAnchor.Right)],
            [
                TableRow.Of(
                    "worst month",
                    Invariant($"{YearCalendarNames.Months[year.WorstMonth]}: {year.WorstShare * 100:0.0} % of demand")
                ),
                TableRow.Of(
                    "longest time short of water",
                    Invariant($"{design.Trace.LongestShortageH(design.Demand.HourM3)} h in the year run")
                ),
                TableRow.Of("demand, largest month", Invariant($"{design.Demand.M3PerDay.Max():0.0} m3/d")),
                TableRow.Of("largest flow", Invariant($"{design.Sizing.Table.FullFlowM3PerH:0.00} m3/h")),
                TableRow.Of(
                    "total dynamic head",
                    Invariant($"{design.Choice.Lift.System.HeadM(design.ShownFlowM3PerH / 3600):0.0} m")
                ),
                TableRow.Of("direct cost", Invariant($"{offer.Direct:#,0.00} {offer.Currency}")),
                TableRow.Total("offer, tax included", Invariant($"{offer.Total:#,0.00} {offer.Currency}")),
                TableRow.Of("prices", PricesText(design)),
            ]
        );
    }

    private static string PricesText(Design design) =>
        design.Offer.Complete
            ? design.File.Prices.Name
            : Invariant($"INCOMPLETE: {design.Offer.Unpriced.Count} items without a rate");

    internal static string Says(Finding finding)
    {
        var figures = (finding.Value, finding.Limit) switch
        {
            ({ } value, { } limit) => Invariant($" ({value:0.##} against {limit:0.##} {finding.Unit})"),
            ({ } value, null) => Invariant($" ({value:0.##} {finding.Unit})"),
            _ => "",
        };
        return finding.Says + figures.Replace(" )", ")", StringComparison.Ordinal);
    }
}
