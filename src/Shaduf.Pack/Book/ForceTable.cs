using Shaduf.Station;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The largest forces inside the members of a frame, as a table.</summary>
internal static class ForceTable
{
    /// <summary>A member as tables and the picture of the model name it: its number, its mark and what it is.</summary>
    /// <param name="skeleton">The frame.</param>
    /// <param name="member">Index of the member.</param>
    public static string Named(Skeleton skeleton, int member) =>
        Invariant($"{member + 1} {skeleton.Members[member].Mark} {skeleton.Members[member].Role}");

    /// <summary>What a member is, without its number.</summary>
    /// <param name="member">The member.</param>
    public static string Kind(Member member) => $"{member.Mark} {member.Role}";

    /// <summary>What each footing gets, for whoever checks it or designs its bars.</summary>
    /// <param name="what">What stands on it: column or leg.</param>
    /// <param name="blocks">The checked footings.</param>
    public static Table OnFootings(string what, FootingStrength blocks) =>
        new(
            [
                new($"{what} on the footing", 2.2),
                new("down, kN", 1, HorizontalAnchor.Right),
                new("up, kN", 1, HorizontalAnchor.Right),
                new("sideways, kN", 1, HorizontalAnchor.Right),
                new("moment at the ground, kN m", 1.2, HorizontalAnchor.Right),
            ],
            [
                .. blocks
                    .Ground.GroupBy(load => load.Column)
                    .Select(alike =>
                        TableRow.Of(
                            alike.Key,
                            Invariant($"{Math.Max(0, alike.Max(load => load.DownKN)):0.00}"),
                            Invariant($"{Math.Max(0, -alike.Min(load => load.DownKN)):0.00}"),
                            Invariant($"{alike.Max(load => load.SideKN):0.00}"),
                            Invariant($"{alike.Max(load => load.MomentKNm):0.00}")
                        )
                    ),
            ]
        )
        {
            Caption =
                "Largest that comes down on a footing, with partial factors, in any combination; each by itself, the footing's own weight not in it",
        };

    /// <summary>The table.</summary>
    /// <param name="envelopes">The envelopes of each model of the same frame, in the same order.</param>
    public static Table Of(IEnumerable<IReadOnlyList<ForceEnvelope>> envelopes) =>
        new(
            [
                new("members", 2.2),
                new("pull, kN", 0.8, HorizontalAnchor.Right),
                new("push, kN", 0.8, HorizontalAnchor.Right),
                new("shear, kN", 0.8, HorizontalAnchor.Right),
                new("torque, kN m", 1, HorizontalAnchor.Right),
                new("M_y, kN m", 1, HorizontalAnchor.Right),
                new("M_z, kN m", 1, HorizontalAnchor.Right),
            ],
            [
                .. envelopes
                    .Aggregate((a, b) => [.. a.Zip(b, (one, other) => one.Or(other))])
                    .Select(each =>
                        TableRow.Of(
                            each.Name,
                            Invariant($"{each.TensionN / 1000:0.00}"),
                            Invariant($"{each.CompressionN / 1000:0.00}"),
                            Invariant($"{each.ShearN / 1000:0.00}"),
                            Invariant($"{each.TorsionNMm * 1e-6:0.000}"),
                            Invariant($"{each.BendingYNMm * 1e-6:0.000}"),
                            Invariant($"{each.BendingZNMm * 1e-6:0.000}")
                        )
                    ),
            ]
        )
        {
            Caption =
                "Largest forces in members, with partial factors, in any combination and of any member of the name; each by itself, not all at once. Those that go together stand with the check that they govern, under Workings",
        };
}
