using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on when what is done.</summary>
internal static class ProgrammeChapter
{
    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var programme = design.Programme;
        var added = programme.Levelled.Added / programme.Site.DayWork;
        yield return new Heading(1, "Programme");
        yield return new Paragraph(
            Invariant(
                $"With {programme.PeopleCount} people on site the station is handed over on {programme.Finish:d MMMM yyyy}, {(programme.Finish - programme.Start).TotalDays:0} days after work may begin on {programme.Start:d MMMM yyyy}. "
            )
                + (
                    added >= 0.5
                        ? Invariant(
                            $"More people would save up to {added:0.#} working days: that is how long work waits for hands. "
                        )
                        : "More people would not make it earlier. "
                )
                + "Dark bars are critical: a day lost there is a day lost at the end. Holds are points at which work stops until somebody has looked and signed. Durations are planning figures; concrete and paint take their days also over days of rest, and no hurry shortens them."
        )
        {
            KeepsWithNext = true,
        };
        yield return new Figure(
            ProgrammeChart.Of(programme, 173),
            "What is done when, by weeks from the day on which work may begin; below, people at work."
        );
        if (CashChart.Of(design, new(173, 62)) is { } cash)
        {
            yield return new Figure(
                cash,
                Invariant(
                    $"Money over the time of the works: costs spread over their activities, the client's stages less tax. Lowest balance {design.Office.Cash.Lowest?.Balance:#,0} {design.Offer.Currency}."
                )
            );
        }

        if (design.Office.Forecast is { } forecast)
        {
            yield return new Heading(2, "What has happened, and the rest of it");
            yield return new Paragraph(
                Invariant(
                    $"By the report of {design.Brief.Progress!.On:d MMMM yyyy} the station is handed over on {forecast.Finish:d MMMM yyyy}; planned was {programme.Finish:d MMMM yyyy}."
                )
            )
            {
                KeepsWithNext = true,
            };
            yield return new Figure(
                ProgrammeChart.Of(forecast, 173),
                "As built so far, and the rest from the day of the report."
            );
        }

        yield return new Table(
            [
                new("activity", 4),
                new("start", 1.4),
                new("end", 1.4),
                new("may slip, days", 1.1, HorizontalAnchor.Right),
                new("takes", 3),
            ],
            [.. programme.Activities.Select(each => TableRow.Of(Cells(programme, each)))]
        );
    }

    private static string[] Cells(StationProgramme programme, PlannedActivity each) =>
        [
            each.Timing.Activity.Name,
            Invariant($"{each.Place.Start:ddd d MMM}"),
            Invariant($"{each.Place.Finish:ddd d MMM}"),
            each.Timing.IsCritical ? "critical" : Invariant($"{each.Timing.TotalFloat / programme.Site.DayWork:0.#}"),
            each.Basis,
        ];
}
