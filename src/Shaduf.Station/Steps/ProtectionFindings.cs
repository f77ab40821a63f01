using Shaduf.Power;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of fuses, isolators, arresters, filter and earth.</summary>
internal static class ProtectionFindings
{
    /// <summary>All findings of the protection.</summary>
    /// <param name="electrics">The electrics.</param>
    /// <param name="choice">The choice.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Electrics electrics, Choice choice) =>
        [
            Fuses(electrics, choice),
            Isolator(electrics.Protection),
            .. Direct(electrics.Protection),
            .. AtWell(electrics.Protection),
            Filter(electrics, choice),
            .. Earth(electrics),
            new(
                "electrics/protection",
                FindingStatus.Look,
                "labels, residual-current devices, insulation monitoring, inspection and who may do the work: a licensed electrician decides by the local wiring rules",
                null,
                null,
                "",
                "IEC 60364-7-712, IEC 62548, IEC 62446-1 as adopted"
            ),
        ];

    private static Finding Fuses(Electrics electrics, Choice choice)
    {
        var (fuse, card) = (electrics.Fuse, electrics.Protection.Fuse);
        var (status, says) = (fuse.Needed, fuse.Exists, card) switch
        {
            (false, _, _) => (FindingStatus.Holds, WhyNone(fuse, choice)),
            (_, false, _) => (
                FindingStatus.Stop,
                Invariant(
                    $"string fuses are needed and no rating exists: it must be above {fuse.AboveA:0.0} A (1.5 Isc) and at most {fuse.AtMostA:0.0} A that the module bears: take fewer strings or another module"
                )
            ),
            (_, _, null) => (
                FindingStatus.Stop,
                Invariant(
                    $"string fuses are needed and no fuse card serves: above {fuse.AboveA:0.0} A, at most {fuse.AtMostA:0.0} A, for {electrics.ColdV:0} V"
                )
            ),
            (_, _, { } found) => (
                FindingStatus.Holds,
                Invariant(
                    $"string fuses are needed: {found.Name} of {found.RatedA:0.#} A, above {fuse.AboveA:0.0} A and at most {fuse.AtMostA:0.0} A, type gPV, in both poles of each string"
                )
            ),
        };
        return new(
            "electrics/string-fuses",
            status,
            says,
            fuse.ReverseA,
            choice.Module.Sheet.SeriesFuseA,
            "A",
            "IEC 62548; IEC 60269-6"
        );
    }

    private static string WhyNone(StringFuse fuse, Choice choice) =>
        choice.StringCount == 1
            ? "no string fuses are needed: there is one string, and nothing can drive current back into it"
            : Invariant(
                $"no string fuses are needed: {choice.StringCount - 1} other strings drive back {fuse.ReverseA:0.0} A at most, and the module bears {choice.Module.Sheet.SeriesFuseA:0.#} A"
            );

    private static Finding Isolator(Protection protection)
    {
        var where = protection.IsFar
            ? "at the drive and at the array, which stands more than 10 m away"
            : "at the drive";
        return protection.Isolator is { } card
            ? Finding.AtLeast(
                "electrics/isolator",
                card.LargestA,
                protection.IsolatorA,
                "A",
                Invariant(
                    $"isolator {card.Name} {where}: both poles, category DC-PV2, {card.LargestV:0} V for {protection.IsolatorV:0} V at the record low; current against 1.25 times the short-circuit current of all strings"
                ),
                "IEC 60947-3, IEC 60364-7-712"
            )
            : new(
                "electrics/isolator",
                FindingStatus.Stop,
                Invariant(
                    $"no isolator card breaks {protection.IsolatorA:0.0} A at {protection.IsolatorV:0} V direct current ({where}): never use an alternating-current switch or breaker"
                ),
                null,
                protection.IsolatorA,
                "A",
                "IEC 60947-3, IEC 60364-7-712"
            );
    }

    private static IEnumerable<Finding> Direct(Protection protection)
    {
        var (need, card) = (protection.DirectNeed, protection.DirectArrester);
        yield return card is null
            ? Missing("electrics/surge-direct", need, "between array and drive")
            : Finding.AtMost(
                "electrics/surge-direct",
                card.LetThroughKV,
                need.MostLetThroughKV,
                "kV",
                Invariant(
                    $"arresters {card.Name}, type {card.TypeNumber}, {(need.IsAtBothEnds ? "at the drive and at the array" : "at the drive")}, between each pole and earth, leads together 0.5 m at most: {card.ContinuousV:0} V for {need.LeastContinuousV:0} V; let-through against 0.8 of the {protection.DirectWithstandKV:0.#} kV that the drive withstands. {RodText(protection)}"
                ),
                "IEC 61643-32, IEC 60364-7-712"
            );
        yield return new(
            "electrics/surge-signal",
            FindingStatus.Look,
            "a signal arrester in the line of the level probe, in the drive's box; the same for any other control line that leaves the box",
            null,
            null,
            "",
            "IEC 60364-7-712, IEC 61643-22"
        );
    }

