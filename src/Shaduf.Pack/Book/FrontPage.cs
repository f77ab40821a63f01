using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The first page: what was chosen, the promise, the cost, and all that stops or is unchecked.</summary>
internal static class FrontPage
{
    public static IEnumerable<Block> Blocks(Design design)
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
        foreach (var block in Open(design))
        {
            yield return block;
        }
    }

    private static string[] PlaceAndPeople(BriefHead head) =>
        [
            head.Place,
            head.Client.Length > 0 ? $"for {head.Client}" : "",
            head.Builder.Length > 0 ? $"by {head.Builder}" : "",
        ];

    // Stops in full; what is unchecked in one short line each, in two columns, so that all of it stands on this page.
    private static IEnumerable<Block> Open(Design design)
    {
        var stops = design.Findings.Where(finding => finding.Status == FindingStatus.Stop).ToList();
        if (stops.Count > 0)
        {
            yield return new Table(
                [new("status") { WidthMm = 17 }, new("finding") { WidthMm = 36 }, new("what it says")],
                [.. stops.Select(finding => TableRow.Of("STOP", finding.Id, Says(finding)))]
            )
            {
                SizeMm = 2.6,
            };
        }

        var open = design.Findings.Where(finding => finding.Status == FindingStatus.Unchecked).ToList();
        var half = (open.Count + 1) / 2;
        if (open.Count > 0)
        {
            yield return new Columns([new(1, [List(open.Take(half))]), new(1, [List(open.Skip(half))])]);
        }
        else if (stops.Count == 0)
        {
            yield return new Paragraph("None.");
        }
    }

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
            "The strength of steel, welds and footings is NOT checked in this version: columns, frame, module holding, uplift and overturning in the wind. An engineer must check them before anything is cut or dug."
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
                TableRow.Of(
                    "racks",
                    Invariant(
                        $"{choice.Grid.RackCount} of {choice.Grid.Rows} x {choice.Grid.Columns}, steel {design.Works.Rack.MassKg:0.0} kg"
                    )
                ),
                TableRow.Of("main", Invariant($"{choice.Lift.Main.Name}, {choice.Lift.MainM:0} m")),
                TableRow.Of("tank", Invariant($"{choice.TankM3:0.#} m3 ({choice.TankCount} x {choice.Tank.Name})")),
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
