using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A block of concrete that holds a bend or an end.</summary>
/// <param name="What">What it holds.</param>
/// <param name="ChainageM">Where along the route [m].</param>
/// <param name="ForceKN">Force at the test pressure [kN].</param>
/// <param name="BearingM2">Area against the ground [m²].</param>
public sealed record Block(string What, double ChainageM, double ForceKN, double BearingM2)
{
    // Least side of a block, and its thickness as a share of the side; common practice, no source.
    private const double LeastSideM = 0.30;
    private const double ThicknessShare = 0.75;

    /// <summary>Side of its square face [m].</summary>
    public double SideM => Math.Max(LeastSideM, Math.Sqrt(BearingM2));

    /// <summary>Concrete [m³].</summary>
    public double ConcreteM3 => ThicknessShare * Math.Pow(SideM, 3);
}

/// <summary>Pressure test and flushing of the laid main.</summary>
/// <param name="DesignBar">Largest pressure in use, surge included [bar].</param>
/// <param name="TestBar">Test pressure at the lowest point [bar].</param>
/// <param name="TightBar">Test pressure where the pipe has least to spare [bar].</param>
/// <param name="LimitBar">Most that the pipe there may be tested with [bar].</param>
/// <param name="VolumeL">Water in the main [L].</param>
/// <param name="AddedL">Water pumped in to reach the test pressure [L].</param>
/// <param name="LetDownBar">Pressure let down after an hour [bar].</param>
/// <param name="MostReleasedL">Most water that may come out then [L].</param>
/// <param name="FlushLPerS">Flow that flushes it [L/s].</param>
/// <param name="FlushM3">Water run to waste [m³].</param>
/// <param name="ChlorineKg">High-test hypochlorite for a day [kg].</param>
public sealed record MainTest(
    double DesignBar,
    double TestBar,
    double TightBar,
    double LimitBar,
    double VolumeL,
    double AddedL,
    double LetDownBar,
    double MostReleasedL,
    double FlushLPerS,
    double FlushM3,
    double ChlorineKg
);

