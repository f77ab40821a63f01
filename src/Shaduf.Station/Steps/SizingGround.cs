using System.Collections.Concurrent;
using Shaduf.Power;
using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>All that is settled before pump, array and tank are chosen.</summary>
/// <param name="Brief">The brief.</param>
/// <param name="Survey">Its settled figures.</param>
/// <param name="Sky">Sun and tilt.</param>
/// <param name="Demand">Demand by hour.</param>
/// <param name="Source">Levels and yield.</param>
/// <param name="Shelf">The cards.</param>
/// <param name="Prices">Cost of an arrangement.</param>
public sealed record SizingGround(
    Brief Brief,
    Survey Survey,
    Sky Sky,
    DemandYear Demand,
    Source Source,
    CardShelf Shelf,
    ArrangementPrices Prices
)
{
    /// <summary>What the steps of the runs before came to; null where everything is chosen anew.</summary>
    public StepMemory? Memory { get; init; }

    /// <summary>The one main to try, whatever the brief says; null for all that serve.</summary>
    public MainLay? OnlyMain { get; init; }

    // Lost in the first light by n-type cells; planning value, from memory.
    private const double NTypeFirstLightShare = 0.005;

    /// <summary>Share of the demand that the search must meet: the brief's target, or more where shade will take some.</summary>
    public double AskedShare { get; init; } = Survey["target"];

    /// <summary>Shares of the array's power kept in the design year, as the brief has them or as assumed.</summary>
    public ArrayLosses Losses =>
        new(
            1 - Survey["array-soiling"],
            1 - Survey["array-mismatch"],
            1 - FirstLightShare,
            1 - Survey["array-wiring"],
            1 - Survey["array-tracking"],
            ArrayLosses.KeptAtAgeShare(
                Math.Clamp((int)Math.Ceiling(Survey["design-years"]), 1, 50),
                Survey["array-ageing"]
            )
        );

    private double FirstLightShare =>
        Brief.Array.Losses.FirstLightShare is null && Modules.All(module => module.Cells == CellKind.NType)
            ? NTypeFirstLightShare
            : Survey["array-first-light"];

    /// <summary>Hottest cell [°C].</summary>
    public double HotCellDegC => Survey["record-high"] + Sizing.CellAboveAirK;

    /// <summary>Age at which the strings must still serve: the design year, ten years at least [years].</summary>
    public int AgeYears => Math.Clamp((int)Math.Ceiling(Survey["design-years"]), 10, 50);

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

    /// <summary>Over what the target is measured.</summary>
    public TargetSpan Span => Brief.Uses.TargetSpan;

    /// <summary>Levels of the tank at which pump and outlet stop.</summary>
    public TankStops Stops { get; } = TankStops.Of(Brief.Tank, Survey);

    private readonly ConcurrentDictionary<(string Module, PlaneFacing Facing), ModuleYear> moduleYears = [];

    /// <summary>Power of one module through the year on a plane.</summary>
    internal ModuleYear ModuleYearOf(ModuleCard module, SkyPlane plane) =>
        moduleYears.GetOrAdd((module.Name, plane.Facing), _ => new(Sizing.ModuleYearW(module, Sky.Year, plane.Light)));

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
