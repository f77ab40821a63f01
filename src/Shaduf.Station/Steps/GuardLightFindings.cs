using Shaduf.Power;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of the night light.</summary>
internal static class GuardLightFindings
{
    public static IEnumerable<Finding> Of(GuardLight light, GuardField field, IReadOnlyList<GuardPole> poles)
    {
        var heightM = light.Lamps[0].HeightM;
        yield return new(
            "guard/light",
            light.MinLux >= light.LeastLux ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"least light of {light.Lamps.Count} x {light.Card.Luminaire.FluxLm:0} lm on ground and modules, mean {light.MeanLux:0.0} lx; {light.ShadeShare * 100:0} % lies in the racks' shade{(light.MinLux >= light.LeastLux ? "" : ": more or higher lamps are needed")}"
            ),
            light.MinLux,
            light.LeastLux,
            "lx",
            "point by point, E = I cos3/H2; the aim is EN 12464-2 in order of magnitude, from memory"
        );
        yield return new(
            "guard/light-evenness",
            light.EvenRatio >= GuardLight.LeastEvenRatio ? FindingStatus.Holds : FindingStatus.Look,
            light.EvenRatio >= GuardLight.LeastEvenRatio
                ? "least over mean light: even enough"
                : "least over mean light: bright under the lamp, dark at the rim; higher or more lamps even it out",
            light.EvenRatio,
            GuardLight.LeastEvenRatio,
            "",
            "EN 12464-2 in order of magnitude, from memory"
        );
        yield return Height(heightM, field, poles);
        yield return Battery(light);
        yield return Charger(light);
        yield return Surge(poles);
    }

    // Above the modules, and on a mast no higher than its tube.
    private static Finding Height(double heightM, GuardField field, IReadOnlyList<GuardPole> poles)
    {
        var isHigh = heightM >= field.TopM + 1;
        var isAbove = poles.Any(pole =>
            pole is { HasLamp: true, HasRod: true } && heightM > pole.HeightM - (LightColumn.TipMm / 1000) + 1e-9
        );
        return new(
            "guard/light-pole",
            !isHigh ? FindingStatus.Stop
                : isAbove ? FindingStatus.Look
                : FindingStatus.Holds,
            !isHigh
                    ? "lamps hang too low: less than a metre above the racks' top edge they light the backs of the modules"
                : isAbove
                    ? "the masts' tubes end below the lamps, which the air rod cannot carry: ask for masts a metre taller than the lamps hang"
                : "lamps hang at least a metre above the racks' top edge",
            heightM,
            field.TopM + 1,
            "m",
            "common practice, no source"
        );
    }

    // Each lamp has battery and module of its own: a surge comes in only by a cable that leaves the pole.
    private static Finding Surge(IReadOnlyList<GuardPole> poles) =>
        new(
            "guard/light-surge",
            FindingStatus.Look,
            poles.Any(pole => pole is { HasLamp: true, HasRod: true })
                ? "lamps hang on lightning masts: bond housing, box and module to the mast, keep battery and module on it and let no cable leave it; a cable that must leave needs an arrester of type 1 for the battery's voltage, and after a stroke the lamp's electronics may be lost"
                : "keep battery and module on the lamp's pole, earth the pole with the rest and let no cable leave it; a cable that must leave needs an arrester of type 2 for the battery's voltage",
            null,
            null,
            "",
            "IEC 62305-4 and IEC 60364-5-53, 534 in order of magnitude, from memory"
        );

    private static Finding Battery(GuardLight light)
    {
        var battery = light.Card.Battery;
        var isFrozen =
            battery is { Kind: BatteryKind.LithiumIronPhosphate, ChargesBelowZero: false } && light.ColdDegC < 0;
        return new(
            "guard/light-battery",
            isFrozen ? FindingStatus.Stop : FindingStatus.Holds,
            isFrozen
                ? Invariant(
                    $"lithium must not be charged below 0 degC and the record is {light.ColdDegC:0.#} degC: take a battery with a heater or a cold cut-out, or lead"
                )
                : Invariant(
                    $"battery of one lamp: {light.BlocksEach} x {battery.BlockWh:0} Wh for {light.Nights:0.#} nights of {light.HoursPerNight:0.0} h; fuse at its pole"
                ),
            light.BlocksEach * battery.BlockWh,
            light.NeededWh,
            "Wh",
            "IEEE 1562, IEC 61427 form; depth and losses are planning values, from memory"
        );
    }

    private static Finding Charger(GuardLight light) =>
        light.NeededW is { } neededW
            ? new(
                "guard/light-module",
                FindingStatus.Holds,
                Invariant(
                    $"charging module of one lamp: {light.ModulesEach} x {light.Card.Charger.RatedW:0} W at the array's tilt, for {light.WorstSunKWhPerM2Day:0.0} kWh/m2/d in the worst month; an empty battery is full again within {GuardLight.RefillDays:0} days"
                ),
                light.ModulesEach * light.Card.Charger.RatedW,
                neededW,
                "W",
                "IEC 62124, IEEE 1562 form; losses are planning values, from memory"
            )
            : new(
                "guard/light-module",
                FindingStatus.Stop,
                "in the worst month there is too little sun to charge a lamp: burn it fewer hours, or feed it from elsewhere",
                light.WorstSunKWhPerM2Day,
                null,
                "kWh/m2/d",
                "weather of the brief"
            );
}
