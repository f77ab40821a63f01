namespace Shaduf.Station.Tests;

/// <summary>Every figure and text of a design, line by line, to hold two designs against each other.</summary>
internal static class DesignText
{
    public static IReadOnlyList<string> Of(Design design) =>
        [
            .. design.Findings.Select(each =>
                FormattableString.Invariant(
                    $"{each.Id}|{each.Status}|{each.Says}|{each.Value}|{each.Limit}|{each.Unit}|{each.Source}|{string.Join(',', each.LeansOn)}"
                )
            ),
            .. design.Notes.Select(each => $"{each.What}|{each.Chosen}|{each.Why}"),
            .. design.Survey.Assumptions.Select(each => $"{each.Id}|{each.Taken}|{each.HowToFind}"),
            .. design.Workings.SelectMany(sheet =>
                sheet.Lines.Select(each =>
                    FormattableString.Invariant(
                        $"{sheet.Title}|{each.Symbol}|{each.Formula}|{each.Numbers}|{each.Value}|{each.Unit}"
                    )
                )
            ),
            .. design.Demand.Uses.Select(each => $"{each.Name}|{each.Says}"),
            .. design.Sizing.Verdicts.Select(each =>
                FormattableString.Invariant($"{each.Pump.Name}|{each.Outcome}|{each.Cost}|{each.WorstShare}")
            ),
            design.Sizing.Limit?.Says ?? "",
            .. design.Bill.Lines.Select(each =>
                FormattableString.Invariant(
                    $"{each.Code}|{each.Quantity.Item}|{each.Quantity.Description}|{each.Quantity.Quantity}|{each.Quantity.Origin}|{each.Amount}"
                )
            ),
            FormattableString.Invariant($"{design.Offer.Total}|{design.File.Prices.Date}|{design.File.Hash}"),
            .. design.Works.Electrics.Cables.SelectMany(each =>
                each.Choice.Rejected.Select(other => $"{each.Id}|{other.Option.Name}|{other.Why}")
            ),
            FormattableString.Invariant($"{design.Works.Electrics.Fuse.AboveA}|{design.Works.Electrics.Fuse.AtMostA}"),
            .. design.Works.Rack.Steel.Groups.Select(each =>
                FormattableString.Invariant(
                    $"{each.Mark}|{each.Count}|{each.Shape.LongPointMm}|{each.Shape.ShortPointMm}|{each.MassKg}"
                )
            ),
            .. design.Trace.LevelM3.Select(each => FormattableString.Invariant($"{each}")),
        ];
}
