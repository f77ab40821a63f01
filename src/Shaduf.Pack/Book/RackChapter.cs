using Shaduf.Station;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on the rack.</summary>
internal static class RackChapter
{
    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var rack = design.Works.Rack;
        yield return new Heading(1, $"Rack: {RackTables.RacksText(rack.Grid)}");
        if (Warning(design.Works.RackChoice.Taken, design.Works.Footings) is { } warning)
        {
            yield return warning;
        }

        foreach (
            var beyond in design.Findings.Where(each =>
                each.IsHandedOver && each.Id.StartsWith("rack/", StringComparison.Ordinal)
            )
        )
        {
            yield return new Notice(FindingStatus.Unchecked, $"For an engineer, {FrontPage.Says(beyond)}.");
        }

        yield return new Figure(
            RackPlane.Of(rack, PicturePaper.Full).Trimmed(),
            $"General arrangement. {RackTexts.Plane(rack, design.Choice.Facing.AzimuthDeg)}"
        );
        yield return new Figure(
            RackSide.Of(rack, design.Works.Footings, PicturePaper.Full).Trimmed(),
            RackTexts.Side(rack)
        );
        yield return new Figure(
            RackModelPicture.Of(rack, PicturePaper.Full).Trimmed(),
            "Model of the rack, seen from its low left corner: members by number and mark; thin lines are joints."
        );
        yield return RackTables.PlacesOf(rack);
        foreach (var text in RackTexts.Making(rack, design))
        {
            yield return new Paragraph(text);
        }
    }

    // A rack that holds in ground that was looked at needs no warning here: the cautions stand at the end of the book.
    private static Notice? Warning(RackTried taken, Footings footings) =>
        taken switch
        {
            { Strength: null } => new(
                FindingStatus.Unchecked,
                "The strength of this rack is not checked: its tilt is beyond the method. Do not build from these pages before an engineer has designed it for the wind of the place."
            ),
            { RackHolds: false, Strength.Wind.IsKnown: false } => new(
                FindingStatus.Unchecked,
                Invariant(
                    $"The wind speed of the place is not known, and at the planning speed of {taken.Strength.Wind.BasicMPerS:0.#} m/s this rack does not hold. Find the speed out before buying steel; 'Rack: forces and checks' and the findings say up to which speed it holds, and what would hold more."
                )
            ),
            { RackHolds: false } => new(
                FindingStatus.Stop,
                "This rack does not hold the wind that it is checked for. Do not build it: see 'Rack: forces and checks' and the findings for what would hold."
            ),
            { Strength.Wind.IsKnown: false } => new(
                FindingStatus.Unchecked,
                "The wind speed of the place is not known. The sections are chosen for a planning speed only: find the speed out before buying steel. The blocks in the ground are sized for the same planning speed."
            ),
            _ when footings.Strength is { Holds: false } => new(
                FindingStatus.Stop,
                "The blocks in the ground do not hold the wind that they are checked for. Do not dig: see the findings under ground/ for what would hold."
            ),
            _ => null,
        };

    /// <summary>The blocks of parts and bars.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Parts(Design design)
    {
        yield return new Heading(1, "Parts and bars");
        foreach (var lot in design.Works.SawnLots)
        {
            yield return BookTables.PartsOf(design, lot);
        }

        foreach (var block in CutChapter.Blocks(design).Concat(FinishTables.Blocks(design)))
        {
            yield return block;
        }
    }
}
