using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>Which pipes an arrangement may use.</summary>
internal static class Pipes
{
    // Slower than this a pumped main costs pipe for nothing; the next size down is tried anyway.
    private const double SlowestMPerS = 0.35;

    /// <summary>Mains that the search tries: those of <see cref="Holding"/> that are not too slow; when none holds, the widest of the strongest.</summary>
    public static IReadOnlyList<MainLay> Mains(SizingGround ground, double flowM3PerH, double shutOffM)
    {
        if (ground.OnlyMain is { } only)
        {
            return [only];
        }

        var lift = ground.Brief.Lift;
        if (lift.Main is { } name)
        {
            return [MainLay.Of(lift, ground.Shelf.Find<PipeCard>(name)!)];
        }

        var quick = Holding(ground, flowM3PerH, shutOffM);
        var narrowestMm = quick.Count > 0 ? quick[0].Narrowest.OuterMm : 0;
        var useful = quick
            .Where(lay =>
                lay.Narrowest.OuterMm == narrowestMm || Lift.SpeedMPerS(lay.Narrowest, flowM3PerH) >= SlowestMPerS
            )
            .ToList();
        return useful.Count > 0 ? useful : [MainLay.Of(lift, WidestOfStrongest(ground))];
    }

    private static PipeCard WidestOfStrongest(SizingGround ground) =>
        Cards(ground, PipeUse.Main)
            .OrderByDescending(pipe => pipe.PressureBar)
            .ThenByDescending(pipe => pipe.BoreMm)
            .First();

    /// <summary>
    /// Every main whose water is not too fast and that holds the pressure everywhere: each pipe by itself, and each
    /// diameter with its class changing along the way; narrowest first.
    /// </summary>
    public static IReadOnlyList<MainLay> Holding(SizingGround ground, double flowM3PerH, double shutOffM)
    {
        var duty = MainDuty.Of(ground.Brief, ground.Survey, flowM3PerH, shutOffM);
        return
        [
            .. Cards(ground, PipeUse.Main)
                .Where(pipe => Lift.SpeedMPerS(pipe, flowM3PerH) <= Lift.FastestMainMPerS)
                .GroupBy(pipe => (pipe.OuterMm, pipe.LosesStrengthWhenWarm, pipe.ModulusGPa))
                .SelectMany(classes => OfOneDiameter(duty, [.. classes]))
                .OrderBy(lay => lay.Narrowest.BoreMm)
                .ThenBy(lay => lay.Reaches.Count),
        ];
    }

    private static IEnumerable<MainLay> OfOneDiameter(MainDuty duty, IReadOnlyList<PipeCard> classes)
    {
        var whole = classes.Select(pipe => MainLay.Of(duty.Lift, pipe)).Where(lay => MainProfile.Of(duty, lay).Holds);
        return MainClasses.Graded(duty, classes) is { Reaches.Count: > 1 } graded ? whole.Append(graded) : whole;
    }

    /// <summary>The cards of pipe that may be used somewhere.</summary>
    internal static IEnumerable<PipeCard> Cards(SizingGround ground, PipeUse use) =>
        ground.Shelf.All<PipeCard>().Where(pipe => pipe.Uses.Contains(use));
}
