using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>What a string must show on the meter in the light and heat of the day.</summary>
public static class StringOfTheDay
{
    /// <summary>Dimmest light by which a string is judged [W/m²].</summary>
    public const double LeastWPerM2 = 400;

    /// <summary>Current of a short-circuited string.</summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="irradianceWPerM2">Light on the plane [W/m²], 50 to 1500.</param>
    /// <param name="cellDegC">Cell temperature [°C], -40 to 110.</param>
    /// <returns>Current [A].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>IEC 62446-1 practice: Isc (G/1000)(1 + alpha (T - 25)); good above 400 W/m²</source>
    public static double ShortCircuitA(ModuleSheet module, double irradianceWPerM2, double cellDegC)
    {
        Require(irradianceWPerM2, cellDegC);
        return module.ShortCircuitA
            * irradianceWPerM2
            / 1000
            * (1 + (module.Coefficients.CurrentPerK * (cellDegC - 25)));
    }

    /// <summary>Voltage of an open string.</summary>
    /// <param name="module">The module's data sheet.</param>
    /// <param name="idealityV">Ideality voltage of the module's diode at 25 °C [V], 0.1 to 20.</param>
    /// <param name="seriesCount">Modules in series, 1 to 100.</param>
    /// <param name="irradianceWPerM2">Light on the plane [W/m²], 50 to 1500.</param>
    /// <param name="cellDegC">Cell temperature [°C], -40 to 110.</param>
    /// <returns>Voltage [V].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>N (Voc (1 + beta (T - 25)) + a ln(G/1000)), a in proportion to the absolute temperature; one-diode model</source>
    public static double OpenCircuitV(
        ModuleSheet module,
        double idealityV,
        int seriesCount,
        double irradianceWPerM2,
        double cellDegC
    )
    {
        Require(irradianceWPerM2, cellDegC);
        Within.Require(idealityV, 0.1, 20, "V");
        Within.RequireCount(seriesCount, 1, 100);
        var warmV = idealityV * (cellDegC + 273.15) / DeSoto.ReferenceK;
        return seriesCount
            * (
                (module.OpenCircuitV * (1 + (module.Coefficients.VoltagePerK * (cellDegC - 25))))
                + (warmV * Math.Log(irradianceWPerM2 / 1000))
            );
    }

    private static void Require(double irradianceWPerM2, double cellDegC)
    {
        Within.Require(irradianceWPerM2, 50, 1500, "W/m²");
        Within.Require(cellDegC, -40, 110, "°C");
    }
}
