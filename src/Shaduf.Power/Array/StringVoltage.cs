using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Voltages of modules in series at the cold and the hot end of the year.</summary>
public static class StringVoltage
{
    /// <summary>Open-circuit voltage on the coldest bright morning; it decides the voltage class.</summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="count">Modules in series, 1 to 100.</param>
    /// <param name="coldDegC">Lowest air temperature on record, taken as the cell's [°C], -60 to 40.</param>
    /// <returns>Voltage [V].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>IEC 62548:2016, maximum voltage of the array; IEC 60364-7-712; NEC 690.7(A).</source>
    public static double ColdOpenCircuitV(ModuleSheet module, int count, double coldDegC)
    {
        Within.RequireCount(count, 1, 100);
        return count * ModuleColdV(module, coldDegC);
    }

    /// <summary>Voltage at maximum power on the coldest bright morning.</summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="count">Modules in series, 1 to 100.</param>
    /// <param name="coldDegC">Lowest air temperature on record, taken as the cell's [°C], -60 to 40.</param>
    /// <returns>Voltage [V].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>Definition of the coefficients; the coefficient of this voltage is power's less current's.</source>
    public static double ColdMaximumPowerV(ModuleSheet module, int count, double coldDegC)
    {
        Within.RequireCount(count, 1, 100);
        Within.Require(coldDegC, -60, 40, "°C");
        return count * ModuleMaximumPowerV(module, coldDegC);
    }

    /// <summary>Voltage at maximum power of new modules at their hottest.</summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="count">Modules in series, 1 to 100.</param>
    /// <param name="hotCellDegC">Hottest cell temperature [°C], -20 to 120.</param>
    /// <returns>Voltage [V].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>Definition of the coefficients; the coefficient of this voltage is power's less current's.</source>
    public static double HotMaximumPowerV(ModuleSheet module, int count, double hotCellDegC)
    {
        Within.RequireCount(count, 1, 100);
        Within.Require(hotCellDegC, -20, 120, "°C");
        return count * ModuleMaximumPowerV(module, hotCellDegC);
    }

    /// <summary>
    /// Voltage at maximum power of old modules at their hottest: half of the power lost with age, 0.5 % a year, is taken
    /// as voltage; 2.5 % after ten years.
    /// </summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="count">Modules in series, 1 to 100.</param>
    /// <param name="hotCellDegC">Hottest cell temperature [°C], -20 to 120.</param>
    /// <param name="ageYears">Age of the modules [years], 0 to 50.</param>
    /// <returns>Voltage [V].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>Half of a 5 % loss of power in ten years taken as voltage; planning assumption from memory, no source.</source>
    public static double AgedHotMaximumPowerV(ModuleSheet module, int count, double hotCellDegC, int ageYears)
    {
        Within.RequireCount(ageYears, 0, 50);
        return (1 - (VoltageLossShare * ageYears)) * HotMaximumPowerV(module, count, hotCellDegC);
    }

    /// <summary>The largest count whose cold open-circuit voltage stays within a limit.</summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="largestV">The limit [V], 1 to 2000.</param>
    /// <param name="coldDegC">Lowest air temperature on record [°C], -60 to 40.</param>
    /// <returns>Modules in series; 0 when one alone is above the limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>IEC 62548:2016, maximum voltage of the array.</source>
    public static int MostInSeries(ModuleSheet module, double largestV, double coldDegC)
    {
        Within.Require(largestV, 1, 2000, "V");
        return Whole.Down(largestV / ModuleColdV(module, coldDegC));
    }

    /// <summary>The smallest count whose hot, aged voltage at maximum power reaches a limit.</summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="lowestV">The limit [V], 0 to 2000.</param>
    /// <param name="hotCellDegC">Hottest cell temperature [°C], -20 to 120.</param>
    /// <param name="ageYears">Age of the modules [years], 0 to 50.</param>
    /// <returns>Modules in series, at least 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>As <see cref="AgedHotMaximumPowerV"/>.</source>
    public static int FewestInSeries(ModuleSheet module, double lowestV, double hotCellDegC, int ageYears)
    {
        Within.Require(lowestV, 0, 2000, "V");
        return Math.Max(1, Whole.Up(lowestV / AgedHotMaximumPowerV(module, 1, hotCellDegC, ageYears)));
    }

    private const double VoltageLossShare = 0.0025;

    private static double ModuleColdV(ModuleSheet module, double coldDegC)
    {
        Within.Require(module.OpenCircuitV, 1, 500, "V");
        Within.Require(module.Coefficients.VoltagePerK, -0.006, 0, "1/K");
        Within.Require(coldDegC, -60, 40, "°C");
        return module.OpenCircuitV * (1 + module.Coefficients.VoltagePerK * (coldDegC - 25));
    }

    private static double ModuleMaximumPowerV(ModuleSheet module, double cellDegC)
    {
        Within.Require(module.MaximumPowerV, 1, 500, "V");
        Within.Require(module.Coefficients.PowerPerK, -0.006, 0, "1/K");
        Within.Require(module.Coefficients.CurrentPerK, 0, 0.002, "1/K");
        var perK = module.Coefficients.PowerPerK - module.Coefficients.CurrentPerK;
        return module.MaximumPowerV * (1 + perK * (cellDegC - 25));
    }
}
