namespace Shaduf.Water;

/// <summary>A point of a pipe's long section.</summary>
/// <param name="ChainageM">Distance along the pipe [m].</param>
/// <param name="LevelM">Level [m].</param>
public readonly record struct ProfilePoint(double ChainageM, double LevelM);

/// <summary>What is fitted at a place of a route.</summary>
public enum RouteFitting
{
    /// <summary>Lets air out while filling and in while emptying.</summary>
    AirValve,

    /// <summary>Valve at a low point that empties and flushes the pipe.</summary>
    Washout,

    /// <summary>Valve that parts the main for repairs.</summary>
    LineValve,
}

/// <summary>A fitting with its place.</summary>
/// <param name="Fitting">Kind.</param>
/// <param name="At">Where it stands.</param>
/// <param name="Why">Why it stands there.</param>
public sealed record RouteMark(RouteFitting Fitting, ProfilePoint At, string Why);

/// <summary>Air valves, washouts and line valves that a route asks for.</summary>
public static class RouteProfile
{
    /// <summary>Longest even grade without an air valve [m].</summary>
    public const double LongestGradeM = 800;

    /// <summary>Longest main without a line valve [m].</summary>
    public const double LongestUnpartedM = 750;

    /// <summary>
    /// Air valves at the start and at every high point, and along even grades; washouts at every low point between the
    /// ends; line valves on long mains. A level stretch counts as one high or low place, at its middle point.
    /// </summary>
    /// <param name="points">At least two points of rising chainage.</param>
    /// <returns>The fittings in order of chainage.</returns>
    /// <exception cref="ArgumentException">Fewer than two points, or a chainage that does not rise.</exception>
    /// <source>common practice: air valve at each high point and each 500 to 800 m of long even grade, washout at each low point, line valve each 500 to 1000 m; from memory, no source</source>
    public static IReadOnlyList<RouteMark> Marks(IReadOnlyList<ProfilePoint> points)
    {
        if (points.Count < 2 || points.Zip(points.Skip(1)).Any(pair => !(pair.Second.ChainageM > pair.First.ChainageM)))
        {
            throw new ArgumentException("at least two points of rising chainage are needed", nameof(points));
        }

        var turns = Turns(points).ToList();
        var air = turns.Where(turn => turn.Fitting == RouteFitting.AirValve).Select(turn => turn.At.ChainageM);
        var open = Spaced([points[0].ChainageM, .. air, points[^1].ChainageM], LongestGradeM);
        var parted = Spaced([points[0].ChainageM, points[^1].ChainageM], LongestUnpartedM);
        return
        [
            .. turns
                .Prepend(new(RouteFitting.AirValve, points[0], "double acting, at the start before the check valve"))
                .Concat(open.Select(at => new RouteMark(RouteFitting.AirValve, At(points, at), "long even grade")))
                .Concat(parted.Select(at => new RouteMark(RouteFitting.LineValve, At(points, at), "parts the main")))
                .OrderBy(mark => mark.At.ChainageM)
                .ThenBy(mark => mark.Fitting),
        ];
    }

    /// <summary>The point of a profile at a chainage, on the straight line between its neighbours.</summary>
    /// <param name="points">Points of rising chainage, at least one.</param>
    /// <param name="chainageM">Distance along the pipe [m], any; before the first or beyond the last point their level holds.</param>
    /// <returns>The point.</returns>
    /// <exception cref="ArgumentException">There is no point.</exception>
    /// <source>straight line between survey points</source>
    public static ProfilePoint At(IReadOnlyList<ProfilePoint> points, double chainageM)
    {
        if (points.Count == 0)
        {
            throw new ArgumentException("at least one point is needed", nameof(points));
        }

        return points.Count == 1
            ? points[0] with
            {
                ChainageM = chainageM,
            }
            : new(
                chainageM,
                StraightLine.Between(
                    [.. points.Select(point => point.ChainageM)],
                    [.. points.Select(point => point.LevelM)],
                    Math.Clamp(chainageM, points[0].ChainageM, points[^1].ChainageM)
                )
            );
    }

    // Level neighbours are one place: kept is the middle one of them.
    private static IEnumerable<RouteMark> Turns(IReadOnlyList<ProfilePoint> points)
    {
        for (var i = 1; i < points.Count - 1; i++)
        {
            var last = i;
            while (last < points.Count - 1 && points[last + 1].LevelM == points[i].LevelM)
            {
                last++;
            }

            if (last == points.Count - 1)
            {
                yield break;
            }

            var (before, after) = (
                points[i].LevelM - points[i - 1].LevelM,
                points[last + 1].LevelM - points[last].LevelM
            );
            if (Math.Sign(before) * Math.Sign(after) < 0)
            {
                yield return Turn(points[(i + last) / 2], isHigh: before > 0);
            }

            i = last;
        }
    }

    private static RouteMark Turn(ProfilePoint at, bool isHigh) =>
        isHigh ? new(RouteFitting.AirValve, at, "high point") : new(RouteFitting.Washout, at, "low point");

    // Places that part each gap evenly into lengths of at most the longest.
    private static IEnumerable<double> Spaced(IReadOnlyList<double> fixedM, double longestM) =>
        fixedM
            .Zip(fixedM.Skip(1))
            .SelectMany(gap =>
            {
                var count = (int)Math.Ceiling((gap.Second - gap.First) / longestM);
                return Enumerable
                    .Range(1, Math.Max(0, count - 1))
                    .Select(i => gap.First + ((gap.Second - gap.First) * i / count));
            });
}
