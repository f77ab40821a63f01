using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The pipes from the pump to the tank and the head they ask for.</summary>
/// <param name="Foot">Pipe that joins the water to the main: a riser, or a suction pipe.</param>
/// <param name="Lay">Pumped main, reach by reach.</param>
/// <param name="System">Head as a function of flow: the pipe at the source, then the main's reaches.</param>
/// <param name="Water">State of the water.</param>
public sealed record Lift(SourcePipe Foot, MainLay Lay, LiftSystem System, WaterState Water)
{
    /// <summary>Fastest water accepted in the pumped main [m/s].</summary>
    public const double FastestMainMPerS = 1.5;

    /// <summary>Head left at the tank's inlet, so that a float valve closes well [m].</summary>
    public const double InletHeadM = 1;

    /// <summary>Pipe of the longest reach of the main.</summary>
    public PipeCard Main => Lay.Longest;

    /// <summary>Length of the main along the ground and up to the inlet [m].</summary>
    public double MainM => Lay.LengthM;

    /// <summary>Fittings of a main when the brief lists none; common practice, no source.</summary>
    internal static IReadOnlyList<FittingBrief> UsualFittings { get; } =
    [
        new("swing check valve angled", 1),
        new("gate valve open", 3),
        new("water meter or screen", 1),
        new("elbow 90", 8),
        new("exit", 1),
    ];

    /// <summary>Joins pipe and main to the source.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="source">The source.</param>
    /// <param name="foot">Pipe that joins the water to the main.</param>
    /// <param name="main">Pumped main.</param>
    /// <returns>The lift.</returns>
    public static Lift Of(Brief brief, Survey survey, Source source, SourcePipe foot, MainLay main)
    {
        var water = WaterState.At(survey["water-temperature"]);
        var wellheadM = brief.Lift.Route[0].ElevationM;
        var system = new LiftSystem(
            TopM(brief.Lift) - wellheadM + source.RestDryM,
            source.Drawdown,
            [foot.Run, .. main.Runs(brief.Lift)],
            InletHeadM,
            water.KinematicViscosityM2PerS
        )
        {
            DensityKgPerM3 = water.DensityKgPerM3,
        };
        return new(foot, main, system, water);
    }

    /// <summary>The route as a long section.</summary>
    /// <param name="lift">The lift as the brief has it.</param>
    /// <returns>Its points.</returns>
    public static IReadOnlyList<ProfilePoint> ProfileOf(LiftBrief lift) =>
        [.. lift.Route.Select(point => new ProfilePoint(point.ChainageM, point.ElevationM))];

    /// <summary>Length of the main along the ground and up to the inlet [m].</summary>
    /// <param name="lift">The lift as the brief has it.</param>
    /// <returns>Length [m].</returns>
    public static double LengthM(LiftBrief lift)
    {
        var along = lift.Route.Zip(
            lift.Route.Skip(1),
            (a, b) => Math.Sqrt(Math.Pow(b.ChainageM - a.ChainageM, 2) + Math.Pow(b.ElevationM - a.ElevationM, 2))
        );
        return along.Sum() + (lift.InletM - lift.Route[^1].ElevationM);
    }

    /// <summary>Speed of the water in a pipe [m/s].</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="flowM3PerH">Flow [m³/h], at least 0.</param>
    /// <returns>Speed [m/s].</returns>
    public static double SpeedMPerS(PipeCard pipe, double flowM3PerH) =>
        flowM3PerH / 3600 / (Math.PI / 4 * Math.Pow(pipe.BoreMm / 1000, 2));

    /// <summary>Pressure that a pipe may carry in this water [bar].</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="waterDegC">Temperature of the water [°C], 5 to 45.</param>
    /// <returns>Pressure [bar].</returns>
    public static double AllowedBar(PipeCard pipe, double waterDegC) =>
        pipe.LosesStrengthWhenWarm
            ? pipe.PressureBar * PressureClass.PolyethyleneFactor(Math.Max(20, Math.Min(40, waterDegC)))
            : pipe.PressureBar;

    /// <summary>Level that the water must be lifted to [m]: the tank's inlet, or the summit of the route.</summary>
    /// <param name="lift">The lift as the brief has it.</param>
    /// <returns>Level above sea [m].</returns>
    public static double TopM(LiftBrief lift) => Math.Max(lift.InletM, lift.Route.Max(point => point.ElevationM));

    /// <summary>How the head was worked out at a flow.</summary>
    /// <param name="source">The source.</param>
    /// <param name="flowM3PerH">Flow [m³/h].</param>
    /// <returns>The working.</returns>
    public WorkingSheet Show(Source source, double flowM3PerH)
    {
        var flow = flowM3PerH / 3600;
        var losses = System.Runs.Select(run => DarcyWeisbach.Loss(run, flow, System.KinematicViscosityM2PerS)).ToList();
        Line Friction(string pipe, PipeLoss loss, double lengthM, double boreMm) =>
            new(
                "h_f",
                "f (L/D) v²/(2g) + K v²/(2g)",
                Invariant(
                    $"{pipe}: f {loss.FrictionFactor:0.00000}, L {lengthM:0.#} m, D {boreMm:0.#} mm, v {loss.VelocityMPerS:0.000} m/s, Re {loss.ReynoldsNumber:0}"
                ),
                loss.TotalM,
                "m",
                "water/darcy-weisbach",
                "Darcy-Weisbach with Colebrook-White"
            );
        return new(
            Invariant($"Total dynamic head at {flowM3PerH:0.00} m3/h at the end of the dry season"),
            [
                new(
                    "H_st",
                    $"inlet - {source.Head} + depth to the water",
                    Invariant($"water {source.RestDryM:0.##} m below ground"),
                    System.StaticHeadM,
                    "m",
                    "station/lift",
                    "survey"
                ),
                .. source.Show(flow),
                Friction(Foot.Name, losses[0], Foot.LengthM, Foot.Card.BoreMm),
                .. Lay.Reaches.Zip(
                    losses.Skip(1),
                    (reach, loss) => Friction($"main, {reach.Pipe.Name}", loss, reach.LengthM, reach.Pipe.BoreMm)
                ),
                new("h_e", "head left at the inlet", "", InletHeadM, "m", "station/lift", "common practice, no source"),
                new("H", "sum", "", System.HeadM(flow), "m", "water/lift-system", ""),
            ]
        );
    }
}
