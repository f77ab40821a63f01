using Shaduf.Power;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>One run of cable.</summary>
/// <param name="Id">Short name: 'string-cable'.</param>
/// <param name="Name">What it joins.</param>
/// <param name="Card">The cable; null when none of the cards does the duty.</param>
/// <param name="Choice">How it was chosen.</param>
/// <param name="Duty">What it must do.</param>
/// <param name="BoughtM">Length to buy, all runs [m].</param>
public sealed record CableRun(
    string Id,
    string Name,
    CableCard? Card,
    CableChoice Choice,
    CableDuty Duty,
    double BoughtM
);

/// <summary>Strings, drive and cables.</summary>
/// <param name="ColdV">Open-circuit voltage of a string at the record low [V].</param>
/// <param name="HotV">Voltage at maximum power on the hottest day [V].</param>
/// <param name="AgedV">The same after ten years [V].</param>
/// <param name="HotCellDegC">Hottest cell [°C].</param>
/// <param name="Fuse">Whether string fuses are needed.</param>
/// <param name="DeratingShare">Share of the drive's current left by height and heat.</param>
/// <param name="Cables">The cables.</param>
public sealed record Electrics(
    double ColdV,
    double HotV,
    double AgedV,
    double HotCellDegC,
    StringFuse Fuse,
    double DeratingShare,
    IReadOnlyList<CableRun> Cables
)
{
    /// <summary>Largest drop from array to drive; common practice, no source.</summary>
    public const double StringDropShare = 0.02;

    // Largest conductor temperatures: cross-linked insulation in the sun, PVC or rubber in the well.
    private const double StringConductorDegC = 90;
    private const double MotorConductorDegC = 70;

    // Bought beyond the measured way: slack, loops and ends; common practice, no source.
    private const double CableWasteShare = 0.05;

    /// <summary>Sizes strings and cables for the choice.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The electrics.</returns>
    public static Electrics Of(Choice choice, Brief brief, Survey survey, CardShelf shelf)
    {
        var module = choice.Module.Sheet;
        var hotDegC = survey["record-high"] + Sizing.CellAboveAirK;
        return new(
            StringVoltage.ColdOpenCircuitV(module, choice.SeriesCount, survey["record-low"]),
            StringVoltage.HotMaximumPowerV(module, choice.SeriesCount, hotDegC),
            StringVoltage.AgedHotMaximumPowerV(module, choice.SeriesCount, hotDegC),
            hotDegC,
            StringFuse.For(module, choice.StringCount),
            DriveDerating.Share(Math.Max(0, brief.Site.ElevationM), survey["record-high"]),
            [StringCable(choice, survey, shelf), MotorCable(choice, survey, shelf)]
        );
    }

    /// <summary>Findings of the electrics.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="speedRatio">Highest speed in the year as a share of rated speed.</param>
    /// <returns>The findings.</returns>
    public IEnumerable<Finding> Findings(Choice choice, double speedRatio)
    {
        var (module, drive, motor) = (choice.Module.Sheet, choice.Drive.Sheet, choice.Pump.Motor);
        yield return Finding.AtMost(
            "electrics/cold-voltage",
            ColdV,
            Math.Min(drive.LargestDcV, module.SystemV),
            "V",
            Invariant($"open-circuit voltage of {choice.SeriesCount} modules at the record low"),
            "IEC 62548, NEC 690.7; drive and module card"
        );
        yield return Finding.AtLeast(
            "electrics/hot-voltage",
            AgedV,
            drive.WindowLowV,
            "V",
            "voltage on the hottest day, ten years old, inside the drive's window",
            "drive card"
        );
        yield return Finding.AtMost(
            "electrics/short-circuit",
            ArrayCurrent.DesignA(module, choice.StringCount),
            drive.LargestShortCircuitA,
            "A",
            "1.25 times the short-circuit current of all strings against the drive's input",
            "IEC 62548"
        );
        yield return Finding.AtMost(
            "electrics/drive-current",
            motor.RatedA,
            drive.LargestMotorA * DeratingShare,
            "A",
            "motor current against the drive after derating for height and heat",
            "drive makers' manuals: 1 % per degC above 40, 1 % per 100 m above 1000 m"
        );
        if (motor.Kind == MotorKind.ThreePhase)
        {
            yield return new(
                "electrics/full-speed",
                speedRatio >= 1 ? FindingStatus.Holds : FindingStatus.Look,
                speedRatio >= 1
                    ? "the hot string turns the motor at full speed"
                    : "the hot string or the source does not let the motor reach full speed: the year was run with this speed as the highest",
                speedRatio,
                1,
                "",
                "U = Vdc/sqrt(2), space-vector modulation"
            );
            yield return new(
                "electrics/output-filter",
                FindingStatus.Look,
                "ask the drive's and the motor's maker which output filter this cable length needs before ordering",
                Cables[1].Duty.LengthM,
                null,
                "m",
                "motor makers: in practice almost always for submersible motors beyond 15 m"
            );
        }

        yield return new(
            "electrics/string-fuses",
            !Fuse.Needed || Fuse.Exists ? FindingStatus.Holds : FindingStatus.Stop,
            Fuse.Needed
                ? Invariant(
                    $"string fuses are needed: above {Fuse.AboveA:0.0} A and at most {Fuse.AtMostA:0.0} A, type gPV, both poles"
                )
                : "no string fuses are needed: the other strings cannot overload a module",
            Fuse.ReverseA,
            module.SeriesFuseA,
            "A",
            "IEC 62548"
        );
        foreach (var cable in Cables)
        {
            yield return Cable(cable);
        }

        yield return new(
            "electrics/protection",
            FindingStatus.Unchecked,
            "isolators, surge protection and protective conductors: not designed in this version; a licensed electrician decides by the local wiring rules",
            null,
            null,
            "",
            ""
        );
    }

    private static Finding Cable(CableRun run) =>
        run.Choice.Fit is { } fit
            ? Finding.AtMost(
                $"electrics/{run.Id}",
                fit.DropShare * 100,
                run.Duty.LargestDropShare * 100,
                "%",
                $"voltage drop, {run.Name}: {fit.Option.Name}",
                "common practice, no source; IEC 60228 resistances"
            )
            : new(
                $"electrics/{run.Id}",
                FindingStatus.Stop,
                $"no cable card carries the current of the {run.Name} within its drop",
                null,
                run.Duty.LargestDropShare * 100,
                "%",
                "common practice, no source"
            );

    private static CableRun StringCable(Choice choice, Survey survey, CardShelf shelf)
    {
        var module = choice.Module.Sheet;
        var duty = new CableDuty(
            Math.Max(module.MaximumPowerA, ArrayCurrent.UnfusedStringCableA(module, choice.StringCount)),
            survey["string-cable"],
            choice.SeriesCount * module.MaximumPowerV,
            StringDropShare,
            CableSupply.Dc,
            new(Math.Min(70, survey["record-high"] + 20), StringConductorDegC)
        );
        return Run(
            "string-cable",
            "strings to drive",
            shelf,
            CableUse.String,
            duty,
            2 * choice.StringCount * duty.LengthM
        );
    }

    private static CableRun MotorCable(Choice choice, Survey survey, CardShelf shelf)
    {
        var motor = choice.Pump.Motor;
        var supply =
            motor.Kind == MotorKind.ThreePhase
                ? CableSupply.ThreePhase(motor.PowerFactor, motor.RatedHz)
                : CableSupply.Dc;
        var duty = new CableDuty(
            motor.RatedA,
            survey["motor-cable"] + choice.Lift.RiserM,
            motor.RatedV,
            1 - Hydraulics.MotorCableKeptShare,
            supply,
            new(Math.Min(50, survey["record-high"]), MotorConductorDegC)
        );
        return Run("motor-cable", "drive to motor", shelf, CableUse.Motor, duty, duty.LengthM);
    }

    private static CableRun Run(string id, string name, CardShelf shelf, CableUse use, CableDuty duty, double netM)
    {
        var cards = shelf.All<CableCard>().Where(card => card.Use == use).ToList();
        var choice = CableSize.Smallest(
            [.. cards.Select(card => new CableOption(card.Name, card.SizeMm2, card.Conductor, card.AmpacityA))],
            duty
        );
        return new(
            id,
            name,
            cards.FirstOrDefault(card => card.Name == choice.Fit?.Option.Name),
            choice,
            duty,
            netM * (1 + CableWasteShare)
        );
    }
}
