using Shaduf.Ground;
using Shaduf.Money;
using Shaduf.Parts;
using Shaduf.Working;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The bars that one section is cut from.</summary>
/// <param name="Section">The section.</param>
/// <param name="Plan">Which piece comes from which bar.</param>
public sealed record SectionPlan(Section Section, BarPlan Plan);

/// <summary>Every quantity of the station with where it comes from.</summary>
/// <param name="Lines">The quantities.</param>
/// <param name="BarPlans">The bars of each section.</param>
public sealed record Takeoff(IReadOnlyList<QuantityLine> Lines, IReadOnlyList<SectionPlan> BarPlans)
{
    /// <summary>Trimmed from a bar, both ends together [mm]; common practice, no source.</summary>
    public const double EndTrimMm = 10;

    /// <summary>Slot of an abrasive saw [mm]; from memory.</summary>
    public const double KerfMm = 3;

    // Shares bought beyond the net quantity: common practice, no source.
    private const double PipeWasteShare = 0.03;
    private const double AggregateWasteShare = 0.10;

    // Paint: zinc phosphate primer and two finish coats by brush on small sections; common practice, no source.
    private const double PaintSolidsShare = 0.5;
    private const double PaintLossShare = 0.25;
    private static readonly (string Item, string Name, double FilmUm)[] Coats =
    [
        ("paint-primer", "primer, one coat of 50 um", 50),
        ("paint-finish", "finish, two coats of 40 um", 80),
    ];

    private static readonly IReadOnlyDictionary<string, CsvRow> Labour = Csv.Embedded(
            typeof(Takeoff).Assembly,
            "labour.csv"
        )
        .ToDictionary(row => row["id"]);

    /// <summary>Takes off everything.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="choice">What was chosen.</param>
    /// <param name="works">The works designed for it.</param>
    /// <returns>The takeoff.</returns>
    public static Takeoff Of(Brief brief, Choice choice, Works works)
    {
        var plans = BarPlansOf(works.Rack);
        return new(
            [
                .. General(brief, choice, works),
                .. Source(choice),
                .. PipesAndTank(brief, choice),
                .. Array(choice, works.Electrics),
                .. Rack(works.Rack, plans),
                .. Concrete(works.Footings),
                .. Guarding(works.Guard),
                .. Taps(brief),
                Work("commission", 1, "once"),
            ],
            plans
        );
    }

    /// <summary>Steel and concrete of the racks alone, for comparing arrays.</summary>
    /// <param name="rack">The racks.</param>
    /// <param name="footings">Their footings.</param>
    /// <returns>The quantities.</returns>
    internal static IReadOnlyList<QuantityLine> OfRack(Rack rack, Footings footings) =>
        [.. Rack(rack, BarPlansOf(rack)), .. Concrete(footings)];

    private static IReadOnlyList<SectionPlan> BarPlansOf(Rack rack) =>
        [
            .. rack
                .Steel.Groups.GroupBy(group => group.Section)
                .OrderBy(group => group.Key.Name, StringComparer.Ordinal)
                .Select(group => new SectionPlan(
                    group.Key,
                    BarPlan.FirstFitDecreasing(
                        [.. group.SelectMany(part => Pieces(part, rack.Grid.RackCount))],
                        group.Key.BarMm,
                        KerfMm,
                        EndTrimMm
                    )
                )),
        ];

    // Spliced parts are cut as pieces: F1 becomes F1a, F1b.
    private static IEnumerable<CutPart> Pieces(PartGroup part, int rackCount) =>
        part.PiecesMm.Select(
            (mm, i) =>
                new CutPart(
                    part.PiecesMm.Count == 1 ? part.Mark : $"{part.Mark}{(char)('a' + i)}",
                    Math.Ceiling(mm - 1e-6),
                    part.Count * rackCount
                )
        );