/// <summary>The pumped main as it is built.</summary>
/// <param name="Profile">Pressures along it.</param>
/// <param name="Marks">Air valves, washouts, line valves.</param>
/// <param name="Trench">Trench.</param>
/// <param name="Blocks">Thrust blocks.</param>
/// <param name="Test">Test and flushing.</param>
/// <param name="TankFull">How the pump stops when the tank is full.</param>
public sealed record MainWorks(
    MainProfile Profile,
    IReadOnlyList<RouteMark> Marks,
    Trenches Trench,
    IReadOnlyList<Block> Blocks,
    MainTest Test,
    TankFull TankFull
)
{
    // A bend below this is taken up by the pipe itself; common practice, no source.
    private const double LeastBendDeg = 10;

    // Let down after an hour: 3.2 bar for pipe of 16 bar (DVGW W 400-2, from notes that quote it), else in proportion.
    private const double LetDownShare = 0.2;
    private const double DoseMgPerL = 50;
    private const double ProductShare = 0.65;

    // Modulus of plastic through an hour's test [GPa]; metal keeps its card's.
    private const double SlowPlasticGPa = 0.8;

    /// <summary>The works of a main.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="sizing">The choice.</param>
    /// <param name="book">The price book.</param>
    /// <returns>The works.</returns>
    public static MainWorks Of(Brief brief, Survey survey, Sizing sizing, Money.PriceBook book)
    {
        var lay = sizing.Choice.Lift.Lay;
        var full = TankFull.Of(brief, survey, sizing, book);
        var duty = MainDuty.Of(
            brief with
            {
                Lift = brief.Lift with { TankFull = full.Way },
            },
            survey,
            sizing.Table.FullFlowM3PerH,
            sizing.Hydraulics.Curve.ShutOffHeadM
        );
        var profile = MainProfile.Of(duty, lay);
        var marks = RouteProfile.Marks(Lift.ProfileOf(brief.Lift));
        var test = TestOf(profile, lay);
        var ground = PipeGround.Of(brief.Site.Soil);
        return new(
            profile,
            marks,
            Trenches.Of(lay.Reaches.Select(reach => (reach.Pipe, reach.LengthM)), survey["cover"], ground),
            [.. Held(brief.Lift, lay, marks).Select(each => Holding(each, test, profile, ground))],
            test,
            full
        );
    }

    /// <summary>Findings of the works.</summary>
    /// <param name="pumpM3PerH">Largest flow of the pump [m³/h].</param>
    /// <returns>The findings.</returns>
    public IEnumerable<Finding> Findings(double pumpM3PerH) =>
        [
            Finding.AtMost(
                "pipe/test-pressure",
                Test.TightBar,
                Test.LimitBar,
                "bar",
                "test pressure of the main where it has least to spare against 1.5 times the class of the pipe there",
                "EN 805:2000, from notes that quote it"
            ),
            Flush(pumpM3PerH / 3.6),
            Thrust(Blocks.MaxBy(block => block.ForceKN)!),
            .. TankFull.Findings(),
        ];

    private Finding Flush(double pumpLPerS) =>
        new(
            "pipe/flush",
            pumpLPerS >= Test.FlushLPerS ? FindingStatus.Holds : FindingStatus.Look,
            pumpLPerS >= Test.FlushLPerS
                ? "the pump flushes the main at 0.75 m/s"
                : "the pump is too slow to flush the main at 0.75 m/s: fill it and empty it in lengths through the washouts",
            pumpLPerS,
            Test.FlushLPerS,
            "L/s",
            "common practice, no source"
        );

    private Finding Thrust(Block largest) =>
        new(
            "pipe/thrust",
            FindingStatus.Holds,
            Invariant(
                $"{Blocks.Count} thrust blocks; the largest holds {largest.What} at {largest.ChainageM:0} m with a face of {largest.SideM:0.00} x {largest.SideM:0.00} m"
            ),
            largest.ForceKN,
            null,
            "kN",
            "statics at the test pressure; ground from memory"
        );

    private static MainTest TestOf(MainProfile profile, MainLay lay)
    {
        var testBar = PressureTest.TestBar(profile.Highest.NeededBar);
        var tight = profile
            .Points.Select(point => (Bar: HereBar(testBar, profile, point), LimitBar: 1.5 * point.Pipe.PressureBar))
            .MaxBy(each => each.Bar / each.LimitBar);
        var letDownBar = LetDownShare * lay.Reaches.Min(reach => reach.Pipe.PressureBar);
        var volumeL = lay.Reaches.Sum(VolumeL);
        return new(
            profile.Highest.NeededBar,
            testBar,
            tight.Bar,
            tight.LimitBar,
            volumeL,
            lay.Reaches.Sum(reach => Elastic(PressureTest.AddedL, reach, testBar)),
            letDownBar,
            lay.Reaches.Sum(reach => Elastic(PressureTest.MostReleasedL, reach, letDownBar)),
            lay.Reaches.Max(reach => PipeFlush.FlowLPerS(reach.Pipe.BoreMm, PipeFlush.LeastMPerS)),
            PipeFlush.VolumesCount * volumeL / 1000,
            PipeFlush.ProductKg(volumeL, DoseMgPerL, ProductShare)
        );
    }

    private static double VolumeL(MainReach reach) => PipeFlush.VolumeL(reach.Pipe.BoreMm, reach.LengthM);

    // Water that a change of pressure takes up or gives back in one reach.
    private static double Elastic(Func<double, double, double, double, double> form, MainReach reach, double bar)
    {
        var pipe = reach.Pipe;
        var modulusGPa = pipe.LosesStrengthWhenWarm ? Math.Min(SlowPlasticGPa, pipe.ModulusGPa) : pipe.ModulusGPa;
        return form(VolumeL(reach), bar * 100, pipe.BoreMm / ((pipe.OuterMm - pipe.BoreMm) / 2), 1e6 * modulusGPa);
    }

    // Ends, branches and bends, each with its change of direction; 0 for an end.
    private static IEnumerable<(string What, double ChainageM, double BendDeg)> Held(
        LiftBrief lift,
        MainLay lay,
        IReadOnlyList<RouteMark> marks
    )
    {
        yield return ("the end at the source", 0, 0);
        foreach (var mark in marks.Where(mark => mark.Fitting != RouteFitting.AirValve))
        {
            yield return (
                mark.Fitting == RouteFitting.Washout ? "a washout's tee" : "a line valve",
                mark.At.ChainageM,
                0
            );
        }

        for (var i = 1; i < lift.Route.Count - 1; i++)
        {
            var upright = Math.Abs(SlopeDeg(lift, i) - SlopeDeg(lift, i - 1));
            var bend = Math.Max(lift.Route[i].BendDeg ?? 0, upright);
            if (bend >= LeastBendDeg)
            {
                yield return (Invariant($"a bend of {bend:0} deg"), lift.Route[i].ChainageM, bend);
            }
        }

        yield return ("the foot of the rise to the tank", lift.Route[^1].ChainageM, 90);
    }

    private static double SlopeDeg(LiftBrief lift, int from) =>
        Math.Atan2(
            lift.Route[from + 1].ElevationM - lift.Route[from].ElevationM,
            lift.Route[from + 1].ChainageM - lift.Route[from].ChainageM
        )
        * 180
        / Math.PI;

    // The test pressure stands at the lowest point; higher up the water column takes it off.
    private static double HereBar(double testBar, MainProfile profile, MainPoint here) =>
        Math.Max(0, testBar - PressureClass.PressureBar(here.LevelM - profile.Points.Min(point => point.LevelM), 1000));

    private static Block Holding(
        (string What, double ChainageM, double BendDeg) each,
        MainTest test,
        MainProfile profile,
        PipeGround ground
    )
    {
        var here = profile.Points.MinBy(point => Math.Abs(point.ChainageM - each.ChainageM))!;
        var bar = HereBar(test.TestBar, profile, here);
        var forceKN =
            each.BendDeg > 0
                ? ThrustBlock.BendKN(bar, here.Pipe.OuterMm, each.BendDeg)
                : ThrustBlock.EndKN(bar, here.Pipe.OuterMm);
        return new(each.What, each.ChainageM, forceKN, ThrustBlock.BearingM2(forceKN, ground.ThrustKPa));
    }
}
