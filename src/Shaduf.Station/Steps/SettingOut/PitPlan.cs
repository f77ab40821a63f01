using Shaduf.Ground;
using Shaduf.Power;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A column on a footing, as it is set out. Levels are above the ground under the front rack's low left corner.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="Place">Its axis.</param>
/// <param name="PlinthTopM">Top of its plinth [m].</param>
/// <param name="FootM">Its foot in the concrete [m].</param>
public sealed record StandingColumn(string Mark, GroundPlace Place, double PlinthTopM, double FootM);

/// <summary>A pit for one footing. Levels are above the ground under the front rack's low left corner.</summary>
/// <param name="Name">Its number: 'P3'.</param>
/// <param name="Rack">Its rack, from 0.</param>
/// <param name="Middle">Its middle.</param>
/// <param name="GroundM">Ground at its middle [m].</param>
/// <param name="BottomM">Its bottom [m].</param>
/// <param name="Columns">The columns on its footing.</param>
public sealed record Pit(
    string Name,
    int Rack,
    GroundPlace Middle,
    double GroundM,
    double BottomM,
    IReadOnlyList<StandingColumn> Columns
)
{
    /// <summary>Tape from peg A to its middle [m].</summary>
    public required double FromAM { get; init; }

    /// <summary>Tape from peg B to its middle [m].</summary>
    public required double FromBM { get; init; }

    /// <summary>Angle at which the tapes cross there [deg].</summary>
    public required double CrossingDeg { get; init; }

    /// <summary>From the middle of the pit before it, to check with [m]; null for the first.</summary>
    public required double? FromLastM { get; init; }
}

/// <summary>A distance that must come out if all is square.</summary>
/// <param name="From">One pit.</param>
/// <param name="To">The other.</param>
/// <param name="LengthM">Distance [m].</param>
public sealed record CheckLine(string From, string To, double LengthM);