    private static IEnumerable<QuantityLine> General(Brief brief, Choice choice, Works works)
    {
        if (brief.Money.TransportKm > 0)
        {
            var tonnes =
                (
                    works.Rack.MassKg
                    + (choice.ModuleCount * choice.Module.Body.MassKg)
                    + (works.Footings.ConcreteM3 * works.Footings.PerM3.CementKg)
                ) / 1000;
            var trips = Math.Max(1, Math.Ceiling(tonnes / 3)) + 1;
            yield return new(
                "transport-km",
                BillSection.General,
                "truck and crew, there and back",
                "nr",
                Math.Ceiling(trips * 2 * brief.Money.TransportKm),
                Invariant(
                    $"{trips:0} trips (3 t each for {tonnes:0.0} t of steel, modules and cement, and one for the rest) x 2 x {brief.Money.TransportKm:0.#} km"
                )
            );
        }
    }

    private static IEnumerable<QuantityLine> Source(Choice choice)
    {
        yield return new(choice.Pump.Name, BillSection.SourceAndPump, choice.Pump.About, "nr", 1, "choice of pump");
        yield return new(
            choice.Lift.Riser.Name,
            BillSection.SourceAndPump,
            $"riser: {choice.Lift.Riser.About}",
            "m",
            choice.Lift.RiserM * (1 + PipeWasteShare),
            Invariant($"pump setting {choice.Lift.RiserM:0.#} m + 3 %")
        );
        yield return new(
            "safety-rope",
            BillSection.SourceAndPump,
            "safety rope for the pump",
            "m",
            choice.Lift.RiserM + 5,
            Invariant($"pump setting {choice.Lift.RiserM:0.#} m + 5 m")
        );
        yield return new(
            "wellhead-set",
            BillSection.SourceAndPump,
            "wellhead with cap, check valve, gate valve, gauge and meter",
            "set",
            1,
            "one borehole"
        );
        yield return new(
            "level-probe",
            BillSection.SourceAndPump,
            "dry-run probe with cable",
            "set",
            1,
            "one borehole"
        );
        yield return Work("lower", 1, "one pump");
    }

    private static IEnumerable<QuantityLine> PipesAndTank(Brief brief, Choice choice)
    {
        yield return new(
            choice.Lift.Main.Name,
            BillSection.PipesAndTank,
            $"pumped main: {choice.Lift.Main.About}",
            "m",
            choice.Lift.MainM * (1 + PipeWasteShare),
            Invariant($"route and rise to the inlet {choice.Lift.MainM:0.#} m + 3 %")
        );
        yield return new(
            "pipe-fittings",
            BillSection.PipesAndTank,
            "fittings, bends and valves of the main",
            "set",
            1,
            "fittings of the brief"
        );
        if (!brief.Tank.IsExisting)
        {
            yield return new(
                choice.Tank.Name,
                BillSection.PipesAndTank,
                choice.Tank.About,
                "nr",
                choice.TankCount,
                "choice of tank"
            );
            yield return Work("tank", choice.TankCount, "choice of tank");
        }

        yield return new(
            "float-valve",
            BillSection.PipesAndTank,
            "float switch or float valve with overflow and screen",
            "set",
            choice.TankCount,
            "one a tank"
        );
        yield return Work("trench", choice.Lift.MainM, "route of the main");
        yield return Work("pipe", choice.Lift.MainM, "route of the main");
    }

    private static IEnumerable<QuantityLine> Array(Choice choice, Electrics electrics)
    {
        yield return new(
            choice.Module.Name,
            BillSection.ArrayAndElectrics,
            choice.Module.About,
            "nr",
            choice.ModuleCount,
            Invariant($"{choice.SeriesCount} in series x {choice.StringCount} strings")
        );
        yield return new(
            choice.Drive.Name,
            BillSection.ArrayAndElectrics,
            choice.Drive.About,
            "nr",
            1,
            "choice of drive"
        );
        foreach (var cable in electrics.Cables)
        {
            if (cable.Card is { } card)
            {
                yield return new(
                    card.Name,
                    BillSection.ArrayAndElectrics,
                    $"{cable.Name}: {card.About}",
                    "m",
                    cable.BoughtM,
                    Invariant($"{cable.BoughtM / 1.05:0.#} m + 5 %")
                );
            }
        }

        yield return new(
            "dc-isolator",
            BillSection.ArrayAndElectrics,
            "direct-current isolator and surge protection in a box",
            "set",
            choice.StringCount,
            "one a string"
        );
        yield return Work("modules", choice.ModuleCount, "all modules");
        yield return Work("cable", electrics.Cables.Sum(cable => cable.BoughtM), "all cables");
    }

