using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Head that the air leaves a pump to draw with.</summary>
public static class SuctionHead
{
    /// <summary>Net positive suction head from the pressures.</summary>
    /// <param name="airPa">Pressure on the water, absolute [Pa], 10000 to 1000000.</param>
    /// <param name="vapourPa">Vapour pressure of the water, absolute [Pa], 0 to 100000.</param>
    /// <param name="densityKgPerM3">Density of the water [kg/m3], 900 to 1100.</param>
    /// <param name="liftM">Height of the pump above the water; below 0 when the pump stands lower [m], -100 to 20.</param>
    /// <param name="lossM">Head lost in the suction pipe [m], 0 to 100.</param>
    /// <returns>Head [m]; below 0 when no pump can draw.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>(p_air - p_vapour)/(rho g) - z_s - h_f; Crane TP-410</source>
    public static double FromPressuresM(
        double airPa,
        double vapourPa,
        double densityKgPerM3,
        double liftM,
        double lossM
    )
    {
        Within.Require(airPa, 10_000, 1_000_000, "Pa");
        Within.Require(vapourPa, 0, 100_000, "Pa");
        Within.Require(densityKgPerM3, 900, 1100, "kg/m3");
        Within.Require(liftM, -100, 20, "m");
        Within.Require(lossM, 0, 100, "m");
        return ((airPa - vapourPa) / (densityKgPerM3 * Gravity.MPerS2)) - liftM - lossM;
    }

    /// <summary>Net positive suction head that the place offers.</summary>
    /// <param name="elevationM">Height above sea level [m], -430 to 5500.</param>
    /// <param name="waterDegC">Temperature of the water, the hottest of the year [degC], 5 to 60.</param>
    /// <param name="liftM">Height of the pump above the water; below 0 when the pump stands lower [m], -100 to 20.</param>
    /// <param name="lossM">Head lost in the suction pipe [m], 0 to 100.</param>
    /// <returns>Head [m]; below 0 when no pump can draw.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>(p_air - p_vapour)/(rho g) - z_s - h_f; air pressure by FAO-56 eq. 7</source>
    public static double AvailableM(double elevationM, double waterDegC, double liftM, double lossM)
    {
        var water = WaterState.At(waterDegC);
        return FromPressuresM(
            AirMoisture.PressureKPa(elevationM) * 1000,
            water.VapourPressurePa,
            water.DensityKgPerM3,
            liftM,
            lossM
        );
    }

    /// <summary>Head that must be there for a pump that asks for so much.</summary>
    /// <param name="pumpM">Net positive suction head required, from the pump's sheet [m], 0 to 50.</param>
    /// <returns>Head [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>the larger of 0.5 m more and 1.3 times; common practice, no source (the ratio as in Crane TP-410)</source>
    public static double NeededM(double pumpM)
    {
        Within.Require(pumpM, 0, 50, "m");
        return Math.Max(pumpM + 0.5, 1.3 * pumpM);
    }
}
