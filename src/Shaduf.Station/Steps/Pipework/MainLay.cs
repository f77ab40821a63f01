using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>One length of the pumped main, of one pipe.</summary>
/// <param name="Pipe">The pipe.</param>
/// <param name="FromM">Where it begins, along the route [m].</param>
/// <param name="ToM">Where it ends, along the route [m].</param>
/// <param name="LengthM">Its length along the slope; the last one includes the rise to the inlet [m].</param>
public sealed record MainReach(PipeCard Pipe, double FromM, double ToM, double LengthM);

/// <summary>The pumped main as it is laid: one pipe, or one outside diameter whose pressure class changes along the way.</summary>
/// <param name="Reaches">Its lengths, from the wellhead on.</param>
public sealed record MainLay(IReadOnlyList<MainReach> Reaches)
{
    /// <summary>The whole length [m].</summary>
    public double LengthM => Reaches.Sum(reach => reach.LengthM);

    /// <summary>The pipe of the longest reach.</summary>
    public PipeCard Longest => Reaches.MaxBy(reach => reach.LengthM)!.Pipe;

    /// <summary>The pipe with the narrowest bore.</summary>
    public PipeCard Narrowest => Reaches.MinBy(reach => reach.Pipe.BoreMm)!.Pipe;

    /// <summary>Names of its pipes, from the wellhead on.</summary>
    public string Name => string.Join(" + ", Reaches.Select(reach => reach.Pipe.Name));

    /// <summary>A main of one pipe.</summary>
    /// <param name="lift">The lift as the brief has it.</param>
    /// <param name="pipe">The pipe.</param>
    /// <returns>The main.</returns>
    public static MainLay Of(LiftBrief lift, PipeCard pipe) => Of(lift, [(pipe, 0)]);

    /// <summary>A main of several pipes.</summary>
    /// <param name="lift">The lift as the brief has it.</param>
    /// <param name="pipes">Each pipe with the chainage from which it runs [m], rising from 0.</param>
    /// <returns>The main.</returns>
    public static MainLay Of(LiftBrief lift, IReadOnlyList<(PipeCard Pipe, double FromM)> pipes)
    {
        var endM = lift.Route[^1].ChainageM;
        return new([
            .. pipes.Select(
                (each, i) =>
                {
                    var isLast = i == pipes.Count - 1;
                    var toM = isLast ? endM : pipes[i + 1].FromM;
                    var riseM = isLast ? lift.InletM - lift.Route[^1].ElevationM : 0;
                    return new MainReach(each.Pipe, each.FromM, toM, SlopeM(lift, each.FromM, toM) + riseM);
                }
            ),
        ]);
    }

    /// <summary>The reaches as runs of pipe; the fittings, the brief's or the usual ones, in the narrowest.</summary>
    /// <param name="lift">The lift as the brief has it.</param>
    /// <returns>The runs.</returns>
    public IReadOnlyList<PipeRun> Runs(LiftBrief lift)
    {
        var fittings = lift.Fittings.Count > 0 ? lift.Fittings : Lift.UsualFittings;
        var narrowest = Reaches.MinBy(reach => reach.Pipe.BoreMm);
        return
        [
            .. Reaches.Select(reach =>
            {
                var boreM = reach.Pipe.BoreMm / 1000;
                var loss =
                    reach == narrowest
                        ? fittings.Sum(fitting => fitting.Count * FittingLoss.Coefficient(fitting.Kind, boreM))
                        : 0;
                return new PipeRun(boreM, reach.Pipe.RoughnessMm / 1000, reach.LengthM, loss);
            }),
        ];
    }

    /// <summary>The reach at a place of the route.</summary>
    /// <param name="chainageM">Distance along the route [m].</param>
    /// <returns>The reach; where two meet, the first.</returns>
    public MainReach At(double chainageM) => Reaches.FirstOrDefault(reach => chainageM <= reach.ToM) ?? Reaches[^1];

    private static double SlopeM(LiftBrief lift, double fromM, double toM)
    {
        var points = Lift.ProfileOf(lift);
        var along = points
            .Where(point => point.ChainageM > fromM && point.ChainageM < toM)
            .Prepend(RouteProfile.At(points, fromM))
            .Append(RouteProfile.At(points, toM))
            .ToList();
        return along
            .Zip(
                along.Skip(1),
                (a, b) => Math.Sqrt(Math.Pow(b.ChainageM - a.ChainageM, 2) + Math.Pow(b.LevelM - a.LevelM, 2))
            )
            .Sum();
    }
}
