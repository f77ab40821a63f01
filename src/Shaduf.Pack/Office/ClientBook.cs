using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The client's book: what stands there, the water by month, how it is run and kept.</summary>
internal static class ClientBook
{
    /// <summary>Lays the book out.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">What every page bears.</param>
    /// <returns>The pages in order.</returns>
    public static IReadOnlyList<Scene> Pages(Design design, Stamp stamp)
    {
        var style = new PageStyle(
            PaperSize.A4Upright,
            PageMargins.House,
            design.Brief.Head.Name,
            "client's book",
            stamp.Mark
        );
        return Flow.Lay(
            [.. First(design), new PageBreak(), .. CareChapter.Blocks(design), .. Certificate(design)],
            style
        );
    }

    // On a sheet of its own: it is signed and copied.
    private static IEnumerable<Block> Certificate(Design design) =>
        design.Proof is null ? [] : [new PageBreak(), .. ProofChapter.Certificate(design)];

    private static IEnumerable<Block> First(Design design)
    {
        var (head, choice) = (design.Brief.Head, design.Choice);
        yield return new Heading(1, head.Name);
        yield return new Paragraph(
            string.Join("; ", new[] { head.Place, head.Client, head.Builder }.Where(text => text.Length > 0))
        );
        foreach (var notice in Standing.Notices(design, isForClient: true).Concat(Standing.Measured(design)))
        {
            yield return notice;
        }

        yield return new Heading(2, "What you get");
        yield return new Paragraph(
            Invariant(
                $"A pump driven by {choice.ModuleCount} solar modules lifts water into a tank of {choice.TankM3:0.#} m3. It needs no fuel and nobody to switch it. In the worst month, {YearCalendarNames.Months[design.Year.WorstMonth]}, it meets {design.Year.WorstShare * 100:0} % of what was asked for."
            )
        );
        yield return new Figure(
            Charts.Water(design, new(173, 60)),
            "Water by month: what is asked for, what you receive, and what could be pumped with a larger tank."
        );
        yield return new Table(
            [
                new("month", 1.4),
                new("you need, m3 a day", 1, HorizontalAnchor.Right),
                new("you receive, m3 a day", 1, HorizontalAnchor.Right),
                new("part of the need", 1, HorizontalAnchor.Right),
            ],
            [
                .. design.Months.Select(
                    (month, i) =>
                        TableRow.Of(
                            YearCalendarNames.Months[i],
                            Invariant($"{month.DemandM3PerDay:0.0}"),
                            Invariant($"{month.SupplyM3PerDay:0.0}"),
                            Invariant($"{month.MetShare * 100:0} %")
                        )
                ),
            ]
        );
    }
}
