using Shaduf.Money;
using Shaduf.Power;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Cables, and what protects the electrics.</summary>
internal static class ElectricTakeoff
{
    private const BillSection Section = BillSection.ArrayAndElectrics;

    // From the wellhead to its arresters and from rack to rack; common practice, no source.
    private const double EarthExtraM = 5;

    /// <summary>All cables, the earth conductor with them.</summary>
    public static IEnumerable<QuantityLine> Cables(Choice choice, Electrics electrics)
    {
        foreach (var cable in electrics.Cables)
        {
            // A cable that no card serves stands in the bill under a name that has no rate, so that the total says so.
            yield return new(
                cable.Card?.Name ?? $"{cable.Id}-not-found",
                Section,
                $"{cable.Name}: {cable.Card?.About ?? "no card carries the duty"}",
                "m",
                cable.BoughtM,
                Invariant($"{cable.BoughtM / (1 + CableRuns.WasteShare):0.#} m + 5 %")
            )
            {
                NetQuantity = cable.BoughtM / (1 + CableRuns.WasteShare),
            };
        }

        var protection = electrics.Protection;
        var earthM = EarthM(choice, electrics);
        yield return new(
            protection.EarthCard?.Name ?? "equipment-earth-not-found",
            Section,
            $"earth from frames and rack to the drive: {protection.EarthCard?.About ?? "no card is large enough"}",
            "m",
            earthM * (1 + CableRuns.WasteShare),
            Invariant($"{earthM:0.#} m beside the cables + 5 %")
        )
        {
            NetQuantity = earthM,
        };
        yield return Labour.Days("cable", electrics.Cables.Sum(cable => cable.BoughtM) + earthM, "all cables");
    }

    /// <summary>Isolators, boxes, fuses, arresters and filter.</summary>
    public static IEnumerable<QuantityLine> Devices(Choice choice, Electrics electrics)
    {
        var protection = electrics.Protection;
        var places = protection.PlaceCount;
        var placesText = protection.IsFar ? "at the array and at the drive" : "at the drive";
        yield return Of(protection.Isolator, "isolator", "direct-current isolator", places, placesText);
        if (choice.StringCount > 1)
        {
            yield return new(
                "combiner-box",
                Section,
                "box with terminals where strings meet",
                "nr",
                1,
                $"{choice.StringCount} strings, {protection.BoxPlace}"
            );
        }

        var boxes = places - (choice.StringCount > 1 ? 1 : 0);
        if (boxes > 0)
        {
            yield return new("dc-box", Section, "box for isolator and arresters", "nr", boxes, placesText);
        }

        if (electrics.Fuse.Needed)
        {
            var fuses = 2 * choice.StringCount;
            yield return Of(protection.Fuse, "string-fuse", "string fuse, gPV", fuses, "two a string");
            yield return new("fuse-holder", Section, "holder of a string fuse", "nr", fuses, "two a string");
        }

        yield return Of(
            protection.DirectArrester,
            "surge-direct",
            "arresters, direct side",
            protection.DirectNeed.IsAtBothEnds ? 2 : 1,
            placesText
        );
        if (protection.MotorNeed is not null)
        {
            yield return Of(
                protection.MotorArrester,
                "surge-motor",
                "arresters of the motor",
                1,
                "at the motor's end of its cable"
            );
        }

        yield return new("signal-arrester", Section, "arrester of the probe's line", "nr", 1, "one probe");
        if (electrics.Filter.Kind != FilterKind.None)
        {
            yield return Of(electrics.Filter.Card, "output-filter", "output filter", 1, "motor cable");
        }

        yield return Labour.Days("boxes", places, placesText);
    }

    /// <summary>Length of the earth conductor from the racks to the drive [m].</summary>
    public static double EarthM(Choice choice, Electrics electrics)
    {
        var direct = electrics.Cables.SkipLast(1).ToList();
        var farthestM = electrics.Layout.Strings.Max(route => route.HomeM);
        var wayM = direct.Count > 1 ? direct[1].Duty.LengthM : direct[0].Duty.LengthM - farthestM;
        return wayM + farthestM + (EarthExtraM * choice.Grid.RackCount);
    }

    // What no card serves stands in the bill under a name that has no rate.
    private static QuantityLine Of(Card? card, string what, string about, int count, string origin) =>
        new(card?.Name ?? $"{what}-not-found", Section, card?.About ?? $"{about}: no card serves", "nr", count, origin);
}
