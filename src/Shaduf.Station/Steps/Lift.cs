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
        var fittings = brief.Lift.Fittings.Sum(fitting =>
            fitting.Count * FittingLoss.Coefficient(fitting.Kind, main.BoreMm / 1000)
        );
        var system = new LiftSystem(
            Math.Max(brief.Lift.InletM, brief.Lift.Route.Max(point => point.ElevationM)) - wellheadM + well.RestDryM,
            survey.Drawdown,
            [
                new(riser.BoreMm / 1000, riser.RoughnessMm / 1000, well.PumpSettingM, 0),
                new(main.BoreMm / 1000, main.RoughnessMm / 1000, mainM, fittings),
            ],
            InletHeadM,
            water.KinematicViscosityM2PerS
        )
        {
            DensityKgPerM3 = water.DensityKgPerM3,
        };
        return new(riser, main, well.PumpSettingM, mainM, system, water);
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

    /// <summary>Pressure at the lowest point of the main with the pump at rest, and the rise when it stops hard [bar].</summary>
    /// <param name="lift">The lift as the brief has it.</param>
    /// <param name="main">The main.</param>
    /// <param name="water">State of the water.</param>
    /// <param name="flowM3PerH">Flow before the stop [m³/h].</param>
    /// <returns>Static pressure and rise [bar].</returns>
    public static (double StaticBar, double RiseBar) Pressure(
        LiftBrief lift,
        PipeCard main,
        WaterState water,
        double flowM3PerH
    )
    {
        var lowestM = lift.Route.Min(point => point.ElevationM);
        var wallM = (main.OuterMm - main.BoreMm) / 2000;
        var waveMPerS = WaveSpeed.MPerS(main.BoreMm / 1000, wallM, main.ModulusGPa * 1e9, 1, water);
        var riseM = WaterHammer.JoukowskyM(waveMPerS, SpeedMPerS(main, flowM3PerH));
        return (
            PressureClass.PressureBar(lift.InletM - lowestM + InletHeadM, water.DensityKgPerM3),
            PressureClass.PressureBar(riseM, water.DensityKgPerM3)
        );
    }

    /// <summary>Findings of the pipes for the flow chosen.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="flowM3PerH">Largest flow of the year [m³/h].</param>
    /// <param name="shutOffM">Head of the pump against a closed valve [m].</param>
    /// <returns>The findings.</returns>
    public IEnumerable<Finding> Findings(Brief brief, Survey survey, double flowM3PerH, double shutOffM)
    {
        var degC = survey["water-temperature"];
        yield return Finding.AtMost(
            "lift/main-speed",
            SpeedMPerS(Main, flowM3PerH),
            FastestMainMPerS,
            "m/s",
            "water in the main at the largest flow",
            "plastic mains preferably at most 1.5 m/s (rural pipe guide)"
        );
        yield return Finding.AtMost(
            "lift/riser-speed",
            SpeedMPerS(Riser, flowM3PerH),
            FastestRiserMPerS,
            "m/s",
            "water in the riser at the largest flow",
            "common practice, no source"
        );
        var (staticBar, riseBar) = Pressure(brief.Lift, Main, Water, flowM3PerH);
        yield return Finding.AtMost(
            "lift/main-pressure",
            staticBar + riseBar,
            AllowedBar(Main, degC),
            "bar",
            Invariant(
                $"the main at its lowest point: {staticBar:0.0} bar at rest and {riseBar:0.0} bar more when the pump stops hard"
            ),
            "Joukowsky; pressure class by temperature, EN 12201-1 (from memory)"
        );
        yield return Finding.AtMost(
            "lift/riser-pressure",
            PressureClass.PressureBar(shutOffM, Water.DensityKgPerM3),
            AllowedBar(Riser, degC),
            "bar",
            "the riser against the pump's head at a closed valve",
            "pump card and pipe card"
        );
        var heightM = brief.Lift.Route.Max(point => point.ElevationM);
        yield return new(
            "lift/summit",
            heightM > brief.Lift.InletM ? FindingStatus.Look : FindingStatus.Holds,
            heightM > brief.Lift.InletM
                ? "the route rises above the tank's inlet: the head is taken to the summit; air and vacuum there need a specialist"
                : "no point of the route lies above the tank's inlet",
            heightM,
            brief.Lift.InletM,
            "m",
            "hydraulic grade line"
        );
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
