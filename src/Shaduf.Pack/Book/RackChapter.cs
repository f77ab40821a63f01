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
        yield return new Notice(
            FindingStatus.Unchecked,
            "The strength of this rack and of its footings is not checked in this version. Do not build from these pages before an engineer has checked them for the wind of the place."
        );
        yield return new Figure(
            RackPlane.Of(rack, design.Choice.Module, PicturePaper.Full).Trimmed(),
            "General arrangement. F frame of angle channels (F3 is bolted so that the modules slide in), T cross tubes, S stubs, circles: columns."
        );
        yield return new Figure(
            RackSide.Of(rack, design.Works.Footings, PicturePaper.Full).Trimmed(),
            "The rack from its end, with column C1, struts B1 and B2, footing and plinth."
        );
        yield return RackTables.PlacesOf(rack);
        var channel = rack.Sections.Channel;
        yield return new Paragraph(
            Invariant(
                $"Channel: two {rack.Sections.Angle.Name}, inside depth {channel.InsideDepthMm:0.#} mm for a module of {design.Choice.Module.Body.ThicknessMm:0.#} mm, lap {channel.LapMm:0.#} mm, outside {channel.OuterDepthMm:0.#} mm; the angle whose upright leg stands outside goes on the sun's side, where its lip covers {channel.LipCoverMm:0.#} mm of the module's rim. F2, F3 and F4 run to the web of the member that they meet: at their ends cut the flat legs back by {channel.LegMm - channel.ThicknessMm + 2:0.#} mm, so that only the upright legs pass its lips. Prime the lapped faces before welding; drill drain holes at the low edge; bond the module frames."
            )
        );
    }

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
