using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on the choice: what more certainty costs, what the years cost, what harder years bring.</summary>
internal static class ChoiceChapter
{
    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        yield return new Heading(1, "The choice, and what it costs over the years");
        yield return new Paragraph(
            Invariant(
                $"{design.Sizing.Tally.CandidateCount:#,0} arrangements of pump, pipes, array, tilt and tank were looked at, {design.Sizing.Tally.RunCount:#,0} of them run through the year hour by hour; the others cannot be better, which is proved on the page of the method."
            )
        );
        if (ChoiceCharts.Front(design, PicturePaper.Half) is { } front)
        {
            yield return new Figure(
                front,
                "What more certainty costs: the cheapest arrangement for each share of the demand. Where the line rises steeply, the last few per cent are dear. Cables, works at the source, fence and taps are the same for all and left out."
            );
        }

        yield return BookTables.Verdicts(design);
        yield return new Figure(
            ChoiceCharts.Sensitivity(design, new(173, 52)),
            "The chosen station in harder years, each run through the year by itself. The design year is one draw of the weather and may be a dull one itself."
        );
        yield return Harder(design);
        yield return new Figure(
            ChoiceCharts.LifeCycle(design, PicturePaper.Half),
            "What the station has cost by the end of each year, later money counted at its worth today; the steps are new pumps, drives and sets."
        );
        yield return new Paragraph(Verdict(design.LifeCycle));
        yield return LifeTable(design);
        yield return Terms(design);
    }

    private static Table Harder(Design design) =>
        new(
            [
                new("year", 1.2),
                new("what is changed", 3.4),
                new("met in the worst month, %", 1, HorizontalAnchor.Right),
                new("met over the year, %", 1, HorizontalAnchor.Right),
            ],
            [
                .. design.Sensitivity.Years.Select(year =>
                    TableRow.Of(
                        year.Name,
                        year.Says,
                        Invariant($"{year.WorstShare * 100:0.0}"),
                        Invariant($"{year.YearShare * 100:0.0}")
                    )
                ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
        };

    private static string Verdict(LifeCycle life) =>
        life switch
        {
            { Unpriced.Count: > 0 } =>
                $"The comparison with a diesel set is not made: the price book has no rate for {string.Join(", ", life.Unpriced)}.",
            { Diesel: null } =>
                "The comparison with a diesel set is not made: at its rated speed the pump lifts no water here, or no set is large enough.",
            _ => Invariant(
                $"A diesel set of {life.Set!.RatedKW:0} kW on the same pump, pipes and tank would run {life.Set.HoursPerYear:#,0} hours and burn {life.Set.FuelLPerYear:#,0} L a year at {life.Set.LoadShare * 100:0} % load{(life.Set.LoadShare < 0.3 ? ", less than the 30 % that a set should run at" : "")}. Against it, {Even(life.BreakEvenYear)} With diesel at half its price, {Even(life.BreakEvenByFuel.Half)} At one and a half times its price, {Even(life.BreakEvenByFuel.Dearer)} Prices and lives are local: put in your own before you promise anything."
            ),
        };

    private static string Even(int? year) =>
        year switch
        {
            null => "within these years solar never becomes cheaper.",
            0 => "solar is cheaper from the first day.",
            { } given => Invariant($"solar has cost no more by the end of year {given}, and stays cheaper."),
        };

    private static Table LifeTable(Design design)
    {
        var life = design.LifeCycle;
        TableRow Row(string what, Func<WayOfLifting, decimal> of, string format) =>
            TableRow.Of(
                what,
                of(life.Solar).ToString(format, System.Globalization.CultureInfo.InvariantCulture),
                life.Diesel is { } diesel
                    ? of(diesel).ToString(format, System.Globalization.CultureInfo.InvariantCulture)
                    : "-"
            );
        return new(
            [
                new(Invariant($"{life.Currency} of today"), 2.4),
                new("solar", 1, HorizontalAnchor.Right),
                new("diesel", 1, HorizontalAnchor.Right),
            ],
            [
                Row("at the start (direct cost)", way => way.Plan.Capital, "#,0"),
                Row("care each year", way => way.Plan.CarePerYear, "#,0"),
                Row("fuel each year, before it rises", way => way.Plan.FuelPerYear, "#,0"),
                Row("bought again over the years", way => way.Plan.Renewals.Sum(each => each.Amount), "#,0"),
                Row(Invariant($"all {life.YearCount} years at their worth today"), way => way.Total, "#,0"),
                Row("a cubic metre of water", way => way.PerM3, "0.00"),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = "Solar against a diesel set on the same duty",
        };
    }

    private static Table Terms(Design design) =>
        new(
            [new("what the comparison rests on"), new("figure")],
            [.. Station.LifeCycle.Terms(design.Survey).Select(term => TableRow.Of(term.What, term.Figure))]
        )
        {
            SizeMm = Lettering.SmallMm,
        };
}
