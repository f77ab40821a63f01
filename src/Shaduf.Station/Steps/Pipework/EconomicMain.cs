namespace Shaduf.Station;

/// <summary>What the whole arrangement costs with one main.</summary>
/// <param name="Main">The main.</param>
/// <param name="SpeedMPerS">Speed of the water at the chosen flow [m/s].</param>
/// <param name="PipeCost">Cost of the main; null when a rate is missing.</param>
/// <param name="Cost">Cost of the cheapest arrangement with it that serves; null when none does.</param>
/// <param name="ModuleCount">Modules of that arrangement.</param>
public sealed record MainCost(MainLay Main, double SpeedMPerS, double? PipeCost, double? Cost, int ModuleCount);

/// <summary>The economic diameter: a wider main costs pipe, a narrower one costs array.</summary>
/// <param name="Mains">Each main that holds, narrowest first.</param>
public sealed record EconomicMain(IReadOnlyList<MainCost> Mains)
{
    // Slower water than this is not worth a row [m/s].
    private const double SlowestMPerS = 0.2;

    /// <summary>Searches the chosen pump's arrangements again with each main alone, slow ones too.</summary>
    /// <param name="ground">All that is settled before the choice.</param>
    /// <param name="sizing">The choice.</param>
    /// <returns>The costs; only the chosen main when the brief names one or nothing serves.</returns>
    public static EconomicMain Of(SizingGround ground, Sizing sizing)
    {
        var (choice, curve) = (sizing.Choice, sizing.Hydraulics.Curve);
        var flowM3PerH = Math.Min(curve.BestFlowM3PerS * 3600, ground.Source.YieldM3PerH);
        IReadOnlyList<MainLay> mains = [choice.Lift.Lay];
        if (ground.Brief.Lift.Main is null && sizing.Limit is null)
        {
            mains =
            [
                .. Pipes
                    .Holding(ground, flowM3PerH, curve.ShutOffHeadM)
                    .Where(main => Lift.SpeedMPerS(main.Narrowest, flowM3PerH) >= SlowestMPerS),
            ];
        }

        return new([
            .. mains
                .AsParallel()
                .AsOrdered()
                .Select(main => CostOf(ground, main, choice.Pump, sizing.Table.FullFlowM3PerH)),
        ]);
    }

    private static MainCost CostOf(SizingGround ground, MainLay main, PumpCard pump, double flowM3PerH)
    {
        var found = new ArrangementSearch(ground with { OnlyMain = main }, isLoose: false)
        {
            IsForCheapest = true,
        }.Best(pump);
        var best = found.Serves ? found.Best : null;
        return new(
            main,
            Lift.SpeedMPerS(main.Narrowest, flowM3PerH),
            ground.Prices.OfMain(main),
            best?.Cost,
            best?.Choice.ModuleCount ?? 0
        );
    }
}
