using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>Which pipes an arrangement may use.</summary>
internal static class Pipes
{
    // Slower than this a pumped main costs pipe for nothing; the next size down is tried anyway.
    private const double SlowestMPerS = 0.35;

    /// <summary>The two narrowest risers that carry the flow, the pump's closed-valve head and what hangs on them; the widest when none does.</summary>
    public static IReadOnlyList<PipeCard> Risers(SizingGround ground, PumpCard pump, double flowM3PerH, double shutOffM)
    {
        if (ground.Brief.Lift.Riser is { } name)
        {
            return [ground.Shelf.Find<PipeCard>(name)!];
        }

        var pressureBar = PressureClass.PressureBar(shutOffM, 1000);
        var degC = ground.Survey["pipe-temperature"];
        var all = NarrowestFirst(ground, PipeUse.Riser);
        var fit = all.Where(pipe =>
                Lift.SpeedMPerS(pipe, flowM3PerH) <= Lift.FastestRiserMPerS
                && Lift.AllowedBar(pipe, degC) >= pressureBar
                && WellBuild.Carries(pipe, pump.MassKg, ground)
            )
            .Take(2)
            .ToList();
        return fit.Count > 0
            ? fit
            :
            [
                all.OrderByDescending(pipe => Lift.AllowedBar(pipe, degC) >= pressureBar)
                    .ThenByDescending(pipe => pipe.BoreMm)
                    .First(),
            ];
    }

    /// <summary>Mains whose speed fits and that hold the pressure, running, stopping hard and against a closed valve; narrowest first; when none fits, the widest of the strongest.</summary>
    public static IReadOnlyList<PipeCard> Mains(SizingGround ground, double flowM3PerH, double shutOffM)
    {
        if (ground.Brief.Lift.Main is { } name)
        {
            return [ground.Shelf.Find<PipeCard>(name)!];
        }

        var degC = ground.Survey["pipe-temperature"];
        var water = WaterState.At(ground.Survey["water-temperature"]);
        var closedBar = Lift.ClosedValveBar(ground.Brief.Lift, ground.Survey, water, shutOffM);
        var all = NarrowestFirst(ground, PipeUse.Main);
        var quick = all.Where(pipe =>
                Lift.SpeedMPerS(pipe, flowM3PerH) <= Lift.FastestMainMPerS
                && Math.Max(Bar(pipe), closedBar) <= Lift.AllowedBar(pipe, degC)
            )
            .ToList();
        var useful = quick.Where((pipe, i) => i == 0 || Lift.SpeedMPerS(pipe, flowM3PerH) >= SlowestMPerS).ToList();
        return useful.Count > 0
            ? useful
            : [all.OrderByDescending(pipe => pipe.PressureBar).ThenByDescending(pipe => pipe.BoreMm).First()];

        double Bar(PipeCard pipe)
        {
            var run = Lift.MainRun(ground.Brief.Lift, pipe);
            var lossM = DarcyWeisbach.Loss(run, flowM3PerH / 3600, water.KinematicViscosityM2PerS).TotalM;
            var (runningBar, riseBar, _) = Lift.Pressure(ground.Brief.Lift, pipe, lossM, water, flowM3PerH);
            return runningBar + riseBar;
        }
    }

    private static List<PipeCard> NarrowestFirst(SizingGround ground, PipeUse use) =>
        ground.Shelf.All<PipeCard>().Where(pipe => pipe.Uses.Contains(use)).OrderBy(pipe => pipe.BoreMm).ToList();
}