/// <summary>
/// The pits of all racks from two pegs in front of the low edge: x along the row from the left end of the racks, y away from
/// the low edge of the front rack, metres.
/// </summary>
/// <param name="A">The left peg.</param>
/// <param name="B">The right peg.</param>
/// <param name="Block">One footing.</param>
/// <param name="Pits">The pits, rack by rack.</param>
/// <param name="Diagonals">Pairs of distances that must be alike, two by two.</param>
public sealed record PitPlan(
    GroundPlace A,
    GroundPlace B,
    FootingBlock Block,
    IReadOnlyList<Pit> Pits,
    IReadOnlyList<CheckLine> Diagonals
)
{
    // Free ground between the outermost pits and the pegs: room for spoil and a spade; judgement.
    private const double ClearM = 1.5;
    private const double WidestM = 30;
    private const double FarthestM = 20;

    /// <summary>From peg to peg [m].</summary>
    public double BaseM => B.XM - A.XM;

    /// <summary>Smallest angle at which the tapes cross at a pit [deg].</summary>
    public double LeastCrossingDeg => Pits.Min(pit => pit.CrossingDeg);

    /// <summary>Sets the pits out.</summary>
    /// <param name="rack">The racks.</param>
    /// <param name="footings">Their footings.</param>
    /// <returns>The plan.</returns>
    public static PitPlan Of(Rack rack, Footings footings)
    {
        var pits = Dug(rack, footings).ToList();
        var (a, b) = Pegs(pits, footings.Block);
        var baseM = b.XM - a.XM;
        var set = pits.Select(
                (pit, i) =>
                {
                    var (along, off) = (pit.Middle.XM - a.XM, pit.Middle.YM - a.YM);
                    var (fromA, fromB) = PegPlace.TapesM(baseM, along, off);
                    return pit with
                    {
                        FromAM = fromA,
                        FromBM = fromB,
                        CrossingDeg = PegPlace.CrossingDeg(baseM, along, off),
                        FromLastM = i == 0 ? null : Between(pits[i - 1].Middle, pit.Middle),
                    };
                }
            )
            .ToList();
        return new(a, b, footings.Block, set, [.. Crossed(set, footings.Block)]);
    }

    private static IEnumerable<Pit> Dug(Rack rack, Footings footings)
    {
        var (ground, pitchMm) = (rack.Setting.Ground, GuardField.Of(rack).PitchM * 1000);
        var groups = FootGroups.Of(rack.Skeleton, footings.Form);
        for (var i = 0; i < rack.Grid.RackCount; i++)
        {
            var backMm = i * pitchMm;
            foreach (var (n, group) in groups.Index())
            {
                var feet = group.Select(place => rack.Skeleton.Feet[place.Foot]).ToList();
                var (x, y) = (
                    (feet.Min(foot => foot.Ground.XMm) + feet.Max(foot => foot.Ground.XMm)) / 2,
                    (feet.Min(foot => foot.Ground.YMm) + feet.Max(foot => foot.Ground.YMm)) / 2
                );
                var groundMm = ground.ZMm(x, y + backMm);
                yield return new(
                    Invariant($"P{(i * groups.Count) + n + 1}"),
                    i,
                    new(x / 1000, (y + backMm) / 1000),
                    groundMm / 1000,
                    (groundMm - footings.Block.DepthMm) / 1000,
                    [
                        .. feet.Select(foot =>
                        {
                            var at = foot.Ground;
                            var levelMm = ground.ZMm(at.XMm, at.YMm + backMm);
                            return new StandingColumn(
                                rack.Skeleton.Members[foot.Member].Mark,
                                new(at.XMm / 1000, (at.YMm + backMm) / 1000),
                                (levelMm + footings.Block.PlinthHeightMm) / 1000,
                                (levelMm - rack.Setting.EmbedMm) / 1000
                            );
                        }),
                    ]
                )
                {
                    FromAM = 0,
                    FromBM = 0,
                    CrossingDeg = 0,
                    FromLastM = null,
                };
            }
        }
    }

    // The shortest base, nearest to the pits, from which all tapes cross well; the widest where none does.
    private static (GroundPlace A, GroundPlace B) Pegs(IReadOnlyList<Pit> pits, FootingBlock block)
    {
        var (left, right) = (pits.Min(pit => pit.Middle.XM), pits.Max(pit => pit.Middle.XM));
        var halfM = block.LengthMm / 2000;
        var nearM = pits.Min(pit => pit.Middle.YM) - (block.WidthMm / 2000) - ClearM;
        var tried =
            from wider in Enumerable.Range(0, (int)WidestM + 1)
            from farther in Enumerable.Range(0, (int)(2 * FarthestM) + 1)
            orderby wider + farther
            select (
                A: new GroundPlace(Math.Round(left - halfM - wider - 0.5, 1), Math.Round(nearM - (farther / 2.0), 1)),
                B: new GroundPlace(Math.Round(right + halfM + wider + 0.5, 1), Math.Round(nearM - (farther / 2.0), 1))
            );
        var all = tried.ToList();
        var found = all.FindIndex(pegs =>
            pits.All(pit =>
                PegPlace.CrossingDeg(pegs.B.XM - pegs.A.XM, pit.Middle.XM - pegs.A.XM, pit.Middle.YM - pegs.A.YM)
                >= PegPlace.LeastCrossingDeg
            )
        );
        return found >= 0 ? all[found] : all[^1];
    }

    // The outermost pits of each rack, and of all racks together; of pits in one line their corners.
    private static IEnumerable<CheckLine> Crossed(IReadOnlyList<Pit> pits, FootingBlock block)
    {
        var racks = pits.GroupBy(pit => pit.Rack).Select(rack => rack.ToList()).ToList();
        return (racks.Count > 1 ? racks.Append([.. pits]) : racks).SelectMany(each => Corners(each, block));
    }

    private static IEnumerable<CheckLine> Corners(IReadOnlyList<Pit> pits, FootingBlock block)
    {
        var (left, right) = (pits.Min(pit => pit.Middle.XM), pits.Max(pit => pit.Middle.XM));
        var (near, far) = (pits.Min(pit => pit.Middle.YM), pits.Max(pit => pit.Middle.YM));
        Pit? At(double x, double y) =>
            pits.FirstOrDefault(pit => Math.Abs(pit.Middle.XM - x) < 1e-6 && Math.Abs(pit.Middle.YM - y) < 1e-6);
        if (right - left < 0.1 || far - near < 0.1)
        {
            // Pits in one line: the corners of the outermost two.
            var (first, last) = (
                pits.MinBy(pit => pit.Middle.XM + pit.Middle.YM)!,
                pits.MaxBy(pit => pit.Middle.XM + pit.Middle.YM)!
            );
            var lengthM = double.Hypot(right - left + (block.LengthMm / 1000), far - near + (block.WidthMm / 1000));
            var isAcross = right - left < 0.1;
            yield return new($"{first.Name} front left", $"{last.Name} back right", lengthM);
            yield return isAcross
                ? new($"{first.Name} front right", $"{last.Name} back left", lengthM)
                : new($"{last.Name} front right", $"{first.Name} back left", lengthM);
            yield break;
        }

        foreach (var (from, to) in new[] { (At(left, near), At(right, far)), (At(right, near), At(left, far)) })
        {
            if (from is not null && to is not null)
            {
                yield return new(from.Name, to.Name, Between(from.Middle, to.Middle));
            }
        }
    }

    private static double Between(GroundPlace a, GroundPlace b) => double.Hypot(b.XM - a.XM, b.YM - a.YM);
}
