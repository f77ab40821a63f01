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
        if (Warning(design.Works.RackChoice.Taken) is { } warning)
        {
            yield return warning;
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

    private static Notice? Warning(RackTried taken) =>
        taken switch
        {
            { Strength: null } => new(
                FindingStatus.Unchecked,
                "The strength of this rack is not checked: its tilt is beyond the method. Do not build from these pages before an engineer has designed it for the wind of the place."
            ),
            { Holds: false } => new(
                FindingStatus.Stop,
                "This rack does not hold the wind that it is checked for. Do not build it: see 'Rack: forces and checks' and the findings for what would hold."
            ),
            { Strength.Wind.IsKnown: false } => new(
                FindingStatus.Unchecked,
                "The wind speed of the place is not known. The sections are chosen for a planning speed only: find the speed out before buying steel. The footings are not checked in this version."
            ),
            _ => new(
                FindingStatus.Unchecked,
                "The footings of this rack are not checked in this version. Do not dig before an engineer has checked them for the wind of the place."
            ),
        };

    /// <summary>The blocks of parts and bars.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Parts(Design design)
    {
        yield return new Heading(1, "Parts and bars");
        yield return BookTables.PartsOf(design);
        foreach (var block in BookTables.Bars(design))
        {
            yield return block;
        }
    }
}
