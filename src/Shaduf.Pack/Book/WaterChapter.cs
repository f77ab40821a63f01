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
        yield return new Table(
            [new("use"), new("how it was counted", 2.2), new("most in a month, m3/d", 0.9, HorizontalAnchor.Right)],
            [
                .. design.Demand.Uses.Select(use =>
                    TableRow.Of(use.Name, use.Says, Invariant($"{use.M3PerDay.Max():0.00}"))
                ),
            ]
        )
        {
            Caption = "Uses, at the place of use",
        };
        yield return new Figure(
            Charts.Demand(design, PicturePaper.Low),
            "Demand by month and use, at the place of use."
        );
        yield return BookTables.Months(design);
        yield return new Figure(
            Charts.Tank(design, PicturePaper.Low),
            "Water in the tank through the fortnight in which it stands lowest."
        );
    }
}
