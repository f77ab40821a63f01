using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A step of the works.</summary>
/// <param name="Key">Short name.</param>
/// <param name="Title">What is done.</param>
/// <param name="Do">How, with the station's own figures.</param>
/// <param name="Hold">What must be looked at and signed before going on; null where work simply goes on.</param>
public sealed record MethodStep(string Key, string Title, IReadOnlyList<string> Do, string? Hold)
{
    /// <summary>The tick of its hold; null while it is open.</summary>
    public Tick? Signed { get; init; }

    /// <summary>What is ticked one by one: each line, then the hold.</summary>
    public CheckList Checks =>
        new(
            Key,
            Title,
            [
                .. Do.Select((line, i) => new CheckPoint(Invariant($"{Key}/{i + 1}"), line)),
                .. Hold is { } hold ? [new CheckPoint(Key, hold)] : Array.Empty<CheckPoint>(),
            ]
        );
}

/// <summary>Something heavy, and who or what lifts it.</summary>
/// <param name="What">What it is.</param>
/// <param name="MassKg">Its mass [kg].</param>
/// <param name="Count">How many.</param>
/// <param name="PeopleCount">People who may lift it by hand; null where gear is needed.</param>
public sealed record HeavyLift(string What, double MassKg, int Count, int? PeopleCount)
{
    private const double GearFactor = 1.3;

    /// <summary>People, or the gear to bring.</summary>
    public string By =>
        PeopleCount is { } people
            ? Invariant($"{people} {(people == 1 ? "person" : "people")}")
            : Invariant($"gear for {GearFactor * MassKg:0} kg; nobody under it");
}

/// <summary>A hazard of the works.</summary>
/// <param name="What">The hazard.</param>
/// <param name="Who">Whom it hurts.</param>
/// <param name="Before">Likelihood times severity without controls.</param>
/// <param name="Controls">What is done about it.</param>
/// <param name="After">Likelihood times severity with them.</param>
public sealed record Hazard(string What, string Who, int Before, string Controls, int After);

/// <summary>How the station is built safely, with its own marks, depths, masses and volumes.</summary>
/// <param name="Steps">The steps in order.</param>
/// <param name="Lifts">What is heavy.</param>
/// <param name="Hazards">Hazards, the worst first.</param>
/// <param name="Tools">Tools by what they are for.</param>
public sealed record MethodStatement(
    IReadOnlyList<MethodStep> Steps,
    IReadOnlyList<HeavyLift> Lifts,
    IReadOnlyList<Hazard> Hazards,
    IReadOnlyList<(string For, string Tools)> Tools
)
{
    private const double CementBagKg = 50;

    /// <summary>Writes it for a design.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The statement.</returns>
    public static MethodStatement Of(Design design)
    {
        var lifts = LiftsOf(design).ToList();
        var ticked = (design.Brief.Measured?.Ticked ?? []).ToDictionary(tick => tick.Point);
        return new(
            [.. MethodSteps.Of(design).Select(step => step with { Signed = ticked.GetValueOrDefault(step.Key) })],
            lifts,
            [
                .. Rows("hazards.csv", design)
                    .Select(row => new Hazard(
                        row["hazard"],
                        row["who"],
                        (int)(row.Number("likelihood") * row.Number("severity")),
                        Filled(row["controls"], design),
                        (int)(row.Number("after_likelihood") * row.Number("after_severity"))
                    ))
                    .OrderByDescending(hazard => hazard.Before),
            ],
            [.. Rows("tools.csv", design).Select(row => (row["for"], row["tools"]))]
        );
    }

    private static IEnumerable<CsvRow> Rows(string table, Design design) =>
        Csv.Embedded(typeof(MethodStatement).Assembly, table).Where(row => IsThere(row["when"], design));

    private static bool IsThere(string when, Design design) =>
        when switch
        {
            "well" => design.Works.Source is WellBuild,
            "surface" => design.Works.Source is IntakeBuild,
            "stand" => design.Works.Stand is not null,
            _ => true,
        };

    private static string Filled(string text, Design design)
    {
        var works = design.Works;
        var frameKg = works.Rack.Steel.MassKg;
        (string Key, string Value)[] figures =
        [
            (
                "{lift}",
                Erection.People(frameKg) is { } people
                    ? Invariant($"frame of {frameKg:0} kg: {people} people")
                    : Invariant($"frame of {frameKg:0} kg: piece by piece, or gear")
            ),
            ("{pit}", Invariant($"{works.Footings.Block.DepthMm / 1000:0.00} m")),
            ("{trench}", Invariant($"{works.Main.Trench.DepthM:0.00} m")),
            ("{cold}", Invariant($"{works.Electrics.ColdV:0} V")),
            ("{hung}", works.Source is WellBuild well ? Invariant($"{well.Hung.TotalKg:0} kg full of water") : ""),
        ];
        return figures.Aggregate(text, (so, far) => so.Replace(far.Key, far.Value, StringComparison.Ordinal));
    }

    private static IEnumerable<HeavyLift> LiftsOf(Design design)
    {
        var (works, choice) = (design.Works, design.Choice);
        HeavyLift Lift(string what, double massKg, int count) => new(what, massKg, count, Erection.People(massKg));
        yield return Lift("frame of one rack, welded", works.Rack.Steel.MassKg, works.Rack.Grid.RackCount);
        foreach (var plan in design.Takeoff.BarPlans.OrderByDescending(plan => plan.Section.MassKgPerM).Take(1))
        {
            yield return Lift(
                Invariant($"heaviest bar, {plan.Section.Name} of {plan.Section.BarMm / 1000:0.#} m"),
                plan.Section.MassKgPerM * plan.Section.BarMm / 1000,
                plan.Bought.Sum(bar => bar.Count)
            );
        }

        yield return Lift($"module {choice.Module.Name}", choice.Module.Body.MassKg, choice.ModuleCount);
        yield return Lift("bag of cement", CementBagKg, Bags(design));
        yield return Lift($"pump {choice.Pump.Name}", choice.Pump.MassKg, 1);
        if (works.Source is WellBuild well)
        {
            yield return Lift("pump string, empty, down the well", well.Hung.EmptyKg, 1);
            yield return Lift("pump string, full, if it must come up", well.Hung.TotalKg, 1);
        }

        if (works.Stand is { } stand)
        {
            var heaviest = stand.Stand.Steel.Parts.MaxBy(part => part.MassKg)!;
            yield return Lift($"heaviest part of a stand, {heaviest.Mark}", heaviest.MassKg, stand.Count);
        }

        if (choice.Tank.MassKg is { } tankKg && !design.Brief.Tank.IsExisting)
        {
            yield return Lift($"tank {choice.Tank.Name}, empty", tankKg, choice.TankCount);
        }
    }

    private static int Bags(Design design) =>
        (int)design.Takeoff.Lines.Where(line => line.Item == "cement-50kg").Sum(line => line.Quantity);
}
