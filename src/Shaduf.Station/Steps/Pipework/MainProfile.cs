using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>The heads at a place of the pumped main.</summary>
/// <param name="ChainageM">Distance along the route [m].</param>
/// <param name="LevelM">Level of the ground [m].</param>
/// <param name="GradeM">Level of the hydraulic grade line while the pump runs [m].</param>
/// <param name="RunningBar">Pressure while the pump runs [bar].</param>
/// <param name="ClosedBar">Pressure against a shut valve, the surge with it where a float valve is meant to shut [bar].</param>
/// <param name="NeededBar">Pressure that the pipe must carry: running and surge, or against the shut valve [bar].</param>
/// <param name="Pipe">The pipe there.</param>
/// <param name="AllowedBar">Pressure that it may carry [bar].</param>
public sealed record MainPoint(
    double ChainageM,
    double LevelM,
    double GradeM,
    double RunningBar,
    double ClosedBar,
    double NeededBar,
    PipeCard Pipe,
    double AllowedBar
);

/// <summary>Pressure along the pumped main: running, stopping hard, and against a shut valve.</summary>
/// <param name="Points">Places along the route: its points and both sides of each change of pipe.</param>
/// <param name="RiseM">Rise, and fall, when the pump stops hard [m].</param>
/// <param name="LeastM">Least head along the main then, against the air outside [m].</param>
public sealed record MainProfile(IReadOnlyList<MainPoint> Points, double RiseM, double LeastM)
{
    // Head that no pipe holds [m]: what a thread of a pipe would need for the flow of the best pump.
    internal const double BeyondM = 9000;

    /// <summary>The place where the pipe has least to spare.</summary>
    public MainPoint Worst => Points.MaxBy(point => point.NeededBar / point.AllowedBar)!;

    /// <summary>The place of the largest pressure.</summary>
    public MainPoint Highest => Points.MaxBy(point => point.NeededBar)!;

    /// <summary>The place of a reach where most is needed.</summary>
    /// <param name="reach">The reach.</param>
    /// <returns>The place.</returns>
    public MainPoint WorstOf(MainReach reach) =>
        Points
            .Where(point => point.Pipe == reach.Pipe)
            .Where(point => point.ChainageM >= reach.FromM && point.ChainageM <= reach.ToM)
            .MaxBy(point => point.NeededBar)!;

    /// <summary>Whether the main holds everywhere.</summary>
    public bool Holds => Points.All(point => point.NeededBar <= point.AllowedBar);

    /// <summary>Pressures along a main.</summary>
    /// <param name="duty">Route, water and pump.</param>
    /// <param name="lay">The main.</param>
    /// <returns>The profile.</returns>
    public static MainProfile Of(MainDuty duty, MainLay lay)
    {
        var (riseM, grade, ground) = (duty.RiseM(lay), Grade(duty, lay), Lift.ProfileOf(duty.Lift));
        var points = lay.Reaches.SelectMany(reach =>
            ground
                .Where(point => point.ChainageM > reach.FromM && point.ChainageM < reach.ToM)
                .Prepend(RouteProfile.At(ground, reach.FromM))
                .Append(RouteProfile.At(ground, reach.ToM))
                .Select(point => PointOf(duty, point, reach.Pipe, grade(point.ChainageM), riseM))
        );
        return new(
            [.. points],
            riseM,
            Lift.TopM(duty.Lift) + Lift.InletHeadM - ground.Max(point => point.LevelM) - riseM
        );
    }

    private static MainPoint PointOf(MainDuty duty, ProfilePoint at, PipeCard pipe, double gradeM, double riseM)
    {
        double Bar(double headM) =>
            headM > BeyondM
                ? double.PositiveInfinity
                : PressureClass.PressureBar(Math.Max(0, headM), duty.Water.DensityKgPerM3);
        var closedBar = duty.ClosedBar(at.LevelM, riseM);
        return new(
            at.ChainageM,
            at.LevelM,
            gradeM,
            Bar(gradeM - at.LevelM),
            closedBar,
            Math.Max(Bar(gradeM + riseM - at.LevelM), closedBar),
            pipe,
            Lift.AllowedBar(pipe, duty.PipeDegC)
        );
    }

