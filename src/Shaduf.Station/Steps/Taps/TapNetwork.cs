using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What a point of the network is.</summary>
public enum TapPointKind
{
    /// <summary>Pipes meet.</summary>
    Junction,

    /// <summary>A tap.</summary>
    Tap,

    /// <summary>Drip or sprinkler lines begin.</summary>
    Manifold,

    /// <summary>A break-pressure tank that the design puts in.</summary>
    BreakPressureTank,
}

/// <summary>A point of the network with the pipe that leads to it, before heads are known.</summary>
/// <param name="Name">The point.</param>
/// <param name="Kind">What it is.</param>
/// <param name="UpstreamIndex">The point that feeds it; -1 for the tank.</param>
/// <param name="LevelM">Its level [m].</param>
/// <param name="NeedM">Head wanted there with all open [m]; null when any will do.</param>
/// <param name="DrawM3PerS">Flow taken there [m³/s].</param>
/// <param name="LengthM">Length of the pipe [m].</param>
/// <param name="Given">Card that the brief names; null to choose.</param>
public sealed record TapPoint(
    string Name,
    TapPointKind Kind,
    int UpstreamIndex,
    double LevelM,
    double? NeedM,
    double DrawM3PerS,
    double LengthM,
    PipeCard? Given
);

/// <summary>A point with its pipe and heads.</summary>
/// <param name="Point">The point.</param>
/// <param name="Pipe">The pipe that leads to it.</param>
/// <param name="FlowM3PerS">Flow in that pipe with all open [m³/s].</param>
/// <param name="LossM">Head lost in it [m].</param>
/// <param name="GradeM">Level of the hydraulic grade line with all open and the tank nearly empty [m].</param>
/// <param name="RestM">Level to which water presses at rest, the tank full [m].</param>
/// <param name="MostRestM">Largest head at rest along its pipe [m].</param>
public sealed record TapHead(
    TapPoint Point,
    PipeCard Pipe,
    double FlowM3PerS,
    double LossM,
    double GradeM,
    double RestM,
    double MostRestM
)
{
    /// <summary>The point's name.</summary>
    public string Name => Point.Name;

    /// <summary>Head left with all open [m].</summary>
    public double ResidualM => GradeM - Point.LevelM;

    /// <summary>Head wanted with all open; 0 where any will do [m].</summary>
    public double WantedM => Point.NeedM ?? 0;

    /// <summary>Head at rest [m].</summary>
    public double StaticM => RestM - Point.LevelM;

    /// <summary>Speed of the water in its pipe [m/s].</summary>
    public double SpeedMPerS => Lift.SpeedMPerS(Pipe, FlowM3PerS * 3600);

    /// <summary>Whether people or plants take water there.</summary>
    public bool IsTap => Point.Kind is TapPointKind.Tap or TapPointKind.Manifold;
}

/// <summary>The taps by gravity: a tree of pipes from the tank.</summary>
/// <param name="Heads">Every point, each after the one that feeds it.</param>
/// <param name="SourceM">Level of the tank's floor, from which the taps are fed at worst [m].</param>
/// <param name="FullM">Level of the water in the full tank [m].</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record TapNetwork(
    IReadOnlyList<TapHead> Heads,
    double SourceM,
    double FullM,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>The taps and manifolds.</summary>
    public IEnumerable<TapHead> Taps => Heads.Where(head => head.IsTap);

    /// <summary>Taps and manifolds that each metre of the tank's stand gives a metre: no break-pressure tank parts them from it.</summary>
    public IEnumerable<TapHead> OnTheTank => Taps.Where(tap => tap.RestM == FullM);

    /// <summary>The network of a brief, with its pipes chosen.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="shelf">The cards.</param>
    /// <param name="tankHeightM">Height of the tank's water when full [m].</param>
    /// <param name="rate">Price of a metre of pipe; null when there is none.</param>
    /// <returns>The network; empty when the brief has no taps.</returns>
    public static TapNetwork Of(
        Brief brief,
        Survey survey,
        CardShelf shelf,
        double tankHeightM,
        Func<string, decimal?> rate
    )
    {
        var sourceM = brief.Lift.Route[^1].ElevationM + brief.Tank.StandM;
        if (brief.Taps is not { } taps)
        {
            return new([], sourceM, sourceM + tankHeightM, []);
        }

        var sizing = new TapSizing(survey, shelf, (sourceM, sourceM + tankHeightM), rate);
        var points = new BreakPressure(
            PointsOf(taps, shelf),
            (sourceM, sourceM + tankHeightM),
            sizing.AllowedM
        ).Insert();
        var (heads, note) = sizing.Choose(points);
        return new(heads, sourceM, sourceM + tankHeightM, [.. note, .. BreakNotes(points)]);
    }

    private static IEnumerable<ChoiceNote> BreakNotes(IReadOnlyList<TapPoint> points) =>
        points
            .Where(point => point.Kind == TapPointKind.BreakPressureTank)
            .Select(point => new ChoiceNote(
                point.Name,
                Invariant($"at {point.LevelM:0.0} m"),
                "without it the head at rest below would be more than taps or pipes bear"
            ));

    private static List<TapPoint> PointsOf(TapsBrief taps, CardShelf shelf)
    {
        var index = taps.Pipes.Select((pipe, i) => (pipe.To, i)).ToDictionary(pair => pair.To, pair => pair.i);
        return
        [
            .. taps.Pipes.Select(pipe =>
            {
                var up = pipe.From == TapsBrief.TankName ? -1 : index[pipe.From];
                var card = pipe.Pipe is { } name ? shelf.Find<PipeCard>(name) : null;
                return taps.Taps.FirstOrDefault(tap => tap.Name == pipe.To) is { } tap
                    ? new TapPoint(
                        tap.Name,
                        tap.IsManifold ? TapPointKind.Manifold : TapPointKind.Tap,
                        up,
                        tap.ElevationM,
                        tap.NeedM ?? TapFindings.LeastM,
                        tap.FlowM3PerH / 3600,
                        pipe.LengthM,
                        card
                    )
                    : JunctionOf(taps, pipe, up, card);
            }),
        ];
    }

    // Of a junction nobody levelled the lowest tap's level is taken, which is the safe side for the pipe; its head is then not judged.
    private static TapPoint JunctionOf(TapsBrief taps, TapPipeBrief pipe, int upstreamIndex, PipeCard? card)
    {
        var level = taps.Junctions.First(junction => junction.Name == pipe.To).LevelM;
        return new(
            pipe.To,
            TapPointKind.Junction,
            upstreamIndex,
            level ?? taps.Taps.Min(tap => tap.ElevationM),
            level is null ? null : 0,
            0,
            pipe.LengthM,
            card
        );
    }
}
