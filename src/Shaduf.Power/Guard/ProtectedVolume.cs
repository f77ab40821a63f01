using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>A place on the ground beside or under the array.</summary>
/// <param name="XM">Along the row [m].</param>
/// <param name="YM">Across the row [m].</param>
public readonly record struct GroundPlace(double XM, double YM)
{
    internal double ToM(GroundPlace other) => double.Hypot(XM - other.XM, YM - other.YM);
}

/// <summary>
/// What several upright rods of one height protect together. The sphere's middle may be at every place not lower than
/// its radius that keeps the radius to each tip. A point is protected when no such middle is nearer to it than the
/// radius: at each level of the middle, the disc of the places that would touch the point is covered by the discs that
/// the rods keep free. Levels in steps; each step takes the larger reach and the smaller discs, so that the answer errs
/// to the safe side only.
/// </summary>
public static class ProtectedVolume
{
    // From the level where the sphere stands on the ground to the one where it hangs over the point.
    private const int Levels = 300;
    private const double HeightToleranceM = 0.001;

    /// <summary>Greatest height at a place that the rods protect.</summary>
    /// <param name="sphereM">Radius of the sphere [m], 1 to 200.</param>
    /// <param name="rodM">Height of the rods [m], 0 to 200, and not above the radius.</param>
    /// <param name="rods">Where the rods stand.</param>
    /// <param name="place">The place.</param>
    /// <returns>Height [m], 1 mm to the safe side; 0 where nothing is protected.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Geometry of the sphere of IEC 62305-3:2010, annex A.</source>
    public static double HeightM(double sphereM, double rodM, IReadOnlyList<GroundPlace> rods, GroundPlace place)
    {
        var (lowM, highM) = (0.0, rodM);
        while (highM - lowM > HeightToleranceM)
        {
            var middleM = (lowM + highM) / 2;
            (lowM, highM) = Holds(sphereM, rodM, rods, place, middleM) ? (middleM, highM) : (lowM, middleM);
        }

        return lowM;
    }

    /// <summary>Whether the rods protect a point.</summary>
    /// <param name="sphereM">Radius of the sphere [m], 1 to 200.</param>
    /// <param name="rodM">Height of the rods [m], 0 to 200, and not above the radius.</param>
    /// <param name="rods">Where the rods stand.</param>
    /// <param name="place">The point's place.</param>
    /// <param name="atM">The point's height [m], 0 to 200.</param>
    /// <returns>True when no sphere can touch it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Geometry of the sphere of IEC 62305-3:2010, annex A.</source>
    public static bool Holds(
        double sphereM,
        double rodM,
        IReadOnlyList<GroundPlace> rods,
        GroundPlace place,
        double atM
    )
    {
        Within.Require(sphereM, 1, 200, "m");
        Within.Require(rodM, 0, sphereM, "m");
        Within.Require(atM, 0, 200, "m");
        if (atM > rodM)
        {
            return false;
        }

        // Fine steps at both ends: where the sphere stands on the ground, and where it comes to hang over the point.
        double RiseM(int level) => atM * (1 - Math.Cos(Math.PI * level / Levels)) / 2;
        return Enumerable
            .Range(0, Levels)
            .All(level =>
                IsCovered(
                    place,
                    RollingSphere.HalfChordM(sphereM, atM - RiseM(level)),
                    rods,
                    RollingSphere.HalfChordM(sphereM, Math.Max(0, rodM - RiseM(level + 1)))
                )
            );
    }

    // Whether the disc around the place lies wholly in equal discs around the rods.
    private static bool IsCovered(GroundPlace place, double reachM, IReadOnlyList<GroundPlace> rods, double freeM)
    {
        var near = rods.Where(rod => rod.ToM(place) < freeM + reachM).ToList();
        return near.Exists(rod => rod.ToM(place) + reachM <= freeM)
            || (near.Count > 1 && IsRimCovered(place, reachM, near, freeM) && !HasHole(place, reachM, near, freeM));
    }

    // The pieces of the rim that each disc covers, each once in the first turn and once in the second, laid end to end over
    // the second.
    private static bool IsRimCovered(GroundPlace place, double reachM, List<GroundPlace> rods, double freeM)
    {
        var pieces = rods.Where(rod => rod.ToM(place) + freeM > reachM)
            .Select(rod =>
            {
                var apartM = rod.ToM(place);
                var cosine = ((apartM * apartM) + (reachM * reachM) - (freeM * freeM)) / (2 * apartM * reachM);
                var half = Math.Acos(Math.Clamp(cosine, -1, 1));
                var from = Math.Atan2(rod.YM - place.YM, rod.XM - place.XM) - half + (2 * Math.Tau);
                return (From: from % Math.Tau, Length: 2 * half);
            })
            .SelectMany(piece => new[] { piece, (From: piece.From + Math.Tau, piece.Length) })
            .OrderBy(piece => piece.From);
        var reached = Math.Tau;
        foreach (var (from, length) in pieces.TakeWhile(piece => piece.From <= reached))
        {
            reached = Math.Max(reached, from + length);
        }

        return reached >= 2 * Math.Tau;
    }

    // A gap inside the disc has a corner where the rims of two discs cross and no third covers the crossing.
    private static bool HasHole(GroundPlace place, double reachM, List<GroundPlace> rods, double freeM)
    {
        foreach (var (i, one) in rods.Index())
        {
            foreach (var other in rods.Skip(i + 1).Where(other => other.ToM(one) > 0 && other.ToM(one) < 2 * freeM))
            {
                var halfM = one.ToM(other) / 2;
                var offM = Math.Sqrt((freeM * freeM) - (halfM * halfM));
                var (alongX, alongY) = ((other.XM - one.XM) / (2 * halfM), (other.YM - one.YM) / (2 * halfM));
                foreach (var side in new[] { -offM, offM })
                {
                    var crossing = new GroundPlace(
                        ((one.XM + other.XM) / 2) - (side * alongY),
                        ((one.YM + other.YM) / 2) + (side * alongX)
                    );
                    if (
                        crossing.ToM(place) < reachM
                        && !rods.Exists(third => third != one && third != other && third.ToM(crossing) < freeM)
                    )
                    {
                        return true;
                    }
                }
            }
        }

        return false;
    }
}
