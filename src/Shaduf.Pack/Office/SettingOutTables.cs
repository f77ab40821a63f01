using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Where the pits lie, for tapes from two pegs.</summary>
internal static class SettingOutTables
{
    /// <summary>The middle of each pit by two tapes.</summary>
    /// <param name="design">The design.</param>
    public static Table Pits(Design design)
    {
        var plan = design.Works.Pits;
        return new(
            [
                new("pit", 0.7),
                new("from peg A, m", 1, HorizontalAnchor.Right),
                new("from peg B, m", 1, HorizontalAnchor.Right),
                new("from the last, m", 1, HorizontalAnchor.Right),
                new("bottom, m", 1, HorizontalAnchor.Right),
            ],
            [
                .. plan.Pits.Select(pit =>
                    TableRow.Of(
                        pit.Name,
                        Invariant($"{pit.FromAM:0.000}"),
                        Invariant($"{pit.FromBM:0.000}"),
                        pit.FromLastM is { } last ? Invariant($"{last:0.000}") : "",
                        Invariant($"{pit.BottomM + 0.0:0.00}")
                    )
                ),
            ]
        )
        {
            SizeMm = plan.Pits.Count > 16 ? 2.1 : 2.6,
            Caption = Invariant(
                $"Middles of the pits: tapes held level from pegs A and B, {plan.BaseM:0.000} m apart in front of the low edge, A on the left; bottoms from the ground under the front rack's low left corner"
            ),
        };
    }
}
