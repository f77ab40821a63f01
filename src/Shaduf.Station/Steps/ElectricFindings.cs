using Shaduf.Power;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of strings, drive and cables.</summary>
internal static class ElectricFindings
{
    /// <summary>All findings of the electrics.</summary>
    /// <param name="electrics">The electrics.</param>
    /// <param name="choice">The choice.</param>
    /// <param name="coldDegC">Record low [°C].</param>
    /// <param name="speedRatio">Highest speed in the year as a share of rated speed.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Electrics electrics, Choice choice, double coldDegC, double speedRatio) =>
        [
            .. Voltages(electrics, choice, coldDegC),
            .. Currents(electrics, choice),
            .. choice.Pump.Motor.Kind == MotorKind.ThreePhase ? ThreePhase(electrics, speedRatio) : [],
            TopSpeed(choice, speedRatio),
            Fuses(electrics, choice),
            .. electrics.Cables.Select(Cable),
            new(
                "electrics/protection",
                FindingStatus.Unchecked,
                "isolators, surge protection and protective conductors: not designed in this version; a licensed electrician decides by the local wiring rules",
                null,
                null,
                "",
                ""
            ),
        ];

    private static IEnumerable<Finding> Voltages(Electrics electrics, Choice choice, double coldDegC)
    {
        var (module, drive) = (choice.Module.Sheet, choice.Drive.Sheet);
        yield return Finding.AtMost(
            "electrics/cold-voltage",
            electrics.ColdV,
            Math.Min(drive.LargestDcV, module.SystemV),
            "V",
            Invariant($"open-circuit voltage of {choice.SeriesCount} modules at the record low"),
            "IEC 62548, NEC 690.7; drive and module card"
        );
        yield return Finding.AtLeast(
            "electrics/hot-voltage",
            electrics.AgedV,
            drive.WindowLowV,
            "V",
            "voltage on the hottest day, ten years old, inside the drive's window",
            "drive card"
        );
        var coldWorkingV = StringVoltage.ColdMaximumPowerV(module, choice.SeriesCount, coldDegC);
        yield return ColdWindow(coldWorkingV, drive.WindowHighV);
    }

    private static Finding ColdWindow(double workingV, double windowHighV) =>
        new(
            "electrics/cold-window",
            workingV <= windowHighV ? FindingStatus.Holds : FindingStatus.Look,
            workingV <= windowHighV
                ? "voltage at maximum power at the record low inside the drive's window"
                : "on the coldest mornings the drive cannot follow the strings to maximum power: it gives up power, not safety",
            workingV,
            windowHighV,
            "V",
            "drive card"
        );

    private static IEnumerable<Finding> Currents(Electrics electrics, Choice choice)
    {
        var (module, drive, motor) = (choice.Module.Sheet, choice.Drive.Sheet, choice.Pump.Motor);
        yield return Finding.AtMost(
            "electrics/short-circuit",
            ArrayCurrent.DesignA(module, choice.StringCount),
            drive.LargestShortCircuitA,
            "A",
            "1.25 times the short-circuit current of all strings against the drive's input",
            "IEC 62548"
        );
        yield return Finding.AtMost(
            "electrics/input-current",
            choice.StringCount * module.MaximumPowerA,
            drive.LargestInputA,
            "A",
            "working current of the strings against the drive's input",
            "drive card"
        );
        yield return Finding.AtMost(
            "electrics/drive-current",
            motor.RatedA,
            drive.LargestMotorA * electrics.DeratingShare,
            "A",
            "motor current against the drive after derating for height and heat",
            "drive makers' manuals: 1 % per degC above 40, 1 % per 100 m above 1000 m"
        );
        if (electrics.DriveAirDegC < electrics.RecordHighDegC)
        {
            yield return new(
                "electrics/drive-heat",
                FindingStatus.Look,
                "the record air temperature lies beyond what drives are rated for: set the drive in the shade and in moving air",
                electrics.RecordHighDegC,
                electrics.DriveAirDegC,
                "degC",
                "drive makers' manuals: derating to 50 degC"
            );
        }
    }

    private static IEnumerable<Finding> ThreePhase(Electrics electrics, double speedRatio)
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
            electrics.Cables[1].Duty.LengthM,
            null,
            "m",
            "motor makers: in practice almost always for submersible motors beyond 15 m"
        );
    }

    // The year, the yield, the levels and the pipes are worked out with this speed as the highest.
    private static Finding TopSpeed(Choice choice, double speedRatio)
    {
        var topHz = Math.Floor(speedRatio * choice.Pump.Motor.RatedHz * 10) / 10;
        return new(
            "electrics/top-speed",
            FindingStatus.Look,
            Invariant($"set the drive's highest frequency to {topHz:0.0} Hz: yield, levels and pipes hold for it"),
            topHz,
            choice.Pump.Motor.RatedHz,
            "Hz",
            "voltage of the hot string and yield of the source"
        );
    }

    private static Finding Fuses(Electrics electrics, Choice choice)
    {
        var fuse = electrics.Fuse;
        return new(
            "electrics/string-fuses",
            !fuse.Needed || fuse.Exists ? FindingStatus.Holds : FindingStatus.Stop,
            fuse.Needed
                ? Invariant(
                    $"string fuses are needed: above {fuse.AboveA:0.0} A and at most {fuse.AtMostA:0.0} A, type gPV, both poles"
                )
                : "no string fuses are needed: the other strings cannot overload a module",
            fuse.ReverseA,
            choice.Module.Sheet.SeriesFuseA,
            "A",
            "IEC 62548"
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
}
