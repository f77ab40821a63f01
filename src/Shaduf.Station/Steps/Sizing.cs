using System.Collections.Immutable;
using Shaduf.Power;
using Shaduf.Sun;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>What became of one pump card in the choice.</summary>
/// <param name="Pump">The pump.</param>
/// <param name="Outcome">Chosen, dearer, or why it cannot serve.</param>
/// <param name="Cost">Cost of its cheapest arrangement that serves, in the price book's currency; null when none does.</param>
/// <param name="WorstShare">Share of the demand met by its best arrangement, in the worst month or over the year as the brief asks; null when it lifts no water.</param>
public sealed record PumpVerdict(PumpCard Pump, string Outcome, double? Cost, double? WorstShare);

/// <summary>The limit that keeps every arrangement from serving the brief, and by how much.</summary>
/// <param name="Kind">yield, licence, head, power, curve, drive, cable, casing, cavitation, rack, price, shade.</param>
/// <param name="Says">The limit in plain words.</param>
/// <param name="Value">What is needed.</param>
/// <param name="Allowed">What there is.</param>
/// <param name="Unit">Unit of both.</param>
public sealed record BindingLimit(string Kind, string Says, double Value, double Allowed, string Unit);

/// <summary>The cheapest way to a share of the demand.</summary>
/// <param name="Choice">The arrangement.</param>
/// <param name="Cost">Its cost as far as arrangements differ, in the price book's currency.</param>
/// <param name="Share">Share of the demand met, in the worst month or over the year as the brief asks.</param>
public sealed record FrontPoint(Choice Choice, double Cost, double Share);