    // Level of the hydraulic grade line: back from the inlet, each reach's loss evenly along it.
    private static Func<double, double> Grade(MainDuty duty, MainLay lay)
    {
        var losses = lay.Runs(duty.Lift)
            .Select(run => DarcyWeisbach.Loss(run, duty.FlowM3PerH / 3600, duty.Water.KinematicViscosityM2PerS).TotalM)
            .ToList();
        var endM = Lift.TopM(duty.Lift) + Lift.InletHeadM;
        return chainageM =>
            endM
            + lay.Reaches.Zip(
                    losses,
                    (reach, lossM) =>
                        lossM * Math.Clamp((reach.ToM - chainageM) / Math.Max(1e-9, reach.ToM - reach.FromM), 0, 1)
                )
                .Sum();
    }
}

/// <summary>What a pumped main must bear.</summary>
/// <param name="Lift">The lift as the brief has it.</param>
/// <param name="Water">State of the water.</param>
/// <param name="PipeDegC">Temperature for the strength of the pipe [°C].</param>
/// <param name="FlowM3PerH">Flow [m³/h].</param>
/// <param name="ClosedM">Level to which the pump presses the water against a shut valve, from the highest water at the source [m].</param>
public sealed record MainDuty(LiftBrief Lift, WaterState Water, double PipeDegC, double FlowM3PerH, double ClosedM)
{
    /// <summary>The duty of a station's main.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="flowM3PerH">Flow [m³/h].</param>
    /// <param name="shutOffM">Head of the pump against a shut valve [m].</param>
    /// <returns>The duty.</returns>
    public static MainDuty Of(Brief brief, Survey survey, double flowM3PerH, double shutOffM) =>
        new(
            brief.Lift,
            WaterState.At(survey["water-temperature"]),
            survey["pipe-temperature"],
            flowM3PerH,
            survey.Source.HighestWaterM(brief.Lift.Route[0].ElevationM) + shutOffM
        );

    /// <summary>Pressure against a shut valve; with the surge when a float valve is there to shut while the pump runs [bar].</summary>
    /// <param name="levelM">Level of the pipe [m].</param>
    /// <param name="riseM">Rise when the pump stops hard [m].</param>
    /// <returns>Pressure [bar], at least 0.</returns>
    public double ClosedBar(double levelM, double riseM) =>
        PressureClass.PressureBar(
            Math.Max(0, ClosedM + (Lift.TankFull == TankFullStop.PressureStop ? riseM : 0) - levelM),
            Water.DensityKgPerM3
        );

    /// <summary>Rise when the pump stops hard: the largest of the reaches, nowhere lessened along the way [m].</summary>
    /// <param name="lay">The main.</param>
    /// <returns>Rise [m].</returns>
    public double RiseM(MainLay lay) => lay.Reaches.Max(reach => RiseM(reach.Pipe));

    /// <summary>Rise when the pump stops hard in one pipe [m].</summary>
    /// <param name="pipe">The pipe.</param>
    /// <returns>Rise [m].</returns>
    public double RiseM(PipeCard pipe) =>
        WaterHammer.JoukowskyM(WaveMPerS(pipe), Station.Lift.SpeedMPerS(pipe, FlowM3PerH));

    /// <summary>Speed of a pressure wave in a pipe that is free to move [m/s].</summary>
    /// <param name="pipe">The pipe.</param>
    /// <returns>Speed [m/s].</returns>
    public double WaveMPerS(PipeCard pipe) =>
        WaveSpeed.MPerS(pipe.BoreMm / 1000, (pipe.OuterMm - pipe.BoreMm) / 2000, pipe.ModulusGPa * 1e9, 1, Water);
}
