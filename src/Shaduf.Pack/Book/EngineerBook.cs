using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The engineer's book: calculation sheets, findings, assumptions, sources, method and tests.</summary>
public static class EngineerBook
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
            "engineer's book",
            stamp.Mark
        );
        return Flow.Lay(
            [
                .. FrontPage.Blocks(design, style),
                new PageBreak(),
                .. WaterChapter.Blocks(design),
                new ChapterBreak(),
                .. WeatherChapter.Blocks(design),
                new ChapterBreak(),
                .. SkyChapter.Blocks(design),
                new ChapterBreak(),
                .. SourceChapter.Blocks(design),
                new ChapterBreak(),
                .. AtTheSource(design),
                new ChapterBreak(),
                .. PipeChapter.Blocks(design),
                new ChapterBreak(),
                .. ChoiceChapter.Blocks(design),
                new ChapterBreak(),
                .. EnergyChapter.Blocks(design),
                new ChapterBreak(),
                .. ElectricsChapter.Blocks(design),
                new ChapterBreak(),
                .. GuardChapter.Blocks(design),
                new ChapterBreak(),
                .. RackChapter.Blocks(design),
                .. StrengthChapter.Blocks(design),
                .. ErectionChapter.Blocks(design),
                .. StandChapter.Blocks(design),
                .. RackChapter.Parts(design),
                new ChapterBreak(),
                .. BillTables.Quantities(design),
                new ChapterBreak(),
                .. ProgrammeChapter.Blocks(design),
                new ChapterBreak(),
                .. MethodChapter.Blocks(design),
                new ChapterBreak(),
                .. ProofChapter.Sheets(design),
                .. ProofChapter.Certificate(design),
                new ChapterBreak(),
                .. BookTables.Findings(design),
                new ChapterBreak(),
                .. BookTables.Workings(design),
                new ChapterBreak(),
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
