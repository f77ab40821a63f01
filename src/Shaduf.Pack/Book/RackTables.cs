using Shaduf.Parts;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The racks in words, and where their parts stand.</summary>
internal static class RackTables
{
    /// <summary>The racks in words.</summary>
    public static string RacksText(RackGrid grid)
    {
        var racks = grid.RackCount == 1 ? "one rack" : Invariant($"{grid.RackCount} racks, each");
        var rows = grid.Rows == 1 ? "one row" : Invariant($"{grid.Rows} rows");
        return Invariant($"{racks} of {rows} x {grid.Columns} modules");
    }

    /// <summary>Where the parts of a rack stand.</summary>
    public static Table PlacesOf(Rack rack) =>
        new([new("what", 2), new("where", 4)], [.. Rows(rack).Select(row => TableRow.Of(row.What, row.Where))])
        {
            Caption = "Where things go",
        };

    private static IEnumerable<(string What, string Where)> Rows(Rack rack)
    {
        var (setting, tube) = (rack.Setting, rack.Steel.Groups.Single(group => group.Mark == "T1").Role);
        yield return (
            $"{tube}s T1",
            string.Join("; ", rack.TubePlacesMm.Select(mm => Invariant($"{mm:0}")))
                + " mm from the left end to their middle"
        );
        if (rack.Clamping is { } clamping)
        {
            yield return (
                "rails R1",
                string.Join(
                    "; ",
                    rack.Rows.SelectMany(row => new[] { row.LowAtMm, row.HighAtMm }).Select(mm => Invariant($"{mm:0}"))
                )
                    + Invariant(
                        $" mm up the slope from the low edge to their middle, {clamping.FromEndMm:0} mm in from the modules' ends"
                    )
            );
        }

        foreach (
            var group in rack.Steel.Parts.Where(part => part.Mark[0] is 'B' or 'C' or 'D').GroupBy(part => part.Mark)
        )
        {
            var (shape, places) = (group.First().Shape, group.Select(part => Invariant($"{part.Shape.Start.XMm:0}")));
            yield return (
                $"{group.First().Role} {group.Key}",
                Invariant($"under T1 at {string.Join("; ", places)} mm, ") + Ends(rack, group.Key[0], shape)
            );
        }
    }

    private static string Ends(Rack rack, char letter, Cut shape) =>
        letter switch
        {
            'C' => Invariant(
                $"{rack.Setting.SlopeMm(shape.End):0} mm up the slope from the low edge; it stands {rack.Setting.EmbedMm:0} mm in the ground"
            ),
            'B' => Invariant(
                $"its head {rack.Setting.SlopeMm(shape.End):0} mm up the slope, the middle of its foot on the column {rack.Setting.AboveGroundMm(shape.Start):0} mm above ground"
            ),
            _ => Invariant(
                $"from {rack.Setting.AboveGroundMm(shape.Start):0} mm above ground on the low column to {rack.Setting.AboveGroundMm(shape.End):0} mm on the high one, middle of its ends"
            ),
        };
}
