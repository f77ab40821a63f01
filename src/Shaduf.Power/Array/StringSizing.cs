using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Power;

/// <summary>How many modules may stand in series.</summary>
/// <param name="Fewest">Smallest count, at least 1.</param>
/// <param name="Most">Largest count; below <paramref name="Fewest"/> when no string exists.</param>
/// <param name="WhyFewest">The limit that sets the smallest count, in plain words.</param>
/// <param name="WhyMost">The limit that sets the largest count, in plain words.</param>
public sealed record StringRange(int Fewest, int Most, string WhyFewest, string WhyMost)
{
    /// <summary>Whether any count satisfies every limit.</summary>
    public bool Exists => Fewest <= Most;
}

/// <summary>How many modules in series and how many strings side by side a drive can take.</summary>
public static class StringSizing
{
    /// <summary>
    /// Counts in series that stay below every voltage limit when cold and, hot and aged, stay inside the
    /// drive's window and turn the motor at full speed. Full speed is no limit for a brushless motor with its own
    /// controller. The drop in motor cable and filter is not counted here: see <see cref="BusVoltage.SpeedRatio"/>.
    /// </summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="drive">The drive's data sheet.</param>
    /// <param name="motor">The motor's data sheet.</param>
    /// <param name="coldDegC">Lowest air temperature on record [°C], -60 to 40.</param>
    /// <param name="hotCellDegC">Hottest cell temperature [°C], -20 to 120.</param>
    /// <param name="ageYears">Age of the modules at which the string must still serve [years], 0 to 50.</param>
    /// <returns>The range and the limit at each end; none exists when the drive does not turn this kind of motor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of a sheet, is outside its range.</exception>
    /// <source>IEC 62548:2016, maximum voltage of the array; NEC 690.7; full speed: see <see cref="BusVoltage"/>.</source>
    public static StringRange Series(
        ModuleSheet module,
        DriveSheet drive,
        MotorSheet motor,
        double coldDegC,
        double hotCellDegC,
        int ageYears
    )
    {
        var window = InWindow(module, drive, coldDegC, hotCellDegC, ageYears);
        if (drive.Drives != motor.Kind)
        {
            return window with { Most = 0, WhyMost = "the drive does not turn this kind of motor" };
        }

        if (motor.Kind == MotorKind.BrushlessDc)
        {
            return window;
        }

        var fullSpeedV = BusVoltage.FullSpeedV(motor.RatedV, 0);
        var fewest = StringVoltage.FewestInSeries(module, fullSpeedV, hotCellDegC, ageYears);
        var why = Invariant($"the {fullSpeedV:0.0} V of bus that full speed of a {motor.RatedV:0.#} V motor needs");
        return fewest > window.Fewest
            ? window with
            {
                Fewest = fewest,
                WhyFewest = Reaching(module, fewest, (hotCellDegC, ageYears), why),
            }
            : window;
    }

    /// <summary>
    /// Counts in series by the drive's and the module's limits alone, for a station that accepts a lower top speed. A
    /// cold voltage at maximum power above the window is no limit: there the drive gives up power, not safety.
    /// </summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="drive">The drive's data sheet.</param>
    /// <param name="coldDegC">Lowest air temperature on record [°C], -60 to 40.</param>
    /// <param name="hotCellDegC">Hottest cell temperature [°C], -20 to 120.</param>
    /// <param name="ageYears">Age of the modules at which the string must still serve [years], 0 to 50.</param>
    /// <returns>The range and the limit at each end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of a sheet, is outside its range.</exception>
    /// <source>IEC 62548:2016, maximum voltage of the array; NEC 690.7.</source>
    public static StringRange InWindow(
        ModuleSheet module,
        DriveSheet drive,
        double coldDegC,
        double hotCellDegC,
        int ageYears
    )
    {
        Within.Require(drive.LargestDcV, 1, 2000, "V");
        Within.Require(module.SystemV, 50, 2000, "V");
        Within.Require(drive.WindowLowV, 0, drive.LargestDcV, "V");
        var (largestV, owner) =
            drive.LargestDcV <= module.SystemV
                ? (drive.LargestDcV, "that the drive takes")
                : (module.SystemV, "that the module is rated for");
        var most = StringVoltage.MostInSeries(module, largestV, coldDegC);
        var overV = (most + 1) * StringVoltage.ColdOpenCircuitV(module, 1, coldDegC);
        var fewest = StringVoltage.FewestInSeries(module, drive.WindowLowV, hotCellDegC, ageYears);
        var windowLow = Invariant($"the {drive.WindowLowV:0.#} V at which the drive's window begins");
        return new(
            fewest,
            most,
            Reaching(module, fewest, (hotCellDegC, ageYears), windowLow),
            Invariant(
                $"{most + 1} in series would give {overV:0.0} V without load at {coldDegC:0.#} °C, above the {largestV:0.#} V {owner}"
            )
        );
    }

    /// <summary>Strings side by side that the drive's short-circuit input rating allows, each with 1.25 Isc.</summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="drive">The drive's data sheet.</param>
    /// <returns>Strings; 0 when the drive cannot take one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure of a sheet is outside its range.</exception>
    /// <source>IEC 62548:2016, design currents; NEC 690.8(A)(1).</source>
    public static int MostStrings(ModuleSheet module, DriveSheet drive)
    {
        Within.Require(drive.LargestShortCircuitA, 0.1, 10_000, "A");
        return Whole.Down(drive.LargestShortCircuitA / ArrayCurrent.DesignA(module, 1));
    }

    private static string Reaching(ModuleSheet module, int count, (double CellDegC, int AgeYears) hot, string limit)
    {
        var stringV = StringVoltage.AgedHotMaximumPowerV(module, count, hot.CellDegC, hot.AgeYears);
        return Invariant(
            $"{count} in series, {hot.AgeYears} years old with cells at {hot.CellDegC:0.#} °C, give {stringV:0.0} V at maximum power: the first count to reach {limit}"
        );
    }
}
