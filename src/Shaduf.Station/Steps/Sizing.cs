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
/// <param name="WorstShare">Share of the demand met in the worst month by its best arrangement; null when it lifts no water.</param>
public sealed record PumpVerdict(PumpCard Pump, string Outcome, double? Cost, double? WorstShare);

/// <summary>The limit that keeps every arrangement from serving the brief, and by how much.</summary>
/// <param name="Kind">yield, head, power, curve, drive, casing, rack, price.</param>
/// <param name="Says">The limit in plain words.</param>
/// <param name="Value">What is needed.</param>
/// <param name="Allowed">What there is.</param>
/// <param name="Unit">Unit of both.</param>
public sealed record BindingLimit(string Kind, string Says, double Value, double Allowed, string Unit);

/// <summary>The choice of pump, array and tank.</summary>
/// <param name="Choice">What was chosen: the cheapest that serves, or the nearest when none does.</param>
/// <param name="Hydraulics">The chosen pump on its pipes.</param>
/// <param name="Table">Its flow by power.</param>
/// <param name="Losses">Shares of the array's power kept.</param>
/// <param name="ModuleW">Power of one module by hour [W].</param>
/// <param name="Verdicts">What became of each pump card.</param>
/// <param name="Limit">What keeps every arrangement from serving; null when one serves.</param>
/// <param name="RunCount">Year runs made.</param>
public sealed record Sizing(
    Choice Choice,
    Hydraulics Hydraulics,
    PumpTable Table,
    ArrayLosses Losses,
    ImmutableArray<double> ModuleW,
    IReadOnlyList<PumpVerdict> Verdicts,
    BindingLimit? Limit,
    int RunCount
)
{
    /// <summary>Hottest cell above the record air temperature [K]: 25 to 35 K at 1000 W/m² and little wind (IEC 62548 practice, from memory).</summary>
    public const double CellAboveAirK = 30;

    /// <summary>What a year run of the choice needs.</summary>
    /// <param name="demand">The demand.</param>
    /// <returns>The inputs.</returns>
    public YearInputs Inputs(DemandYear demand) =>
        new(ModuleW, Choice.ModuleCount * Losses.KeptShare, Table, demand.HourM3, Choice.UsefulM3);

    /// <summary>Power of one module through the year [W].</summary>
    /// <param name="module">The module.</param>
    /// <param name="year">Weather.</param>
    /// <param name="planeWPerM2">Sun on the plane [W/m²].</param>
    /// <returns>Power by hour [W].</returns>
    public static ImmutableArray<double> ModuleYearW(
        ModuleCard module,
        WeatherYear year,
        ImmutableArray<double> planeWPerM2
    ) =>
        ModulePower.YearW(
            module.Sheet,
            planeWPerM2,
            CellTemperature.YearDegCByNoct(year, planeWPerM2, module.Sheet.NoctDegC)
        );

    /// <summary>
    /// Arranges every pump with every drive, main, array and tank that fit it, prices each arrangement, and runs the
    /// year from the cheapest upwards until one meets the target in the worst month.
    /// </summary>
    /// <param name="ground">All that is settled before the choice.</param>
    /// <returns>The choice.</returns>
    public static Sizing Of(SizingGround ground)
    {
        var search = new ArrangementSearch(ground, isLoose: false);
        var results = ground.Shelf.All<PumpCard>().Select(search.Best).ToList();
        if (!results.Exists(result => result.Serves))
        {
            var loose = new ArrangementSearch(ground, isLoose: true);
            results = [.. results.Select(result => result.Best is null ? loose.Best(result.Pump) : result)];
        }

        var chosen = CheapestOrNearest(results);
        var best = chosen.Best!;
        return new(
            best.Choice,
            best.Hydraulics,
            best.Table,
            ground.Losses,
            best.ModuleW,
            [.. results.Select(result => Verdict(result, chosen))],
            chosen.Serves ? null : BindingLimits.Of(ground, chosen, results),
            search.RunCount
        );
    }

    private static PumpSearch CheapestOrNearest(List<PumpSearch> results) =>
        results.Where(result => result.Serves).MinBy(result => result.Best!.Cost)
        ?? results
            .Where(result => result.Best is not null)
            .OrderBy(result => result.Why == "casing")
            .ThenByDescending(result => result.WorstShare)
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
        return new(result.Pump, outcome, cost, result.WorstShare);
    }
}

/// <summary>All that is settled before pump, array and tank are chosen.</summary>
/// <param name="Brief">The brief.</param>
/// <param name="Survey">Its settled figures.</param>
/// <param name="Sky">Sun and tilt.</param>
/// <param name="Demand">Demand by hour.</param>
/// <param name="Well">Levels and yield.</param>
/// <param name="Shelf">The cards.</param>
/// <param name="Prices">Cost of an arrangement.</param>
public sealed record SizingGround(
    Brief Brief,
    Survey Survey,
    Sky Sky,
    DemandYear Demand,
    Well Well,
    CardShelf Shelf,
    ArrangementPrices Prices
)
{
    /// <summary>Shares of the array's power kept in the design year: planning values, from memory, and the modules' age.</summary>
    public ArrayLosses Losses { get; } =
        ArrayLosses.Planning with
        {
            AgeShare = ArrayLosses.KeptAtAgeShare(Math.Clamp((int)Math.Ceiling(Survey["design-years"]), 1, 50)),
        };

    /// <summary>Hottest cell [°C].</summary>
    public double HotCellDegC => Survey["record-high"] + Sizing.CellAboveAirK;

    /// <summary>Module cards that may be used.</summary>
    public IReadOnlyList<ModuleCard> Modules =>
        Brief.Array.Module is { } name ? [Shelf.Find<ModuleCard>(name)!] : Shelf.All<ModuleCard>();

    /// <summary>Tanks that may be used, smallest first: those that hold the reserve, or the largest when none does.</summary>
    public IReadOnlyList<(TankCard Card, int Count)> Tanks
    {
        get
        {
            var all = AllTanks;
            var reserved = all.Where(tank => tank.Card.UsefulM3 * tank.Count >= ReserveM3).ToList();
            return reserved.Count > 0 ? reserved : [all[^1]];
        }
    }

    /// <summary>Useful volume that the tank must have at least [m³].</summary>
    public double ReserveM3 => Survey["reserve"] * Demand.DrinkingM3PerDay;

    private IReadOnlyList<(TankCard Card, int Count)> AllTanks =>
        [
            .. (Brief.Tank.Card is { } name ? [Shelf.Find<TankCard>(name)!] : Shelf.All<TankCard>())
                .SelectMany(card =>
                    (Brief.Tank.Count is { } count ? [count] : Enumerable.Range(1, 3)).Select(n => (card, n))
                )
                .OrderBy(tank => tank.card.UsefulM3 * tank.n),
        ];
}
