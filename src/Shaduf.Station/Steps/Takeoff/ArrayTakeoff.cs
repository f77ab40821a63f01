using Shaduf.Money;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Modules, drive, cables, light, earth and fence.</summary>
internal static class ArrayTakeoff
{
    /// <summary>Modules, drive and cables.</summary>
    public static IEnumerable<QuantityLine> Electric(Choice choice, Electrics electrics)
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
            // A cable that no card serves stands in the bill under a name that has no rate, so that the total says so.
            yield return new(
                cable.Card?.Name ?? $"{cable.Id}-not-found",
                BillSection.ArrayAndElectrics,
                $"{cable.Name}: {cable.Card?.About ?? "no card carries the duty"}",
                "m",
                cable.BoughtM,
                Invariant($"{cable.BoughtM / (1 + Electrics.CableWasteShare):0.#} m + 5 %")
            );
        }

        yield return new(
            "dc-isolator",
            BillSection.ArrayAndElectrics,
            "direct-current isolator and surge protection in a box",
            "set",
            choice.StringCount,
            "one a string"
        );
        yield return Labour.Days("modules", choice.ModuleCount, "all modules");
        yield return Labour.Days("cable", electrics.Cables.Sum(cable => cable.BoughtM), "all cables");
    }

    /// <summary>Light, earth and fence.</summary>
    public static IEnumerable<QuantityLine> Guarding(Guard guard)
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
        yield return Labour.Days("rods", guard.RodCount, "earthing");
        if (guard.Light is { } light)
        {
            yield return new(light.Name, BillSection.LightAndEarthing, light.About, "nr", 1, "brief");
            yield return Labour.Days("light", 1, "brief");
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
            yield return Labour.Days("posts", fence.PostCount, around);
        }
    }
}
