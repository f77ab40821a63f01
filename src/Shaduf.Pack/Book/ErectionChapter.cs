using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on the days from open pits to concrete that holds.</summary>
internal static class ErectionChapter
{
    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order; none where the method ends.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        if (design.Works.Erection is not { } erection)
        {
            yield break;
        }

        yield return new Heading(1, "Before the concrete sets");
        yield return new Paragraph(
            "A frame over open pits is held by ropes and props alone, and more frames are lost and people hurt in these days than in all the years after. One person commands; the others do not begin a step before the one above it is ticked."
        )
        {
            KeepsWithNext = true,
        };
        yield return new Figure(
            ErectionPicture.Of(erection, PicturePaper.Full).Trimmed(),
            "The frame on its props over its open pits, held upright by ropes, seen along the row. Props likewise at every column line; ropes along the row likewise, at both ends."
        );
        yield return new Heading(2, "Steps and points at which work is held");
        yield return new Bullets([.. erection.Work.Select(step => (RichText)step)], BulletMark.CheckBox);
        yield return Days(erection.Steps, erection.AirDegC);
        yield return new Paragraph(
            "Blended and unknown cement is taken: it sets slowly. Days are counted from casting, by the month's mean air; a cold week in it asks for more. Concrete that froze in its first days is lost."
        );
    }

    /// <summary>How long each step waits for the concrete, by the month of casting.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="airDegC">Mean air of the twelve months [°C].</param>
    public static Table Days(IReadOnlyList<CureStep> steps, IReadOnlyList<double> airDegC) =>
        new(
            [
                new("days from casting until", 3.2),
                new("strength", 0.9, HorizontalAnchor.Right),
                .. YearCalendarNames.Months.Select(month => new TableColumn(month[..3], 0.55, HorizontalAnchor.Right)),
            ],
            [
                .. steps.Select(step =>
                    TableRow.Of([
                        step.Name,
                        Invariant($"{step.StrengthShare:0.00}"),
                        .. airDegC.Select(air => step.DaysAt(air) is { } days ? Invariant($"{days:0}") : "-"),
                    ])
                ),
            ]
        )
        {
            Caption = "How long to wait; a dash: too cold to cast",
        };
}
