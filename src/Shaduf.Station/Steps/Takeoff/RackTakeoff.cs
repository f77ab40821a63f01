using Shaduf.Ground;
using Shaduf.Money;
using Shaduf.Parts;
using Shaduf.Steel;
using Shaduf.Workshop;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Steel, weld, paint and concrete of the racks.</summary>
internal static class RackTakeoff
{
    // Bought beyond the net quantity: common practice, no source.
    /// <summary>Sand and stone lost on the way; common practice, no source.</summary>
    public const double AggregateWasteShare = 0.10;

    // Paint: zinc phosphate primer and two finish coats by brush on small sections; common practice, no source.
    private const double PaintSolidsShare = 0.5;
    private const double PaintLossShare = 0.25;
    private static readonly (string Item, string Name, double FilmUm)[] Coats =
    [
        ("paint-primer", "primer, one coat of 50 um", 50),
        ("paint-finish", "finish, two coats of 40 um", 80),
    ];

    /// <summary>Steel and concrete of the racks alone, for comparing arrays.</summary>
    public static IReadOnlyList<QuantityLine> Of(Rack rack, Footings footings) =>
        [.. Steel(rack, BarPlansOf(rack)), .. Concrete(footings)];

    /// <summary>Which piece of the racks is cut from which bar.</summary>
    public static IReadOnlyList<SectionPlan> BarPlansOf(Rack rack) =>
        [
            .. rack
                .Steel.Groups.GroupBy(group => group.Section)
                .OrderBy(group => group.Key.Name, StringComparer.Ordinal)
                .Select(group => new SectionPlan(
                    group.Key,
                    BarPlan.FirstFitDecreasing(
                        [.. group.SelectMany(part => Pieces(part, rack.Grid.RackCount))],
                        group.Key.BarMm,
                        Takeoff.KerfMm,
                        Takeoff.EndTrimMm
                    )
                )),
        ];

    /// <summary>Bars, electrodes, paint and labour of the steel.</summary>
    public static IEnumerable<QuantityLine> Steel(Rack rack, IReadOnlyList<SectionPlan> plans)
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
                seam.Count * seam.LengthMm / 1000 * Workshop.FilletWeld.DepositKgPerM(seam.LegMm, 0.2)
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

        foreach (var line in Bolts(rack).Concat(Clamps(rack)))
        {
            yield return line;
        }

        foreach (var line in Work(rack, areaM2))
        {
            yield return line;
        }
    }

    private static IEnumerable<QuantityLine> Work(Rack rack, double areaM2)
    {
        var racks = rack.Grid.RackCount;
        yield return Labour.Days(
            "cut",
            racks * rack.Steel.Parts.Sum(part => part.PiecesMm.Count + 1),
            "pieces of all parts"
        );
        yield return Labour.Days(
            "weld",
            racks * rack.Steel.Seams.Where(seam => seam.LengthMm > 40).Sum(seam => seam.Count),
            "seams of all racks"
        );
        yield return Labour.Days("paint", 3 * areaM2, "three coats");
        yield return Labour.Days("erect", racks * rack.Size.LengthMm * rack.Size.DepthMm / 1e6, "planes of all racks");
    }

    // Two bolts where the removable side meets a member; plates on columns wider than the tubes across.
    private static IEnumerable<QuantityLine> Bolts(Rack rack)
    {
        var caps = rack.Skeleton.Joints.Count(joint => joint.HasCap) * rack.Grid.RackCount;
        if (caps > 0)
        {
            yield return new(
                "cap-plate",
                BillSection.Steelwork,
                Invariant(
                    $"cap plate {rack.Sections.Column.SideMm:0} x {rack.CapLengthMm:0} x {Rack.CapMm:0} mm on a column's head"
                ),
                "nr",
                caps,
                Invariant($"one a column, {caps} columns wider than the tubes across")
            );
        }

        var joints = rack.Skeleton.Joints.Count(joint => joint.Kind == JointKind.Pinned) * rack.Grid.RackCount;
        if (joints > 0)
        {
            yield return new(
                "frame-bolt",
                BillSection.Steelwork,
                "bolt M10 x 30 galvanised, with nut and two washers",
                "nr",
                2 * joints,
                Invariant($"two at each of {joints} joints of the removable sides")
            );
        }
    }

    // Two rails under a row: a clamp on each between two modules, and one at each end.
    private static IEnumerable<QuantityLine> Clamps(Rack rack)
    {
        if (rack.Clamping is null)
        {
            yield break;
        }

        var rails = 2 * rack.Grid.Rows * rack.Grid.RackCount;
        var origin = Invariant($"{rails} rails, {rack.Grid.Columns} modules on each");
        yield return new(
            "middle-clamp",
            BillSection.Steelwork,
            "clamp between two modules, with bolt and bonding teeth",
            "nr",
            rails * (rack.Grid.Columns - 1),
            origin
        );
        yield return new(
            "end-clamp",
            BillSection.Steelwork,
            "clamp at the end of a row, with bolt and bonding teeth",
            "nr",
            rails * 2,
            origin
        );
    }

    /// <summary>Cement, sand, stone, digging and labour of the footings.</summary>
    public static IEnumerable<QuantityLine> Concrete(Footings footings)
    {
        var ordered = footings.ConcreteM3 * (1 + Footings.WasteShare);
        var origin = Invariant(
            $"{footings.Count} footings, {Footings.Says(footings.Form, footings.Block)}, with plinths: {footings.ConcreteM3:0.00} m3 + 5 %"
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
        yield return Labour.Days(
            "dig",
            footings.ExcavationM3,
            Invariant(
                $"{footings.ExcavationM3:0.00} m3 as it lies; {Spoil.LooseM3(footings.ExcavationM3, Footings.SwellShare):0.00} m3 loose to spread"
            )
        );
        yield return Labour.Days("concrete", footings.ConcreteM3, Invariant($"{footings.ConcreteM3:0.00} m3"));
    }

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
}
