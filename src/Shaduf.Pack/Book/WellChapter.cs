using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The chapter on the borehole, what hangs in it and what stands on it.</summary>
internal static class WellChapter
{
    private static readonly PaperSize s_section = new(173, 150);

    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design) =>
        [
            new Heading(1, "The borehole, as tested and as built"),
            new Figure(
                BoreholeSection.Of(design, s_section).Trimmed(),
                "The borehole with its levels. The lighter water is what the pump draws down."
            ),
            .. WellTables.Tests(design),
            WellTables.Hung(design),
            WellTables.Wellhead(),
            new Heading(2, "Lowering the pump"),
            new Bullets([.. Lowering(design).Select(step => RichText.From(step))], BulletMark.Number),
            new Paragraph(
                "Nobody stands under a hung load or leans over the open borehole. Helmet, gloves, shoes; one man gives the signs. Local rules and the makers of hoist and pump come first."
            ),
        ];

    private static IReadOnlyList<string> Lowering(Design design) =>
        design.Works.Well.LoweringSteps(design.Well, design.Survey, design.Choice);
}
