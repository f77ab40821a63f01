using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The chapter on the borehole, what hangs in it and what stands on it.</summary>
internal static class WellChapter
{
    private static readonly PaperSize s_section = new(173, 150);

    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <param name="build">The equipment of the borehole.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design, WellBuild build) =>
        [
            new Heading(1, "The borehole, as tested and as built"),
            new Figure(
                BoreholeSection.Of(design, build.Well, s_section).Trimmed(),
                "The borehole with its levels. The lighter water is what the pump draws down."
            ),
            .. WellTables.Tests(design, build.Well),
            WellTables.Hung(design, build),
            WellTables.Fittings(SourceFitting.OfWellhead, "The wellhead, in the direction of the flow"),
            new Heading(2, "Lowering the pump"),
            new Bullets([.. build.LoweringSteps(design.Choice).Select(step => RichText.From(step))], BulletMark.Number),
            new Paragraph(
                "Nobody stands under a hung load or leans over the open borehole. Helmet, gloves, shoes; one man gives the signs. Local rules and the makers of hoist and pump come first."
            ),
        ];
}
