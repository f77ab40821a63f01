using Shaduf.Power;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of strings, drive, motor and cables; those of what protects them are in <see cref="ProtectionFindings"/>.</summary>
internal static class ElectricFindings
{
    /// <summary>All findings of the electrics.</summary>
    /// <param name="electrics">The electrics.</param>
    /// <param name="choice">The choice.</param>
    /// <param name="site">Record low [°C] and elevation [m].</param>
    /// <param name="speedRatio">Highest speed in the year as a share of rated speed.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(
        Electrics electrics,
        Choice choice,
        (double ColdDegC, double ElevationM) site,
        double speedRatio
    ) =>
        [
            .. Voltages(electrics, choice, site.ColdDegC),
            .. Currents(electrics, choice),
            .. Drive(electrics, choice, site.ElevationM),
            .. choice.Pump.Motor.Kind == MotorKind.ThreePhase ? ThreePhase(electrics, choice, speedRatio) : [],
            TopSpeed(choice, speedRatio),
            electrics.Lowest.Finding(choice.Pump.Motor),
            .. CoolingRule(choice.Pump),
            .. electrics.Cables.SelectMany(Cable),
            .. ProtectionFindings.Of(electrics, choice),
        ];

    /// <summary>The share that the brief says its direct-current cables lose, beside that of the cables chosen.</summary>
    /// <param name="electrics">The electrics.</param>
    /// <param name="losses">What the brief says.</param>
    /// <returns>The finding, where the brief says it.</returns>
    public static IEnumerable<Finding> Wiring(Electrics electrics, LossesBrief losses)
    {
        if (losses.WiringShare is { } given)
        {
            yield return new(
                "electrics/wiring",
                electrics.DirectDropShare <= given ? FindingStatus.Holds : FindingStatus.Look,
                "drop of the chosen direct-current cables at full sun against the brief's array.losses.wiring, which the year run takes",
                electrics.DirectDropShare * 100,
                given * 100,
                "%",
                "brief; Ohm's law"
            );
        }
    }

    private static IEnumerable<Finding> Voltages(Electrics electrics, Choice choice, double coldDegC)
    {
        var (module, drive) = (choice.Module.Sheet, choice.Drive.Sheet);
        yield return Finding.AtMost(
            "electrics/cold-voltage",
            electrics.ColdV,
            Math.Min(drive.LargestDcV, module.SystemV),
            "V",
            Invariant(
                $"open-circuit voltage of {choice.SeriesCount} modules at the record low of {coldDegC:0.#} degC against what drive ({drive.LargestDcV:0} V) and modules ({module.SystemV:0} V) take"
            ),
            "IEC 62548, NEC 690.7; drive and module card"
        );
        yield return Finding.AtLeast(
            "electrics/hot-voltage",
            electrics.AgedV,
            drive.WindowLowV,
            "V",
            Invariant(
                $"voltage on the hottest day, cells at {electrics.HotCellDegC:0} degC, {electrics.AgeYears} years old (new: {electrics.HotV:0} V), inside the drive's window"
            ),
            "drive card; 0.25 % of voltage lost a year: planning assumption, from memory"
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
            Invariant(
                $"motor current against the drive's {drive.LargestMotorA:0.#} A after derating for height and heat to {electrics.DeratingShare * 100:0} %"
            ),
            "drive makers' manuals: 1 % per degC above 40, 1 % per 100 m above 1000 m"
        );
    }

    private static IEnumerable<Finding> Drive(Electrics electrics, Choice choice, double elevationM)
    {
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

        if (elevationM > 2000)
        {
            yield return new(
                "electrics/drive-height",
                FindingStatus.Look,
                Invariant(
                    $"above 2000 m thin air insulates less: {choice.Drive.Name}'s maker must confirm it for the site"
                ),
                elevationM,
                2000,
                "m",
                "drive makers' manuals"
            );
        }
    }

    private static IEnumerable<Finding> ThreePhase(Electrics electrics, Choice choice, double speedRatio)
    {
        var busV = electrics.AgedV * (1 - electrics.DirectDropShare);
        var neededV = BusVoltage.FullSpeedV(choice.Pump.Motor.RatedV, electrics.MotorDropShare);
        yield return new(
            "electrics/bus-voltage",
            busV >= neededV ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"direct voltage at the drive on the hottest day, {electrics.AgeYears} years old, against what full speed of the {choice.Pump.Motor.RatedV:0} V motor needs through filter and cable ({electrics.MotorDropShare * 100:0.0} % of drop)"
            ),
            busV,
            neededV,
            "V",
            "U = Vdc/sqrt(2), space-vector modulation"
        );
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

    // A card that asks for less than the makers' rule is not believed without a word; 0.15 m/s is half a foot a second.
    private const double RoundingShare = 0.98;

    private static IEnumerable<Finding> CoolingRule(PumpCard pump)
    {
        if (pump is not { Body: SubmersibleBody body, Motor.Kind: MotorKind.ThreePhase })
        {
            yield break;
        }

        var leastMPerS = CoolingFlow.LeastMPerS(body.MotorMm / 1000, pump.Motor.ShaftKW);
        if (body.LowestCoolingMPerS < RoundingShare * leastMPerS)
        {
            yield return new(
                "electrics/cooling-rule",
                FindingStatus.Look,
                "the pump card asks for less water past the motor than the makers' rule for its size: have the maker confirm it",
                body.LowestCoolingMPerS,
                leastMPerS,
                "m/s",
                "submersible-motor makers: 0.25 ft/s for 4-inch motors from 2.2 kW on, 0.5 ft/s for wider ones, to 30 degC"
            );
        }
    }

    private static IEnumerable<Finding> Cable(CableRun run)
    {
        if (run.Choice.Fit is not { } fit)
        {
            yield return new(
                $"electrics/{run.Id}",
                FindingStatus.Stop,
                $"no cable card carries the current of the {run.Name} within its drop",
                null,
                run.Duty.LargestDropShare * 100,
                "%",
                "common practice, no source"
            );
            yield break;
        }

        var worst = fit.Stretches.MinBy(each => each.AmpacityA)!;
        yield return Finding.AtMost(
            $"electrics/{run.Id}",
            fit.DropShare * 100,
            run.Duty.LargestDropShare * 100,
            "%",
            $"voltage drop, {run.Name}: {fit.Option.Name}",
            "common practice, no source; IEC 60228 resistances"
        );
        yield return Finding.AtLeast(
            $"electrics/{run.Id}-current",
            fit.AmpacityA,
            run.Duty.LeastAmpacityA,
            "A",
            Invariant(
                $"current that the {fit.Option.Name} may carry, {run.Name}, where it lies worst: {worst.Stretch.Where} at {worst.Stretch.SurroundingsDegC:0} degC, factor {worst.Stretch.LayingFactor:0.00}"
            ),
            "IEC 60364-5-52; cable card"
        );
    }
}
