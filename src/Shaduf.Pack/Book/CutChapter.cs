using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Bars to buy, and what is cut from each.</summary>
internal static class CutChapter
{
    // Bars that stand in one picture, so that it stays on a page.
    private const int BarsOfPicture = 9;

    /// <summary>The blocks.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var workshop = design.Brief.Rack.Workshop;
        yield return new Heading(2, "Bars to buy and what is cut from each");
        yield return new Paragraph(
            Invariant(
                $"Cut in the order drawn, from the left: {workshop.KerfMm:0.#} mm are lost at each cut and {workshop.EndTrimMm:0.#} mm trimmed from the ends of each bar. Lengths are along the bar from the first to the last point of a piece; where both ends lean the same way that is more than any of its edges, which the table of parts gives; 'saw 0 / 15' is the angle from a square cut at the first and at the second end as the piece lies. Slanting ends of one angle lie against each other and are parted by one cut: turn the tube over for it if the saw leans one way only. Hatched: an offcut to keep, mark it. Measure the first bar and the slot of your saw before cutting the rest. A splice is a structural change and needs its check."
            )
        );
        if (StandRelease.Before(design) is { } withheld)
        {
            yield return new Notice(FindingStatus.Unchecked, withheld);
        }

        foreach (var section in design.Takeoff.BarPlans)
        {
            var alike = section.Plan.Alike.ToList();
            var longestMm = alike.Max(each => each.Bar.Stock.LengthMm);
            foreach (var (part, i) in alike.Chunk(BarsOfPicture).Select((part, i) => (part, i)))
            {
                yield return new Figure(
                    CutBarPicture.Of(part, longestMm, PicturePaper.Full.WidthMm),
                    i == 0 ? Caption(section) : $"{section.Section.Name}, further bars"
                );
            }
        }
    }

    private static string Caption(SectionPlan section)
    {
        var plan = section.Plan;
        var bought = string.Join(
            " and ",
            section.Bought.Select(bar =>
                Invariant($"{bar.Count} {(bar.Count == 1 ? "bar" : "bars")} of {bar.LengthMm:0.#} mm")
            )
        );
        var yard = section.OffcutCount == 0 ? "" : Invariant($" and {section.OffcutCount} offcuts of the yard");
        var kept = plan.KeptOffcutsMm > 0 ? Invariant($"; {plan.KeptOffcutsMm / 1000:0.0} m of offcuts to keep") : "";
        return Invariant(
            $"{section.Section.Name}: {bought}{yard}, {CutPlans.Proof(plan)}; {plan.PartsMm / plan.StockMm * 100:0} % of the bars becomes parts{kept}. Lengths to scale, heights not."
        );
    }
}