/// <summary>The choice of pump, array and tank.</summary>
/// <param name="Choice">What was chosen: the cheapest that serves, or the nearest when none does.</param>
/// <param name="Hydraulics">The chosen pump on its pipes.</param>
/// <param name="Table">Its flow by power.</param>
/// <param name="Losses">Shares of the array's power kept.</param>
/// <param name="ModuleW">Power of one module by hour [W].</param>
/// <param name="Verdicts">What became of each pump card.</param>
/// <param name="Limit">What keeps every arrangement from serving; null when one serves.</param>
/// <param name="Front">The least cost for each share of the demand, cheapest first; empty when no arrangement serves.</param>
/// <param name="Tally">How much the search looked at.</param>
public sealed record Sizing(
    Choice Choice,
    Hydraulics Hydraulics,
    PumpTable Table,
    ArrayLosses Losses,
    ImmutableArray<double> ModuleW,
    IReadOnlyList<PumpVerdict> Verdicts,
    BindingLimit? Limit,
    IReadOnlyList<FrontPoint> Front,
    SearchTally Tally
)
{
    /// <summary>Hottest cell above the record air temperature [K]: 25 to 35 K at 1000 W/m² and little wind (IEC 62548 practice, from memory).</summary>
    public const double CellAboveAirK = 30;

    /// <summary>What a year run of the choice needs.</summary>
    /// <param name="demand">The demand.</param>
    /// <returns>The inputs.</returns>
    public YearInputs Inputs(DemandYear demand) =>
        new(ModuleW, Choice.ModuleCount * Losses.KeptShare, Table, demand.HourM3, Choice.UsefulM3)
        {
            Stops = Stops,
            Limits = Limits,
        };

    /// <summary>Highest speed that the string's voltage allows on the hottest day, as a share of rated speed.</summary>
    public double VoltageSpeedRatio { get; init; } = 1;

    /// <summary>Levels of the tank at which pump and outlet stop.</summary>
    public TankStops Stops { get; init; } = TankStops.None;

    /// <summary>What may be taken from the source, month by month.</summary>
    public SourceLimits Limits { get; init; } = SourceLimits.None;

    /// <summary>Power of one module through the year [W].</summary>
    /// <param name="module">The module.</param>
    /// <param name="year">Weather.</param>
    /// <param name="light">Sun on the modules.</param>
    /// <returns>Power by hour [W].</returns>
    public static ImmutableArray<double> ModuleYearW(ModuleCard module, WeatherYear year, PlaneYear light) =>
        ModuleTable
            .Build(DeSotoFit.Of(module.Sheet).Module)
            .YearW(light.EffectiveWPerM2, CellTemperature.YearDegC(year, light.PlaneWPerM2, module.Sheet.NoctDegC));

    /// <summary>
    /// Arranges every pump with every drive, pipe, array, tilt and tank that fit it, and returns the cheapest that meets
    /// the target, with the least cost for every other share.
    /// </summary>
    /// <param name="ground">All that is settled before the choice.</param>
    /// <returns>The choice.</returns>
    public static Sizing Of(SizingGround ground)
    {
        IReadOnlyList<PumpCard> pumps =
        [
            .. ground
                .Shelf.All<PumpCard>()
                .Where(pump => (ground.Brief.Lift.Pump ?? pump.Name) == pump.Name && ground.Source.Takes(pump)),
        ];
        var results = Searched(ground, pumps, isLoose: false);
        if (!results.Exists(result => result.Serves))
        {
            var poor = results.Where(result => result.Best is null).Select(result => result.Pump).ToList();
            var loose = Searched(ground, poor, isLoose: true).ToDictionary(result => result.Pump);
            results = [.. results.Select(result => loose.GetValueOrDefault(result.Pump, result))];
        }

        var chosen = CheapestOrNearest(results);
        var best = chosen.Best!;
        return new(
            best.Choice,
            best.Hydraulics,
            best.Table,
            ground.Losses,
            best.Module.PowerW,
            [.. results.Select(result => Verdict(result, chosen))],
            chosen.Serves ? null : BindingLimits.Of(ground, chosen, results),
            FrontOf(results),
            new(results.Sum(result => result.Tally.CandidateCount), results.Sum(result => result.Tally.RunCount))
        )
        {
            Stops = ground.Stops,
            Limits = ground.Source.Limits,
            VoltageSpeedRatio = PumpLines.SpeedRatio(
                best.Hydraulics,
                best.Choice.Module,
                best.Choice.SeriesCount,
                ground
            ),
        };
    }

    // Each pump by itself, so that the answer does not depend on which is done first.
    private static List<PumpSearch> Searched(SizingGround ground, IReadOnlyList<PumpCard> pumps, bool isLoose)
    {
        var results = new PumpSearch[pumps.Count];
        Parallel.For(0, pumps.Count, i => results[i] = new ArrangementSearch(ground, isLoose).Best(pumps[i]));
        return [.. results];
    }

    private static IReadOnlyList<FrontPoint> FrontOf(List<PumpSearch> results)
    {
        var front = new CostFront();
        foreach (
            var each in results.SelectMany(result => result.Front).Where(each => front.Takes(each.Cost, each.Share))
        )
        {
            front.Add(each);
        }

        return [.. front.Points.Select(each => new FrontPoint(each.Choice, each.Cost, each.Share))];
    }

    private static PumpSearch CheapestOrNearest(List<PumpSearch> results) =>
        results.Where(result => result.Serves).MinBy(result => result.Best!.Cost)
        ?? results
            .Where(result => result.Best is not null)
            .OrderBy(result => result.Why == "casing")
            .ThenByDescending(result => result.Share)
            .ThenBy(result => result.Why == "cable")
            .ThenBy(result => result.Best!.Cost)
            .FirstOrDefault()
        ?? throw new InvalidOperationException("no pump card could be arranged at all");

    private static PumpVerdict Verdict(PumpSearch result, PumpSearch chosen)
    {
        var cost = result.Serves ? result.Best!.Cost : (double?)null;
        var outcome = (result.Serves, result == chosen) switch
        {
            (true, true) => "chosen: the cheapest that meets the target",
            (false, true) => $"nearest to the target; {result.WhyNot}",
            (true, false) => Invariant($"meets the target, {(cost / chosen.Best!.Cost - 1) * 100:0} % dearer"),
            _ => result.WhyNot,
        };
        return new(result.Pump, outcome, cost, result.Share);
    }
}
