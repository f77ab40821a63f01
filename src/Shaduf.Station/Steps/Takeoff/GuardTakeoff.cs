using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Light, lightning, earth and fence.</summary>
internal static class GuardTakeoff
{
    // A mast's wire goes on into the ground.
    private const double IntoGroundM = 1.5;

    // To each rack, to the drive, and to each bonded fence post; common practice, no source.
    private const double ToRackM = 3;
    private const double ToDriveM = 5;
    private const double ToFenceM = 3;
    private const double BondEveryM = 50;

    public static IEnumerable<QuantityLine> Of(Choice choice, Works works) =>
        [
            .. Earth(works.Guard, choice),
            .. Masts(works.Guard),
            .. works.PoleBlocks.SelectMany(block => Block(block, works)),
            .. Light(works.Guard),
        ];

    private static IEnumerable<QuantityLine> Earth(Guard guard, Choice choice)
    {
        var earth = guard.Earth;
        yield return Line(
            "earth-rod",
            Invariant($"earth rod {GuardEarth.RodM:0.0} m, copper-bonded, 16 mm, joined of two, with clamp"),
            "nr",
            earth.Rods.Count,
            Invariant($"{earth.Rods.Count} rods at the marks of the earthing plan; finding guard/earth")
        );
        yield return Line(
            "earth-pit",
            Invariant(
                $"earth pit round a rod's head: ring of concrete {GuardEarth.PitM * 1000:0} x {GuardEarth.PitM * 1000:0} x {GuardEarth.PitM * 1000:0} mm, 50 mm thick, with a lid"
            ),
            "nr",
            earth.Rods.Count,
            "one at each rod, so that its clamp can be seen and measured"
        );
        var bareM = earth.RingWireM > 0 ? earth.RingWireM : (earth.Rods.Count - 1) * 2 * GuardEarth.RodM;
        yield return Line(
            "earth-wire-bare",
            "bare copper earth wire 50 mm2, buried",
            "m",
            bareM + (guard.Lightning.Rods.Count * ToRackM),
            Invariant($"{bareM:0.0} m {(earth.RingWireM > 0 ? "ring" : "from rod to rod")}, {ToRackM:0} m to each mast")
        );
        var bondsM = (guard.Field.RackCount * ToRackM) + ToDriveM + (FenceBonds(guard) * ToFenceM) + guard.WellheadM;
        yield return Line(
            "earth-wire",
            "copper earth wire 16 mm2, green-yellow, with lugs",
            "m",
            bondsM,
            Invariant(
                $"{ToRackM:0} m to each rack, {ToDriveM:0} m to the drive, {guard.WellheadM:0.0} m to the source{(guard.Fence is null ? "" : Invariant($", {ToFenceM:0} m to each of {FenceBonds(guard)} fence posts"))}"
            )
        );
        yield return Line(
            "frame-bond",
            "bond of a module frame to the rack: 6 mm2 lead, toothed washers, tinned lug",
            "nr",
            choice.ModuleCount,
            "one a module"
        );
        yield return Line(
            "test-joint",
            "joint for measuring, bimetal, in a box",
            "nr",
            Math.Max(1, guard.Lightning.Rods.Count),
            "one a mast, one at least"
        );
        yield return Labour.Days("rods", earth.Rods.Count, "marks of the earthing plan");
        yield return Labour.Days("earth-wire", bareM + bondsM, "bare and insulated wire of the lines above");
    }

    // At both sides of the gate and every 50 m; common practice, no source.
    private static int FenceBonds(Guard guard) =>
        guard.Fence is { } fence ? 2 + (int)(fence.Line.RoundM / BondEveryM) : 0;

    private static IEnumerable<QuantityLine> Masts(Guard guard)
    {
        var lightning = guard.Lightning;
        var count = lightning.Rods.Count;
        if (count > 0)
        {
            var origin = Invariant($"{count} masts, tips at {lightning.RodM:0.0} m");
            yield return Line(
                "air-rod",
                Invariant(
                    $"air rod {LightColumn.AirRodMm / 1000:0.#} m, 16 mm, {LightColumn.TipMm / 1000:0} m of it over the tube, with two holders"
                ),
                "nr",
                count,
                origin
            );
            yield return Line(
                "down-conductor",
                "down conductor 50 mm2 (8 mm round) with holders",
                "m",
                count * (lightning.RodM + IntoGroundM),
                origin
            );
            yield return Line("warning-sign", "sign: keep away in thunderstorms", "nr", count, origin);
        }

        foreach (var line in guard.PoleStrengths.SelectMany(pole => Feet(pole, guard.CountOf(pole))))
        {
            yield return line;
        }

        if (guard.Poles.Count > 0)
        {
            yield return Labour.Days("pole", guard.Poles.Count, "masts and light columns");
        }
    }

    private static IEnumerable<QuantityLine> Block(PoleBlock pole, Works works)
    {
        var (block, count) = (pole.Block, works.CountOf(pole));
        return
        [
            Labour.Days("pole-dig", count * block.ExcavationM3, pole.BlocksText(count)),
            .. ConcreteTakeoff.Of(
                BillSection.LightAndEarthing,
                $"blocks of {pole.Name}s",
                count * block.ConcreteM3,
                works.Footings,
                Invariant($"{pole.BlocksText(count)}: {count * block.ConcreteM3:0.00} m3 + 5 %")
            ),
        ];
    }

    private static IEnumerable<QuantityLine> Feet(LightColumnStrength pole, int count)
    {
        var foot = pole.Column.Foot;
        yield return Line(
            "pole-plate",
            Invariant(
                $"base plate {foot.SideMm:0} x {foot.SideMm:0} x {foot.ThicknessMm:0} mm with {PoleFoot.GussetCount} gussets, welded on and galvanised, of a {pole.Name}"
            ),
            "nr",
            count,
            Invariant($"one a pole, {foot.MassKg:0.0} kg")
        );
        yield return Line(
            "pole-anchor",
            Invariant($"bolt M{foot.BoltMm:0} x {foot.BoltLengthMm:0} mm to cast in, with three nuts and washers"),
            "nr",
            PoleFoot.BoltCount * count,
            Invariant($"{PoleFoot.BoltCount} a pole")
        );
    }

    private static IEnumerable<QuantityLine> Light(Guard guard)
    {
        if (guard.Light is not { } light)
        {
            yield break;
        }

        var count = light.Lamps.Count;
        var origin = Invariant($"{count} lamps");
        yield return Line(light.Card.Name, light.Card.About, "nr", count, origin);
        yield return Line(
            "light-battery",
            Invariant($"battery {light.Card.Battery.BlockWh:0} Wh, {light.Card.Battery.BlockV:0.#} V, with fuse"),
            "nr",
            count * light.BlocksEach,
            Invariant($"{origin}, {light.NeededWh:0} Wh each")
        );
        yield return Line(
            "light-module",
            Invariant($"charging module {light.Card.Charger.RatedW:0} W with bracket"),
            "nr",
            count * light.ModulesEach,
            Invariant($"{origin}, {light.NeededW ?? 0:0} W each")
        );
        yield return Labour.Days("light", count, origin);
    }

    private static QuantityLine Line(string item, string what, string unit, double quantity, string origin) =>
        new(item, BillSection.LightAndEarthing, what, unit, quantity, origin);
}
