using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>How a rack is made, in words.</summary>
internal static class RackTexts
{
    /// <summary>What the picture of the plane shows.</summary>
    public static string Plane(Rack rack, double azimuthDeg) =>
        Invariant($"The low edge, below, looks {azimuthDeg:0} deg clockwise from true north. ")
        + (
            rack.Clamping is null
                ? $"F frame of angle channels (F3 is bolted so that the modules slide in), T cross tubes, {(rack.Grid.Rows > 1 ? "S stubs, " : "")}circles: columns."
                : "R rails with a clamp between modules and at each end of a row, T cross tubes, circles: columns."
        );

    /// <summary>What the picture from the end shows.</summary>
    public static string Side(Rack rack) =>
        rack.Form.Lines == 1
            ? "The rack from its left end, with column C, struts B, footing and plinth."
            : "The rack from its left end, with its two lines of columns C, the brace D between them, footings and plinths.";

    /// <summary>How it is made and mended.</summary>
    public static IEnumerable<string> Making(Rack rack, Design design)
    {
        if (rack.Sections.Channel is { } channel)
        {
            yield return Invariant(
                $"Channel: two {rack.Sections.Angle.Name}, inside depth {channel.InsideDepthMm:0.#} mm for a module of {design.Choice.Module.Body.ThicknessMm:0.#} mm, lap {channel.LapMm:0.#} mm, outside {channel.OuterDepthMm:0.#} mm; the angle whose upright leg stands outside goes on the sun's side, where its lip covers {channel.LipCoverMm:0.#} mm of the module's rim. F2, F3 and F4 run to the web of the member that they meet: at their ends cut the flat legs back by {channel.CutBackMm:0.#} mm, so that only the upright legs pass its lips. Prime the lapped faces before welding; drill a drain hole of 8 mm in the lower lip of F1 at the low edge and of each F4 beside every second module, and one in the underside of each closed tube at its low end."
            );
            yield return Invariant(
                $"Modules slide in from the side of F3, which is held at each corner and at each F4 by two M10 bolts through a pair of lugs S2 under the frame: nothing stands in the way of the modules. To replace a module in the middle of a row: disconnect the row, take F3 off, slide out the modules between it and the broken one and stack them in order, change the module, slide all back, bolt F3 and test the row. Bond the frame of each module to F1 or F4 with a serrated washer or a lug, as paint does not conduct."
            );
        }
        else
        {
            yield return Invariant(
                $"Rails: {rack.Sections.Angle.Name}, welded on the cross tubes; one clamp between two modules and one at each end of a row on each rail, tightened to the torque that their maker states. To replace a module anywhere: disconnect it, loosen the four clamps at its sides, lift it out. Bond the frames: clamps with teeth that bite through the coating, or a lug on each module. Drill a drain hole of 8 mm in the underside of each closed tube at its low end."
            );
        }

        yield return Invariant(
            $"Foot of a column: two offcuts {Rack.FootMark} of {rack.Sections.Tube.Name}, {rack.Sections.Column.SideMm:0} mm long, lie across it on either side, flush with its end, each welded along its upper and its lower edge. They hold the column down: no column goes into concrete without them."
        );
        foreach (var cap in rack.Steel.Plates)
        {
            yield return $"Head of a column: the column is wider than the tube across. Close it with plate {cap.Mark}, {cap.Sizes} mm, welded all round, and weld the tube to the plate along both its sides. The lengths of the columns have its thickness taken off.";
        }

        yield return Site(rack, design.Brief.Rack.Crew);
    }

    private static string Site(Rack rack, CrewBrief crew)
    {
        var onSite = rack.Steel.Seams.Where(seam => seam.IsOnSite).Select(seam => seam.Name);
        var bed = crew.TruckBedM is { } given
            ? Invariant($"No piece is longer than the truck's bed of {given:0.#} m.")
            : "The truck's length is not known: pieces are as long as the bars are sold.";
        var power = crew.HasPowerOnSite switch
        {
            true => "There is power on site.",
            false => "There is no power on site: bring a welding set with its own engine, 200 A at least, and fuel.",
            null => "Whether there is power on site is not known: ask before the crew leaves.",
        };
        return $"Welded on site: {string.Join(", ", onSite)}; all else in the workshop. {bed} {Splices(rack)}{power}";
    }

    private static string Splices(Rack rack)
    {
        if (RackSplices.PlacesOf(rack).Count == 0)
        {
            return "";
        }

        return RackSplices.Anywhere(rack).Count > 0
                ? $"Splices of {string.Join(", ", RackSplices.Anywhere(rack))} stand where whole bars end, for good places lie further apart than a piece. "
            : RackSplices.Crowded(rack).Count > 0 ? "Splices stand near the quarter of a span, where little bends. "
            : "Splices stand near the quarter of a span, where little bends, and never side by side. ";
    }
}
