using Shaduf.Ground;
using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Plates, welds, paint, rail, ladder and blocks of the stands; their bars are in the cut plan of all steel.</summary>
internal static class StandTakeoff
{
    // Straps over a tank: two across and two along; common practice, no source.
    private const int StrapCount = 4;

    // A cage begins so high over the ground (EN ISO 14122-4: 2.2 to 3.0 m).
    private const double CageFromMm = 2500;

    /// <summary>What its concrete is for.</summary>
    public const string FootingsWord = "the footings of the stand";

    /// <summary>The lines.</summary>
    /// <param name="stands">The stands; null for none.</param>
    /// <returns>The lines.</returns>
    public static IEnumerable<QuantityLine> Of(StandDesign? stands) =>
        stands is null ? [] : [.. Steel(stands), .. Access(stands), .. Work(stands), .. Blocks(stands)];

    private static IEnumerable<QuantityLine> Steel(StandDesign stands)
    {
        var (stand, count) = (stands.Stand, stands.Count);
        var plates = stand.Plates;
        yield return Line(
            "steel-plate",
            "steel plate, cut and drilled, of the stand",
            "kg",
            count * plates.MassKg,
            Invariant(
                $"deck {StandPlan.DeckMm:0} mm of {plates.DeckM2:0.0} m2 and toe plate {plates.DeckKg:0} kg; {plates.LegCount} base plates {plates.Foot.SideMm:0} x {plates.Foot.ThicknessMm:0} mm, caps and {plates.GussetCount} gussets {plates.PieceKg:0} kg"
            )
        );
        var bolt = plates.Foot;
        yield return Line(
            "pole-anchor",
            Invariant($"bolt {bolt.BoltName} x {bolt.BoltMm:0} mm to cast in, with three nuts and washers"),
            "nr",
            count * plates.LegCount * StandFoot.BoltCount,
            Invariant($"{StandFoot.BoltCount} a leg")
        );
        foreach (var bolts in stand.Steel.Fixings)
        {
            yield return Line("frame-bolt", bolts.What, "nr", count * bolts.Count, bolts.Where);
        }

        var welds = SteelFinish.Welds(stand.Steel, count);
        var rods = SteelFinish.Rods(welds);
        yield return Line(
            "electrodes",
            "electrodes for the stand: "
                + string.Join(", ", rods.Select(rod => Invariant($"{rod.Packets} packets of {rod.RodMm:0.0} mm"))),
            "kg",
            rods.Sum(rod => rod.Packets) * SteelFinish.PacketKg,
            Invariant($"{welds.Sum(weld => weld.DepositKg):0.0} kg of weld metal at 55 %, in whole packets")
        ) with
        {
            NetQuantity = welds.Sum(weld => weld.DepositKg),
        };
        var areaM2 = stands.PaintM2;
        foreach (var coat in SteelFinish.Coats(areaM2))
        {
            yield return Line(
                coat.Item,
                $"{coat.Name}, of the stand",
                "L",
                Math.Ceiling(coat.Litres),
                Invariant($"{coat.Litres:0.0} L for {areaM2:0.0} m2 of steel, 50 % solids, 25 % loss, in whole litres")
            ) with
            {
                NetQuantity = coat.Litres * (1 - SteelFinish.LossShare),
            };
        }
    }

    private static IEnumerable<QuantityLine> Access(StandDesign stands)
    {
        var (access, count) = (stands.Stand.Access, stands.Count);
        yield return Line(
            "ladder-rung",
            Invariant($"rung of round bar 20 mm, {StandAccess.LadderWidthMm:0} mm long"),
            "nr",
            count * access.RungCount,
            Invariant($"{StandAccess.RungPitchMm:0} mm apart at most on {access.FallMm / 1000:0.0} m, up to the deck")
        );
        if (access.NeedsCage)
        {
            yield return Line(
                "ladder-cage",
                "cage of the ladder, or an arrester led on it",
                "m",
                count * (access.LadderMm - CageFromMm) / 1000,
                Invariant($"from {CageFromMm / 1000:0.0} m up: one can fall {access.FallMm / 1000:0.0} m")
            );
        }

        yield return Line("platform-gate", "gate that closes itself, at the ladder", "nr", count, "one a platform");
        yield return Line(
            "tank-strap",
            "strap over the tank with its tightener",
            "nr",
            count * StrapCount,
            "two each way over the empty tank"
        );
    }

    private static IEnumerable<QuantityLine> Work(StandDesign stands)
    {
        var (stand, count) = (stands.Stand, stands.Count);
        yield return Labour.Days(
            "cut",
            count * stand.Steel.Parts.Sum(part => part.PiecesMm.Count + 1),
            "parts of the stand"
        );
        yield return Labour.Days(
            "weld",
            count * stand.Steel.Seams.Where(seam => seam.LengthMm > 40).Sum(seam => seam.Count),
            "seams of the stand"
        );
        yield return Labour.Days("paint", 3 * stands.PaintM2, "three coats on the stand");
        yield return Labour.Days("stand", stands.MassKg / 1000, "steel of the stand");
    }

    private static IEnumerable<QuantityLine> Blocks(StandDesign stands)
    {
        var (footings, block) = (stands.Footings, stands.Footings.Block);
        yield return Labour.Days(
            "dig",
            footings.ExcavationM3,
            Invariant(
                $"{footings.Count} pits of the stand, {footings.ExcavationM3:0.00} m3 as it lies; {Spoil.LooseM3(footings.ExcavationM3, Footings.SwellShare):0.00} m3 loose to spread"
            )
        );
        foreach (
            var line in ConcreteTakeoff.Of(
                BillSection.Ground,
                FootingsWord,
                footings.ConcreteM3,
                footings,
                Invariant(
                    $"{footings.Count} {(footings.Form == FootingForm.Block ? "blocks" : "strips")} of {block.LengthMm:0} x {block.WidthMm:0} x {block.DepthMm:0} mm with plinths: {footings.ConcreteM3:0.00} m3 + 5 %"
                )
            )
        )
        {
            yield return line;
        }
    }

    private static QuantityLine Line(string item, string says, string unit, double quantity, string origin) =>
        new(item, BillSection.Steelwork, says, unit, quantity, origin);
}
