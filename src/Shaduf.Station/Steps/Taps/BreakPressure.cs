namespace Shaduf.Station;

/// <summary>Puts break-pressure tanks where the head at rest is more than taps or pipes bear.</summary>
/// <param name="points">Each after the one that feeds it.</param>
/// <param name="tank">Floor of the tank, and its water when full [m].</param>
/// <param name="allowedM">Head that the pipe to a point may bear [m].</param>
internal sealed class BreakPressure(
    IReadOnlyList<TapPoint> points,
    (double FloorM, double FullM) tank,
    Func<TapPoint, double> allowedM
)
{
    /// <summary>Largest head at rest at a tap [m]; from memory (56 to 60 m).</summary>
    public const double MostTapM = 56;

    // Head that the float valve of a break-pressure tank wants while it fills [m]; common practice, no source.
    private const double ValveM = 2;

    // Head to spare before and below a break-pressure tank, for the pipes [m].
    private const double SpareM = 5;

    // Never nearer than this to the point above, so that the two do not stand in each other's way.
    private const double LeastShare = 0.1;

    private readonly List<TapPoint> placed = [];
    private int count;

    /// <summary>The points with break-pressure tanks among them, each after the one that feeds it.</summary>
    public IReadOnlyList<TapPoint> Insert()
    {
        var moved = new int[points.Count];
        for (var i = 0; i < points.Count; i++)
        {
            var up = points[i].UpstreamIndex < 0 ? -1 : moved[points[i].UpstreamIndex];
            var point = points[i] with { UpstreamIndex = up };
            if (IsShared(i, point))
            {
                point = Break(point, point.LevelM);
            }

            while (RestM(point.UpstreamIndex) - point.LevelM > Limit(point) && LevelOf(point) is { } levelM)
            {
                point = Break(point, levelM);
            }

            moved[i] = placed.Count;
            placed.Add(point);
        }

        return placed;
    }

    private double Limit(TapPoint point) =>
        point.Kind == TapPointKind.Junction ? allowedM(point) : Math.Min(MostTapM, allowedM(point));

    private double RestM(int up) =>
        up < 0 ? tank.FullM
        : placed[up].Kind == TapPointKind.BreakPressureTank ? placed[up].LevelM
        : RestM(placed[up].UpstreamIndex);

    private double StartM(TapPoint point) => point.UpstreamIndex < 0 ? tank.FloorM : placed[point.UpstreamIndex].LevelM;

    // One tank at a junction does for all its branches when each of them would want one and still has its head.
    private bool IsShared(int index, TapPoint point)
    {
        var fed = points.Where(each => each.UpstreamIndex == index).ToList();
        var restM = RestM(point.UpstreamIndex);
        return fed.Count > 1
            && point is { Kind: TapPointKind.Junction, NeedM: not null }
            && restM - point.LevelM >= ValveM + SpareM
            && restM - point.LevelM <= allowedM(point)
            && fed.TrueForAll(each =>
                restM - each.LevelM > Limit(each) && point.LevelM - each.LevelM >= (each.NeedM ?? 0) + SpareM
            );
    }

    // As high as the point below lets it be, and not so low that the pipe above would burst; null when the pipe has no such place.
    private double? LevelOf(TapPoint point)
    {
        var (startM, restM) = (StartM(point), RestM(point.UpstreamIndex));
        var highestM = Math.Min(startM - (LeastShare * (startM - point.LevelM)), restM - ValveM - SpareM);
        var lowestM = Math.Max(point.LevelM + (point.NeedM ?? 0) + SpareM, restM - allowedM(point));
        return lowestM > highestM ? null : Math.Clamp(point.LevelM + Limit(point), lowestM, highestM);
    }

    private TapPoint Break(TapPoint point, double levelM)
    {
        var startM = StartM(point);
        var share = startM > point.LevelM ? (startM - levelM) / (startM - point.LevelM) : 1;
        count++;
        placed.Add(
            point with
            {
                Name = $"break-pressure tank {count}",
                Kind = TapPointKind.BreakPressureTank,
                LevelM = levelM,
                NeedM = ValveM,
                DrawM3PerS = 0,
                LengthM = share * point.LengthM,
            }
        );
        return point with { UpstreamIndex = placed.Count - 1, LengthM = (1 - share) * point.LengthM };
    }
}
