using Shaduf.Ground;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A place of a stand on the ground, from the axis of its first leg.</summary>
/// <param name="Name">Its number: 'S1' for a footing, 'leg 1' for a leg's axis.</param>
/// <param name="AlongM">Along the front row of legs [m].</param>
/// <param name="OffM">Behind it [m].</param>
public sealed record StandPlace(string Name, double AlongM, double OffM)
{
    /// <summary>Tape from the axis of the first leg [m].</summary>
    public double FromFirstM => double.Hypot(AlongM, OffM);
}

/// <summary>The footings of one stand as they are set out.</summary>
/// <param name="Count">Stands that are set out alike.</param>
/// <param name="Block">One footing.</param>
/// <param name="Footings">Middles of the footings.</param>
/// <param name="Legs">Axes of the legs, and so of the plinths.</param>
/// <param name="Diagonals">Pairs of distances between outermost legs that must be alike.</param>
public sealed record StandPits(
    int Count,
    FootingBlock Block,
    IReadOnlyList<StandPlace> Footings,
    IReadOnlyList<StandPlace> Legs,
    IReadOnlyList<CheckLine> Diagonals
)
{
    /// <summary>Sets the footings of the stands out.</summary>
    /// <param name="stands">The stands.</param>
    /// <returns>The places.</returns>
    public static StandPits Of(StandDesign stands)
    {
        var feet = stands.Stand.Skeleton.Feet.Select(foot => foot.Ground).ToList();
        StandPlace At(string name, double xMm, double yMm) =>
            new(name, (xMm - feet[0].XMm) / 1000, (yMm - feet[0].YMm) / 1000);
        List<StandPlace> legs = [.. feet.Select((foot, i) => At(Invariant($"leg {i + 1}"), foot.XMm, foot.YMm))];
        return new(
            stands.Count,
            stands.Footings.Block,
            [.. stands.FootingsAtMm.Select((at, i) => At(Invariant($"S{i + 1}"), at.XMm, at.YMm))],
            legs,
            [.. Crossed(legs)]
        );
    }

    // Front left to back right, and front right to back left.
    private static IEnumerable<CheckLine> Crossed(IReadOnlyList<StandPlace> legs)
    {
        var back = legs.Max(leg => leg.OffM);
        var (front, behind) = (
            legs.Where(leg => leg.OffM < back / 2).OrderBy(leg => leg.AlongM).ToList(),
            legs.Where(leg => leg.OffM > back / 2).OrderBy(leg => leg.AlongM).ToList()
        );
        foreach (var (from, to) in new[] { (front[0], behind[^1]), (front[^1], behind[0]) })
        {
            yield return new(from.Name, to.Name, double.Hypot(to.AlongM - from.AlongM, to.OffM - from.OffM));
        }
    }
}
