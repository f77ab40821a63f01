using System.Collections.Immutable;
using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>A module's maximum power by its temperature coefficient.</summary>
public static class ModulePower
{
    /// <summary>
    /// Maximum power at an irradiance and a cell temperature. Proportional to irradiance: below about 200 W/m² it
    /// overstates a crystalline module by 3 to 6 %.
    /// </summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="irradianceWPerM2">Irradiance on the cells [W/m²], 0 to 1500.</param>
    /// <param name="cellDegC">Cell temperature [°C], -60 to 120.</param>
    /// <returns>Power [W], never negative.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument, or a figure of the sheet, is outside its range.</exception>
    /// <source>IEC 61215-1, the definition of the power coefficient; the error at low light is from memory.</source>
    public static double AtCellW(ModuleSheet module, double irradianceWPerM2, double cellDegC)
    {
        Within.Require(module.RatedW, 1, 2000, "W");
        Within.Require(module.Coefficients.PowerPerK, -0.006, 0, "1/K");
        Within.Require(irradianceWPerM2, 0, 1500, "W/m²");
        Within.Require(cellDegC, -60, 120, "°C");
        return module.RatedW * (irradianceWPerM2 / 1000) * (1 + module.Coefficients.PowerPerK * (cellDegC - 25));
    }

    /// <summary>Maximum power hour by hour.</summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="planeWPerM2">Irradiance on the cells, one figure an hour [W/m²], 0 to 1500 each.</param>
    /// <param name="cellDegC">Cell temperature of the same hours [°C], -60 to 120 each.</param>
    /// <returns>Power of the same hours [W].</returns>
    /// <exception cref="ArgumentException">The two series do not have the same number of hours.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range.</exception>
    /// <source>As <see cref="AtCellW"/>.</source>
    public static ImmutableArray<double> YearW(
        ModuleSheet module,
        ImmutableArray<double> planeWPerM2,
        ImmutableArray<double> cellDegC
    )
    {
        if (planeWPerM2.IsDefault || cellDegC.IsDefault || planeWPerM2.Length != cellDegC.Length)
        {
            throw new ArgumentException(
                "Irradiance and cell temperature must have the same number of hours.",
                nameof(cellDegC)
            );
        }

        var powerW = ImmutableArray.CreateBuilder<double>(planeWPerM2.Length);
        for (var hour = 0; hour < planeWPerM2.Length; hour++)
        {
            powerW.Add(AtCellW(module, planeWPerM2[hour], cellDegC[hour]));
        }

        return powerW.MoveToImmutable();
    }
}
