using Shaduf.Ground;
using Shaduf.Money;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Steel, weld, paint and concrete of the racks.</summary>
internal static class RackTakeoff
{
    // Bought beyond the net quantity: common practice, no source.
    /// <summary>Sand and stone lost on the way; common practice, no source.</summary>
    public const double AggregateWasteShare = 0.10;

    /// <summary>Steel and concrete of the racks alone, for comparing arrays.</summary>
    public static IReadOnlyList<QuantityLine> Of(Rack rack, Footings footings, WorkshopBrief workshop) =>
        [.. Steel(rack, CutPlans.Quick(rack, workshop)), .. Concrete(footings)];

    /// <summary>Bars, electrodes, paint and labour of the steel.</summary>
    public static IEnumerable<QuantityLine> Steel(Rack rack, IReadOnlyList<SectionPlan> plans)
    {
        foreach (var line in plans.SelectMany(Bars))
        {
            yield return line;
        }

        yield return Rods(rack);
        var areaM2 = SteelFinish.AreaM2(rack);
        foreach (var coat in SteelFinish.Coats(areaM2))
        {
            yield return new(
                coat.Item,
                BillSection.Steelwork,
                coat.Name,
                "L",
                Math.Ceiling(coat.Litres),
                Invariant($"{coat.Litres:0.0} L for {areaM2:0.0} m2 of steel, 50 % solids, 25 % loss, in whole litres")
            )
            {
                NetQuantity = coat.Litres * (1 - SteelFinish.LossShare),
            };
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

    private static QuantityLine Rods(Rack rack)
    {
        var welds = SteelFinish.Welds(rack);
        var rods = SteelFinish.Rods(welds);
        var sizes = string.Join(", ", rods.Select(rod => Invariant($"{rod.Packets} of {rod.RodMm:0.0} mm")));
        return new(
            "electrodes",
            BillSection.Steelwork,
            Invariant($"electrodes, packets of {SteelFinish.PacketKg:0.#} kg: {sizes}"),
            "kg",
            rods.Sum(rod => rod.Packets) * SteelFinish.PacketKg,
            Invariant($"{welds.Sum(weld => weld.DepositKg):0.0} kg of weld metal at 55 %, in whole packets")
        )
        {
            NetQuantity = welds.Sum(weld => weld.DepositKg),
        };
    }

    private static IEnumerable<QuantityLine> Bars(SectionPlan plan)
    {
        var yard = plan.OffcutCount == 0 ? "" : Invariant($" and {plan.OffcutCount} offcuts of the yard");
        foreach (var (lengthMm, count) in plan.Bought)
        {
            yield return new(
                plan.ItemOf(lengthMm),
                BillSection.Steelwork,
                Invariant($"{plan.Section.Name}, bars of {lengthMm / 1000:0.##} m"),
                "nr",
                count,
                $"cut plan of {plan.Marks}{yard}; {CutPlans.Proof(plan.Plan)}"
            )
            {
                NetQuantity = plan.BuiltInShare(lengthMm) * count,
            };
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
        foreach (var cap in rack.Steel.Plates)
        {
            var count = cap.Count * rack.Grid.RackCount;
            yield return new(
                "cap-plate",
                BillSection.Steelwork,
                $"{cap.Mark} {cap.Role}, {cap.Sizes} mm",
                "nr",
                count,
                Invariant($"one a column, {count} columns wider than the tubes across")
            );
        }

        foreach (var bolts in rack.Steel.Fixings)
        {
            yield return new(
                "frame-bolt",
                BillSection.Steelwork,
                bolts.What,
                "nr",
                bolts.Count * rack.Grid.RackCount,
                rack.Grid.RackCount > 1
                    ? Invariant($"{bolts.Where}, on each of {rack.Grid.RackCount} racks")
                    : bolts.Where
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
            $"{footings.Count} footings, {Footings.Says(footings.Form, footings.Block)}, with plinths: {footings.ConcreteM3:0.00} m3 + 5 %{(footings.IsPlan ? "; for a plan of the cost only, a geotechnical design decides" : "")}"
        );
        yield return new(
            "cement-50kg",
            BillSection.Ground,
            $"cement, bags of 50 kg, mix {footings.Mix.Name}",
            "nr",
            Math.Ceiling(ordered * footings.PerM3.BagCount),
            origin
        )
        {
            NetQuantity = footings.ConcreteM3 * footings.PerM3.BagCount,
        };
        yield return new(
            "sand",
            BillSection.Ground,
            "sand",
            "m3",
            ordered * footings.PerM3.SandM3 * (1 + AggregateWasteShare),
            $"{origin}, and 10 % of sand"
        )
        {
            NetQuantity = footings.ConcreteM3 * footings.PerM3.SandM3,
        };
        yield return new(
            "stone",
            BillSection.Ground,
            "broken stone 20 mm",
            "m3",
            ordered * footings.PerM3.StoneM3 * (1 + AggregateWasteShare),
            $"{origin}, and 10 % of stone"
        )
        {
            NetQuantity = footings.ConcreteM3 * footings.PerM3.StoneM3,
        };
        yield return Labour.Days(
            "dig",
            footings.ExcavationM3,
            Invariant(
                $"{footings.ExcavationM3:0.00} m3 as it lies; {Spoil.LooseM3(footings.ExcavationM3, Footings.SwellShare):0.00} m3 loose to spread"
            )
        );
        yield return Labour.Days("concrete", footings.ConcreteM3, Invariant($"{footings.ConcreteM3:0.00} m3"));
    }
}
