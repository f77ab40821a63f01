using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The pipes from the pump to the tank and the head they ask for.</summary>
/// <param name="Riser">Pipe in the borehole.</param>
/// <param name="Main">Pumped main.</param>
/// <param name="RiserM">Length of the riser [m].</param>
/// <param name="MainM">Length of the main along the ground and up to the inlet [m].</param>
/// <param name="System">Head as a function of flow.</param>
/// <param name="Water">State of the water.</param>
public sealed record Lift(
    PipeCard Riser,
    PipeCard Main,
    double RiserM,
    double MainM,
    LiftSystem System,
    WaterState Water
)
{
    /// <summary>Fastest water accepted in the pumped main [m/s].</summary>
    public const double FastestMainMPerS = 1.5;

    /// <summary>Fastest water accepted in the riser [m/s].</summary>
    public const double FastestRiserMPerS = 2.0;

    // Head left at the tank's inlet, so that a float valve closes well.
    private const double InletHeadM = 1;

    /// <summary>Fittings of a main when the brief lists none; common practice, no source.</summary>
    internal static IReadOnlyList<FittingBrief> UsualFittings { get; } =
    [
        new("swing check valve angled", 1),
        new("gate valve open", 3),
        new("water meter or screen", 1),
        new("elbow 90", 8),
        new("exit", 1),
    ];

    /// <summary>Joins a riser and a main to the well.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="well">The well.</param>
    /// <param name="riser">Pipe in the borehole.</param>
    /// <param name="main">Pumped main.</param>
    /// <returns>The lift.</returns>
    public static Lift Of(Brief brief, Survey survey, Well well, PipeCard riser, PipeCard main)
    {
        var water = WaterState.At(survey["water-temperature"]);
        var wellheadM = brief.Lift.Route[0].ElevationM;
        var mainM = LengthM(brief.Lift);
        var system = new LiftSystem(
            TopM(brief.Lift) - wellheadM + well.RestDryM,
            survey.Drawdown,
            [new(riser.BoreMm / 1000, riser.RoughnessMm / 1000, well.PumpSettingM, 0), MainRun(brief.Lift, main)],
            InletHeadM,
            water.KinematicViscosityM2PerS
        )
        {
            DensityKgPerM3 = water.DensityKgPerM3,
        };
        return new(riser, main, well.PumpSettingM, mainM, system, water);
    }

    /// <summary>The pumped main as a run of pipe, with the brief's fittings or the usual ones.</summary>
    /// <param name="lift">The lift as the brief has it.</param>
    /// <param name="main">The pipe.</param>
    /// <returns>The run.</returns>
    public static PipeRun MainRun(LiftBrief lift, PipeCard main)
    {
        var boreM = main.BoreMm / 1000;
        var fittings = lift.Fittings.Count > 0 ? lift.Fittings : UsualFittings;
        return new(
            boreM,
            main.RoughnessMm / 1000,
            LengthM(lift),
            fittings.Sum(fitting => fitting.Count * FittingLoss.Coefficient(fitting.Kind, boreM))
        );
    }

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

    /// <summary>Largest pressure along the main while the pump runs, the rise when it stops hard, and the least pressure then.</summary>
    /// <param name="lift">The lift as the brief has it.</param>
    /// <param name="main">The main.</param>
    /// <param name="lossM">Head lost along the whole main at the flow [m].</param>
    /// <param name="water">State of the water.</param>
    /// <param name="flowM3PerH">Flow before the stop [m³/h].</param>
    /// <returns>Running pressure and rise [bar]; least head along the main, against the air outside [m].</returns>
    public static (double RunningBar, double RiseBar, double LeastM) Pressure(
        LiftBrief lift,
        PipeCard main,
        double lossM,
        WaterState water,
        double flowM3PerH
    )
    {
        var lengthM = Math.Max(1e-9, lift.Route[^1].ChainageM);
        var headsM = lift.Route.Select(point =>
            TopM(lift) + InletHeadM + (lossM * (1 - (point.ChainageM / lengthM))) - point.ElevationM
        );
        var wallM = (main.OuterMm - main.BoreMm) / 2000;
        var waveMPerS = WaveSpeed.MPerS(main.BoreMm / 1000, wallM, main.ModulusGPa * 1e9, 1, water);
        var riseM = WaterHammer.JoukowskyM(waveMPerS, SpeedMPerS(main, flowM3PerH));
        return (
            PressureClass.PressureBar(headsM.Max(), water.DensityKgPerM3),
            PressureClass.PressureBar(riseM, water.DensityKgPerM3),
            TopM(lift) + InletHeadM - lift.Route.Max(point => point.ElevationM) - riseM
        );
    }

    /// <summary>
    /// Largest pressure in the main when a float valve shuts while the pump runs: the pump's closed-valve head, from the highest water,
    /// at the lowest point of the route.
    /// </summary>
    /// <param name="lift">The lift as the brief has it.</param>
    /// <param name="survey">Settled figures.</param>
    /// <param name="water">State of the water.</param>
    /// <param name="shutOffM">Head of the pump against a closed valve [m].</param>
    /// <returns>Pressure [bar], at least 0.</returns>
    public static double ClosedValveBar(LiftBrief lift, Survey survey, WaterState water, double shutOffM)
    {
        var headM = shutOffM - survey.RestLevelM + lift.Route[0].ElevationM - lift.Route.Min(point => point.ElevationM);
        return PressureClass.PressureBar(Math.Max(0, headM), water.DensityKgPerM3);
    }

    /// <summary>How the head was worked out at a flow.</summary>
    /// <param name="survey">Settled figures.</param>
    /// <param name="well">The well.</param>
    /// <param name="flowM3PerH">Flow [m³/h].</param>
    /// <returns>The working.</returns>
    public WorkingSheet Show(Survey survey, Well well, double flowM3PerH)
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
                    "inlet - wellhead + rest level",
                    Invariant($"rest level {well.RestDryM:0.##} m below ground"),
                    System.StaticHeadM,
                    "m",
                    "station/lift",
                    "survey"
                ),
                new(
                    "s",
                    "B Q + C Q²",
                    Invariant(
                        $"B {survey.Drawdown.AquiferSPerM2:0} s/m2, C {survey.Drawdown.WellS2PerM5:0} s2/m5, Q {flow * 1000:0.000} L/s"
                    ),
                    survey.Drawdown.DrawdownM(flow),
                    "m",
                    "water/step-drawdown",
                    "Jacob 1947"
                ),
                Friction("riser", losses[0], RiserM, Riser.BoreMm),
                Friction("main", losses[1], MainM, Main.BoreMm),
                new("h_e", "head left at the inlet", "", InletHeadM, "m", "station/lift", "common practice, no source"),
                new("H", "sum", "", System.HeadM(flow), "m", "water/lift-system", ""),
            ]
        );
    }
}