    private static IEnumerable<QuantityLine> Rack(Rack rack, IReadOnlyList<SectionPlan> plans)
    {
        foreach (var plan in plans)
        {
            var marks = string.Join(
                ", ",
                rack.Steel.Groups.Where(group => group.Section == plan.Section)
                    .Select(group => $"{group.Count * rack.Grid.RackCount} {group.Mark}")
            );
            yield return new(
                plan.Section.Name,
                BillSection.Steelwork,
                Invariant($"{plan.Section.Name}, bars of {plan.Section.BarMm / 1000:0.##} m"),
                "nr",
                plan.Plan.BarCount,
                Invariant($"cut plan of {marks}; {plan.Plan.LowerBoundCount} bars at least")
            );
        }

        var racks = rack.Grid.RackCount;
        var depositKg =
            racks
            * rack.Steel.Seams.Sum(seam =>
                seam.Count * seam.LengthMm / 1000 * FilletWeld.DepositKgPerM(seam.LegMm, 0.2)
            );
        yield return new(
            "electrodes",
            BillSection.Steelwork,
            "electrodes 2.5 mm",
            "kg",
            Electrodes.MassKg(depositKg, 0.55),
            Invariant($"{depositKg:0.0} kg of weld metal at 55 %")
        );
        var areaM2 = racks * rack.Steel.Parts.Sum(part => part.LengthMm / 1000 * part.Section.PerimeterMm / 1000);
        foreach (var (item, name, filmUm) in Coats)
        {
            yield return new(
                item,
                BillSection.Steelwork,
                name,
                "L",
                PaintCoat.Litres(areaM2, PaintSolidsShare, filmUm, PaintLossShare),
                Invariant($"{areaM2:0.0} m2 of steel, 50 % solids, 25 % loss")
            );
        }

        yield return Work("cut", racks * rack.Steel.Parts.Sum(part => part.PiecesMm.Count + 1), "pieces of all parts");
        yield return Work(
            "weld",
            racks * rack.Steel.Seams.Where(seam => seam.LengthMm > 40).Sum(seam => seam.Count),
            "seams of all racks"
        );
        yield return Work("paint", 3 * areaM2, "three coats");
        yield return Work("erect", racks * rack.Size.LengthMm * rack.Size.DepthMm / 1e6, "planes of all racks");
    }

    private static IEnumerable<QuantityLine> Concrete(Footings footings)
    {
        var block = footings.Block;
        var ordered = footings.ConcreteM3 * (1 + Footings.WasteShare);
        var origin = Invariant(
            $"{footings.Count} blocks of {block.LengthMm:0} x {block.WidthMm:0} x {block.DepthMm:0} mm with plinths: {footings.ConcreteM3:0.00} m3 + 5 %"
        );
        yield return new(
            "cement-50kg",
            BillSection.Ground,
            $"cement, bags of 50 kg, mix {footings.Mix.Name}",
            "nr",
            Math.Ceiling(ordered * footings.PerM3.BagCount),
            origin
        );
        yield return new(
            "sand",
            BillSection.Ground,
            "sand",
            "m3",
            ordered * footings.PerM3.SandM3 * (1 + AggregateWasteShare),
            $"{origin}, and 10 % of sand"
        );
        yield return new(
            "stone",
            BillSection.Ground,
            "broken stone 20 mm",
            "m3",
            ordered * footings.PerM3.StoneM3 * (1 + AggregateWasteShare),
            $"{origin}, and 10 % of stone"
        );
        yield return Work(
            "dig",
            footings.ExcavationM3,
            Invariant(
                $"{footings.ExcavationM3:0.00} m3 as it lies; {Spoil.LooseM3(footings.ExcavationM3, Footings.SwellShare):0.00} m3 loose to spread"
            )
        );
        yield return Work("concrete", footings.ConcreteM3, Invariant($"{footings.ConcreteM3:0.00} m3"));
    }