    private static IEnumerable<Finding> AtWell(Protection protection)
    {
        if (protection.MotorNeed is not { } need)
        {
            yield break;
        }

        yield return protection.MotorArrester is { } card
            ? new(
                "electrics/surge-motor",
                FindingStatus.Look,
                Invariant(
                    $"arresters {card.Name}, type {card.TypeNumber}, at the motor's end of its cable, lines to earth, behind the filter only and only if the drive's maker allows it: {card.ContinuousV:0} V for {need.LeastContinuousV:0} V"
                ),
                card.LetThroughKV,
                need.MostLetThroughKV,
                "kV",
                "IEC 60364-5-53, 534; drive maker"
            )
            : Missing("electrics/surge-motor", need, "at the motor's end of its cable");
    }

    private static Finding Missing(string id, SurgeNeed need, string where) =>
        new(
            id,
            FindingStatus.Stop,
            Invariant(
                $"no arrester card serves {where}: type {need.TypeNumber}, at least {need.LeastContinuousV:0} V, at least {need.LeastDischargeKA:0} kA (8/20){(need.LeastImpulseKA > 0 ? Invariant($" and {need.LeastImpulseKA:0.0} kA (10/350)") : "")}, letting through"
            ),
            null,
            need.MostLetThroughKV,
            "kV",
            "IEC 61643-32, IEC 60364-7-712"
        );

    private static string RodText(Protection protection) =>
        protection.Lightning.Rod switch
        {
            LightningRod.None => "No lightning rod: type 2 is enough.",
            LightningRod.Apart => "The lightning rod keeps its distance: type 2 is enough.",
            _ => "The rack is joined to the lightning rod, or must be taken to be: part of a stroke flows, type 1.",
        };

    private static Finding Filter(Electrics electrics, Choice choice)
    {
        var filter = electrics.Filter;
        if (filter.Need is not { } need)
        {
            return BrushlessCable(filter, choice.Drive);
        }

        var silent = filter.IsRiseAssumed ? " (0.1 µs taken: the drive card is silent)" : "";
        var (status, says) = (filter.Kind, filter.Card) switch
        {
            (FilterKind.None, _) => (FindingStatus.Holds, "the motor's cable needs no output filter"),
            (_, null) => (
                FindingStatus.Stop,
                $"the motor's cable needs a {filter.Words} and no filter card serves: {string.Join("; ", need.Why)}"
            ),
            (_, { } card) => (
                filter.IsRiseAssumed ? FindingStatus.Look : FindingStatus.Holds,
                Invariant(
                    $"{filter.Words} {card.Name} at the drive, {card.DropShare * 100:0.#} % of drop: {string.Join("; ", need.Why)}{silent}"
                )
            ),
        };
        return new(
            "electrics/output-filter",
            status,
            says,
            filter.CableM,
            filter.Card?.LongestCableM,
            "m",
            "submersible-motor and drive makers' guidelines"
        );
    }

    private static Finding BrushlessCable(MotorFilter filter, DriveCard drive) =>
        drive.Limits.BareM is { } bareM
            ? Finding.AtMost(
                "electrics/output-filter",
                filter.CableM,
                bareM,
                "m",
                "cable to the brushless motor against what its controller allows; no filter stands between them",
                "drive card"
            )
            : new(
                "electrics/output-filter",
                FindingStatus.Look,
                "ask the controller's maker whether the brushless motor may hang on this length of cable: its card is silent",
                filter.CableM,
                null,
                "m",
                "drive card"
            );

    private static IEnumerable<Finding> Earth(Electrics electrics)
    {
        var protection = electrics.Protection;
        var frame = protection.FrameEarth;
        yield return protection.EarthCard is { } card
            ? Finding.AtLeast(
                "electrics/equipment-earth",
                card.SizeMm2,
                Math.Max(frame.AdiabaticMm2, frame.LeastMm2),
                "mm2",
                Invariant(
                    $"earth conductor {card.Name} from frames and rack to the drive: {protection.FaultA:0} A for {Protection.FaultS:0} s need {frame.AdiabaticMm2:0.00} mm2, strength and lightning {frame.LeastMm2:0.#} mm2; the array cannot clear a fault by its own current"
                ),
                "IEC 60364-5-54, 543.1.2; IEC 62548; IEC 62305-3"
            )
            : new(
                "electrics/equipment-earth",
                FindingStatus.Stop,
                "no cable card for an earth conductor of this size",
                null,
                frame.SizeMm2,
                "mm2",
                "IEC 60364-5-54, 543.1.2; IEC 62548; IEC 62305-3"
            );
        if (electrics.MotorCable.Card is { } motor)
        {
            yield return Finding.AtLeast(
                "electrics/motor-earth",
                motor.SizeMm2,
                protection.MotorEarth.AdiabaticMm2,
                "mm2",
                "the earth core of the motor's cable, as large as its lines, against the fault current",
                "IEC 60364-5-54, 543.1.2 and table 54.2"
            );
        }
    }
}
