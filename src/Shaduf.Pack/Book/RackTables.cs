using Shaduf.Shape;
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
    public static Table PlacesOf(Rack rack)
    {
        Point FootOf(string mark) => rack.Steel.Parts.First(part => part.Mark == mark).Shape.Start;
        var depthMm = rack.Size.DepthMm;
        return new(
            [new("what", 2), new("where", 4)],
            [
                TableRow.Of(
                    "cross tubes T1",
                    string.Join("; ", rack.TubePlacesMm.Select(mm => Invariant($"{mm:0}")))
                        + " mm from the left end of F1 to their middle"
                ),
                TableRow.Of("columns C1", Invariant($"under T1, {depthMm / 2:0} mm up the slope from the low edge")),
                TableRow.Of(
                    "head of B1, head of B2",
                    Invariant($"under T1, {depthMm / 4:0} and {depthMm * 3 / 4:0} mm up the slope from the low edge")
                ),
                TableRow.Of(
                    "feet of B1 and B2",
                    Invariant(
                        $"their middle on the face of C1, {FootOf("B1").ZMm:0} and {FootOf("B2").ZMm:0} mm above ground; C1 stands {-FootOf("C1").ZMm:0} mm in it"
                    )
                ),
            ]
        )
        {
            Caption = "Where things go",
        };
    }
}
