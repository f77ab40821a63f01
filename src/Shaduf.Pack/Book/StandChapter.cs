using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on the stand under the tank.</summary>
internal static class StandChapter
{
    /// <summary>The blocks of the chapter; none where no stand is designed.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        if (design.Works.Stand is not { } stands)
        {
            yield break;
        }

        yield return new ChapterBreak();
        yield return new Heading(
            1,
            stands.Count == 1 ? "Stand of the tank" : Invariant($"Stands of the tanks: {stands.Count} alike")
        );
        foreach (var block in Drawings(design, stands))
        {
            yield return block;
        }

        yield return new Heading(2, "What acts on it and how far it is used");
        yield return new Paragraph(StandTexts.Method(stands.Strength));
        yield return StandTables.Actions(stands.Strength);
        yield return ForceTable.Of([stands.Strength.Forces(ForceTable.Kind)]);
        yield return StandTables.Members(stands.Strength);
        yield return ForceTable.OnFootings("leg", stands.Footings.Strength!);
        yield return StandTables.Checks(stands);
        foreach (var text in StandTexts.Building(stands))
        {
            yield return new Paragraph(text);
        }

        if (design.Works.StandErection is { } works)
        {
            yield return new Heading(2, "From the pegs to the first water");
            yield return new Bullets([.. works.Work.Select(step => (RichText)step)], BulletMark.CheckBox);
            yield return ErectionChapter.Days(works.Steps, works.AirDegC);
        }
    }

    /// <summary>The findings that keep a stand's drawing from being released.</summary>
    /// <param name="design">The design.</param>
    public static IReadOnlyList<Finding> Withholding(Design design) => design.StandWithheldBy;

    // Tonnes of water over heads: no drawing goes out while anything of it fails or was not looked at.
    private static IEnumerable<Block> Drawings(Design design, StandDesign stands)
    {
        var withholding = Withholding(design);
        if (withholding.Count > 0)
        {
            var worst = withholding.Max(finding => finding.Status);
            yield return new Notice(
                worst,
                Invariant(
                    $"The drawings of this stand are not released: tonnes of water would stand over heads on something that does not hold or was not checked{(stands.Unknown.Count == 0 ? "" : $": {string.Join(", ", stands.Unknown)}")}. In the way: {string.Join("; ", withholding.Select(finding => $"{finding.Id} ({StatusWord(finding.Status)})"))}. The findings say what to find out or to change; then run the design again. What follows is a plan for pricing, not for building."
                )
            );
            yield break;
        }

        yield return new Paragraph(StandDesign.Says(stands.Strength) + ".");
        yield return new Figure(
            StandFront.Of(stands, PicturePaper.Page).Trimmed(),
            "General arrangement. L legs, X diagonals (one on each face of the gussets, bolted where they cross), H horizontals, P plan braces where legs stand in gaps, G row beams, J joists under the deck plate, Q posts and U rails of the guard."
        );
        yield return new Figure(
            StandAbove.Of(stands, PicturePaper.Tall).Trimmed(),
            "The platform from above, and the numbers of the legs on their blocks. The tank stands in the middle of the legs."
        );
        yield return new Figure(
            RackModelPicture.Of(stands.Stand.Skeleton, "model of the stand", PicturePaper.Tall).Trimmed(),
            "Model of the stand, seen from its front left corner: members by number and mark."
        );
    }

    private static string StatusWord(FindingStatus status) => status == FindingStatus.Stop ? "stop" : "unchecked";
}