    private static IEnumerable<QuantityLine> Guarding(Guard guard)
    {
        yield return new(
            "earth-rod",
            BillSection.LightAndEarthing,
            Invariant($"earth rod {Guard.RodM} m with clamp"),
            "nr",
            guard.RodCount,
            "earthing"
        );
        yield return new(
            "earth-wire",
            BillSection.LightAndEarthing,
            "copper earth wire 16 mm2 with lugs",
            "m",
            (guard.RodCount * 2 * Guard.RodM) + 10,
            "rods one double length apart, and 10 m to frame and drive"
        );
        yield return Work("rods", guard.RodCount, "earthing");
        if (guard.Light is { } light)
        {
            yield return new(light.Name, BillSection.LightAndEarthing, light.About, "nr", 1, "brief");
            yield return Work("light", 1, "brief");
        }

        if (guard.Fence is { } fence)
        {
            var around = Invariant(
                $"{guard.FenceLengthM:0.0} x {guard.FenceDepthM:0.0} m around the racks, posts every {Guard.PostSpacingM} m"
            );
            yield return new(
                "fence-post",
                BillSection.FenceAndGate,
                "fence post with its concrete",
                "nr",
                fence.PostCount,
                around
            );
            yield return new(
                "fence-mesh",
                BillSection.FenceAndGate,
                "chain-link mesh 1.8 m high with three wires",
                "m",
                fence.MeshM,
                around
            );
            yield return new(
                "fence-gate",
                BillSection.FenceAndGate,
                Invariant($"gate {Guard.GateM} m"),
                "nr",
                fence.GateCount,
                around
            );
            yield return Work("posts", fence.PostCount, around);
        }
    }

    private static IEnumerable<QuantityLine> Taps(Brief brief)
    {
        if (brief.Taps is not { } taps)
        {
            yield break;
        }

        var pipes = taps
            .Taps.Select(tap => (tap.Pipe, Metres: tap.BranchM))
            .Append((Pipe: taps.MainPipe, Metres: taps.MainM))
            .GroupBy(run => run.Pipe)
            .OrderBy(group => group.Key, StringComparer.Ordinal);
        foreach (var pipe in pipes)
        {
            yield return new(
                pipe.Key,
                BillSection.TapsAndDrainage,
                $"pipe to the taps: {pipe.Key}",
                "m",
                pipe.Sum(run => run.Metres) * (1 + PipeWasteShare),
                "taps of the brief + 3 %"
            );
        }

        yield return new(
            "tap-stand",
            BillSection.TapsAndDrainage,
            "tap stand with apron and soakaway",
            "nr",
            taps.Taps.Count,
            "taps of the brief"
        );
        yield return Work("tap", taps.Taps.Count, "taps of the brief");
    }

    private static QuantityLine Work(string id, double amount, string origin)
    {
        var row = Labour[id];
        var perUnit = row.Number("man_days");
        return new(
            "labour-day",
            Enum.Parse<BillSection>(row["section"]),
            $"labour: {row["work"]}",
            "d",
            amount * perUnit,
            Invariant($"{amount:0.##} {row["unit"]} x {perUnit:0.####} man-days ({origin}); {row["source"]}")
        );
    }
}

/// <summary>The works designed for a choice.</summary>
/// <param name="Electrics">Strings and cables.</param>
/// <param name="Rack">Racks.</param>
/// <param name="Footings">Footings.</param>
/// <param name="Guard">Light, earth, fence.</param>
/// <param name="Taps">Taps by gravity.</param>
public sealed record Works(Electrics Electrics, Rack Rack, Footings Footings, Guard Guard, TapLine Taps);
