using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Power and energy that the lifted water itself takes up.</summary>
public static class HydraulicPower
{
    private const double JPerKWh = 3.6e6;

    /// <summary>Power given to the water.</summary>
    /// <param name="flowM3PerS">Flow [m3/s], 0 to 10.</param>
    /// <param name="headM">Total dynamic head [m], 0 to 10000.</param>
    /// <param name="densityKgPerM3">Density [kg/m3], 500 to 1500.</param>
    /// <returns>Power [W].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>P = rho g Q H</source>
    public static double W(double flowM3PerS, double headM, double densityKgPerM3)
    {
        Within.Require(flowM3PerS, 0, 10, "m3/s");
        Within.Require(headM, 0, 10_000, "m");
        Within.Require(densityKgPerM3, 500, 1500, "kg/m3");
        return densityKgPerM3 * Gravity.MPerS2 * flowM3PerS * headM;
    }

    /// <summary>Energy given to a volume of water.</summary>
    /// <param name="volumeM3">Volume lifted [m3], 0 to 10000000.</param>
    /// <param name="headM">Total dynamic head [m], 0 to 10000.</param>
    /// <param name="densityKgPerM3">Density [kg/m3], 500 to 1500.</param>
    /// <returns>Energy [kWh].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>E = rho g V H/3.6e6</source>
    public static double EnergyKWh(double volumeM3, double headM, double densityKgPerM3)
    {
        Within.Require(volumeM3, 0, 10_000_000, "m3");
        Within.Require(headM, 0, 10_000, "m");
        Within.Require(densityKgPerM3, 500, 1500, "kg/m3");
        return densityKgPerM3 * Gravity.MPerS2 * volumeM3 * headM / JPerKWh;
    }
}
