using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>One way of lifting the water, over the years.</summary>
/// <param name="Plan">What is paid when, in prices of today.</param>
/// <param name="Cumulative">Cost from the start to the end of each year, as its worth today; the start first.</param>
/// <param name="PerM3">Cost of a cubic metre of the water delivered.</param>
public sealed record WayOfLifting(CostPlan Plan, IReadOnlyList<decimal> Cumulative, decimal PerM3)
{
    /// <summary>Cost over all years, as its worth today.</summary>
    public decimal Total => Cumulative[^1];
}

/// <summary>The station's cost over the years, against a diesel generator set on the same duty.</summary>
/// <param name="YearCount">Years looked at.</param>
/// <param name="Currency">Currency of all amounts.</param>
/// <param name="Solar">The station as designed.</param>
/// <param name="Diesel">The same pump, pipes and tank with a generator set; null when no set or no price for it is known.</param>
/// <param name="Set">The generator set; null when none suits.</param>
/// <param name="BreakEvenYear">The year by whose end solar has cost no more and stays so; null when it never does.</param>
/// <param name="BreakEvenByFuel">The same with diesel at half and at one and a half times its price.</param>
/// <param name="Unpriced">Items that the comparison needs and the price book lacks.</param>
public sealed record LifeCycle(
    int YearCount,
    string Currency,
    WayOfLifting Solar,
    WayOfLifting? Diesel,
    DieselSet? Set,
    int? BreakEvenYear,
    (int? Half, int? Dearer) BreakEvenByFuel,
    IReadOnlyList<string> Unpriced
)
{
    // Items of the price book that only the generator set needs.
    private const string FuelItem = "diesel";
    private const string SetItem = "generator-kw";
    private const string HouseItem = "generator-house";
    private const string ServiceItem = "generator-service";

    /// <summary>Items of the price book that the comparison needs beside those of the bill.</summary>
    internal static IReadOnlyList<string> SetItems { get; } = [FuelItem, SetItem, HouseItem, ServiceItem];

    /// <summary>Reckons both ways.</summary>
    /// <param name="design">The design so far, with its bill.</param>
    /// <returns>The comparison.</returns>
    public static LifeCycle Of(Design design)
    {
        var (survey, book) = (design.Survey, design.File.Prices);
        var years = (int)Math.Round(survey["life-years"]);
        var set = DieselSet.Of(design.Sizing.Hydraulics, design.Source.YieldM3PerH, design.Year.DeliveredM3.Sum());
        string[] unpriced =
        [
            .. SetItems
                .Append(Labour.Item)
                .Append(design.Choice.Pump.Name)
                .Append(design.Choice.Drive.Name)
                .Where(item => !book.Rates.ContainsKey(item)),
        ];
        var solarPlan = SolarPlan(design, years);
        var solar = Way(design, solarPlan, years);
        if (set is null || unpriced.Length > 0)
        {
            return new(years, book.Currency, solar, null, set, null, (null, null), unpriced);
        }

        var dieselPlan = DieselPlan(design, set, years);
        int? EvenAt(decimal fuelFactor) =>
            LifeCycleCost.BreakEvenYear(
                solar.Cumulative,
                Way(design, dieselPlan with { FuelPerYear = dieselPlan.FuelPerYear * fuelFactor }, years).Cumulative
            );

        return new(
            years,
            book.Currency,
            solar,
            Way(design, dieselPlan, years),
            set,
            EvenAt(1),
            (EvenAt(0.5m), EvenAt(1.5m)),
            unpriced
        );
    }

    // Cost of water: all costs over all water, each as its worth today.
    private static WayOfLifting Way(Design design, CostPlan plan, int years)
    {
        var rate = design.Survey["discount"];
        var cumulative = LifeCycleCost.Cumulative(plan, rate, years);
        var waterM3 = design.Year.DeliveredM3.Sum() * PresentWorth.YearlyFactor(rate, years);
        return new(plan, cumulative, waterM3 > 0 ? cumulative[^1] / (decimal)waterM3 : 0);
    }

    private static CostPlan SolarPlan(Design design, int years) =>
        new(
            design.Bill.Direct + design.Bill.Preliminaries,
            (decimal)design.Survey["solar-care"] * SolarPart(design),
            0,
            0,
            [
                .. PumpAgain(design, years),
                .. LifeCycleCost.Every(design.Survey["drive-life"], years, Rate(design, design.Choice.Drive.Name)),
            ]
        );

    private static CostPlan DieselPlan(Design design, DieselSet set, int years)
    {
        var survey = design.Survey;
        var price = Rate(design, SetItem) * (decimal)set.RatedKW;

        double LifeYears(double hours) => Math.Min(100, hours / Math.Max(1, set.HoursPerYear));
        var newSets = LifeCycleCost.Every(LifeYears(DieselSet.LifeH), years, price);
        var overhauls = LifeCycleCost
            .Every(LifeYears(DieselSet.OverhaulH), years, price * DieselSet.OverhaulPart)
            .Where(overhaul => newSets.All(bought => bought.Year != overhaul.Year));
        return new(
            design.Bill.Direct + design.Bill.Preliminaries - SolarPart(design) + price + Rate(design, HouseItem),
            Rate(design, ServiceItem) * (decimal)(set.HoursPerYear / DieselSet.ServiceH),
            Rate(design, FuelItem) * (decimal)set.FuelLPerYear,
            survey["fuel-rise"],
            [.. PumpAgain(design, years), .. newSets, .. overhauls]
        );
    }

    // A new pump, and the days of taking the old one out and setting it.
    private static IReadOnlyList<Renewal> PumpAgain(Design design, int years) =>
        LifeCycleCost.Every(
            design.Survey["pump-life"],
            years,
            Rate(design, design.Choice.Pump.Name)
                + (
                    2
                    * (decimal)Labour.Days(design.Works.Source.SettingLabour, 1, "").Quantity
                    * Rate(design, Labour.Item)
                )
        );

    // What a station with a generator set does not need: modules, drive, racks with their ground, and the fence round
    // them. The motor's cable goes down the borehole either way.
    private static decimal SolarPart(Design design) =>
        design
            .Bill.Lines.Where(line =>
                line.Quantity.Section
                    is BillSection.ArrayAndElectrics
                        or BillSection.Steelwork
                        or BillSection.Ground
                        or BillSection.LightAndEarthing
                        or BillSection.FenceAndGate
                && design.File.Shelf.Find<CableCard>(line.Quantity.Item) is not { Use: CableUse.Motor }
            )
            .Sum(line => line.Amount ?? 0);

    private static decimal Rate(Design design, string item) =>
        design.File.Prices.Rates.TryGetValue(item, out var rate) ? rate.Amount : 0;

    /// <summary>What the comparison rests on, figure by figure.</summary>
    /// <param name="survey">Settled figures.</param>
    /// <returns>Name and figure.</returns>
    public static IReadOnlyList<(string What, string Figure)> Terms(Survey survey) =>
        [
            ("years looked at", Invariant($"{survey["life-years"]:0}")),
            ("real rate (interest without inflation)", Invariant($"{survey["discount"] * 100:0.#} % a year")),
            ("rise of the price of diesel beyond inflation", Invariant($"{survey["fuel-rise"] * 100:0.#} % a year")),
            ("pump lasts", Invariant($"{survey["pump-life"]:0.#} years")),
            ("drive lasts", Invariant($"{survey["drive-life"]:0.#} years")),
            ("care of the solar part", Invariant($"{survey["solar-care"] * 100:0.#} % of its price a year")),
            ("set over motor, to start it", Invariant($"{DieselSet.StartFactor:0.#} times")),
            ("service of the set", Invariant($"each {DieselSet.ServiceH:0} h")),
            (
                "overhaul of the set",
                Invariant($"each {DieselSet.OverhaulH:0} h, {DieselSet.OverhaulPart * 100:0} % of its price")
            ),
            ("new set", Invariant($"each {DieselSet.LifeH:0} h")),
        ];
}
