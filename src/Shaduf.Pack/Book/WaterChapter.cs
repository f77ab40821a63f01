using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on demand and supply.</summary>
internal static class WaterChapter
{
    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        yield return new Heading(1, "Water: who needs it, and when it comes");
        yield return new Paragraph(
            Invariant(
                $"The design year is {design.Survey["design-years"]:0} years ahead. Losses of {design.Survey["losses"] * 100:0} % of the water produced are in the figures of the demand, and the supply is held against them."
            )
        );
        yield return DemandTables.Uses(design);
        yield return new Figure(
            DemandCharts.Months(design, PicturePaper.Low),
            "Demand by month and use, at the place of use."
        );
        yield return DemandTables.Months(design);
        yield return new Figure(
            DemandCharts.Hours(design, PicturePaper.Low),
            $"Draw by hour and use on the mean day of {YearCalendarNames.Months[design.Demand.PeakMonth]}."
        );
        yield return BookTables.Months(design);
        yield return new Figure(
            Charts.Tank(design, PicturePaper.Low),
            "Water in the tank through the fortnight in which it stands lowest."
        );
    }
}
