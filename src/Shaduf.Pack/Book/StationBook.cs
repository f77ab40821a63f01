using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The station book: the design on paper, for builder, engineer and client.</summary>
public static class StationBook
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
            "station book",
            stamp.Mark
        );
        return Flow.Lay(
            [
                .. FrontPage.Blocks(design, style),
                new PageBreak(),
                .. WaterChapter.Blocks(design),
                new PageBreak(),
                .. WeatherChapter.Blocks(design),
                new PageBreak(),
                .. SkyChapter.Blocks(design),
                new PageBreak(),
                .. SourceChapter.Blocks(design),
                new PageBreak(),
                .. AtTheSource(design),
                new PageBreak(),
                .. PipeChapter.Blocks(design),
                new PageBreak(),
                .. ChoiceChapter.Blocks(design),
                new PageBreak(),
                .. EnergyChapter.Blocks(design),
                new PageBreak(),
                .. ElectricsChapter.Blocks(design),
                new PageBreak(),
                .. GuardChapter.Blocks(design),
                new PageBreak(),
                .. RackChapter.Blocks(design),
                .. RackChapter.Parts(design),
                new PageBreak(),
                .. BillTables.Quantities(design),
                new PageBreak(),
                .. BookTables.Findings(design),
                new PageBreak(),
                .. BookTables.Workings(design),
                new PageBreak(),
                .. BookTables.Assumptions(design),
                .. Cautions.Blocks(),
            ],
            style
        );
    }

    private static IEnumerable<Block> AtTheSource(Design design) =>
        design.Works.Source switch
        {
            WellBuild well => WellChapter.Blocks(design, well),
            IntakeBuild intake => IntakeChapter.Blocks(design, intake),
            _ => throw new InvalidOperationException("a kind of source without a chapter"),
        };
}
