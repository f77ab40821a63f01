using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Water that short, well-watered grass gives to the air: the reference that crops are measured by.</summary>
public static class Evapotranspiration
{
    /// <summary>Reference evapotranspiration where temperature, moisture, wind and radiation are known; never below 0.</summary>
    /// <param name="highDegC">Highest temperature of the day [degC], -60 to 60.</param>
    /// <param name="lowDegC">Lowest temperature of the day [degC], -60 to 60.</param>
    /// <param name="vapourKPa">Vapour in the air [kPa], 0 to 20.</param>
    /// <param name="windMPerS">Wind 2 m above the ground [m/s], 0 to 20.</param>
    /// <param name="heatMJPerM2Day">Net radiation less heat into the soil [MJ/m2/d], -10 to 40.</param>
    /// <param name="elevationM">Height above sea level [m], -430 to 5500.</param>
    /// <returns>Water [mm/d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 6 (Penman-Monteith)</source>
    public static double PenmanMonteithMmPerDay(
        double highDegC,
        double lowDegC,
        double vapourKPa,
        double windMPerS,
        double heatMJPerM2Day,
        double elevationM
    )
    {
        Within.Require(vapourKPa, 0, 20, "kPa");
        Within.Require(windMPerS, 0, 20, "m/s");
        Within.Require(heatMJPerM2Day, -10, 40, "MJ/m2/d");
        var meanDegC = (highDegC + lowDegC) / 2;
        var slope = AirMoisture.SlopeKPaPerK(meanDegC);
        var psychrometric = AirMoisture.PsychrometricKPaPerK(AirMoisture.PressureKPa(elevationM));
        var dryness = AirMoisture.MeanSaturationKPa(highDegC, lowDegC) - vapourKPa;
        var byHeat = 0.408 * slope * heatMJPerM2Day;
        var byWind = psychrometric * 900 / (meanDegC + 273) * windMPerS * dryness;
        return Math.Max(0, (byHeat + byWind) / (slope + (psychrometric * (1 + (0.34 * windMPerS)))));
    }

    /// <summary>
    /// Reference evapotranspiration from temperature alone, for spells of five days and longer; too high in moist air, too
    /// low in wind above 3 m/s; never below 0.
    /// </summary>
    /// <param name="meanDegC">Mean temperature [degC], -60 to 60.</param>
    /// <param name="swingK">Highest less lowest temperature of the day [K], 0 to 35.</param>
    /// <param name="aboveMJPerM2Day">Sun above the air [MJ/m2/d], 0 to 50.</param>
    /// <returns>Water [mm/d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 52 (Hargreaves and Samani 1985)</source>
    public static double HargreavesMmPerDay(double meanDegC, double swingK, double aboveMJPerM2Day)
    {
        Within.Require(meanDegC, -60, 60, "degC");
        Within.Require(swingK, 0, 35, "K");
        Within.Require(aboveMJPerM2Day, 0, 50, "MJ/m2/d");
        return Math.Max(0, 0.0023 * (meanDegC + 17.8) * Math.Sqrt(swingK) * 0.408 * aboveMJPerM2Day);
    }

    /// <summary>Wind 2 m above the ground from wind measured higher up.</summary>
    /// <param name="speedMPerS">Wind measured [m/s], 0 to 60.</param>
    /// <param name="heightM">Height of the instrument over short grass [m], 1 to 100.</param>
    /// <returns>Wind at 2 m [m/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 47</source>
    public static double WindAtTwoMetresMPerS(double speedMPerS, double heightM)
    {
        Within.Require(speedMPerS, 0, 60, "m/s");
        Within.Require(heightM, 1, 100, "m");
        return speedMPerS * 4.87 / Math.Log((67.8 * heightM) - 5.42);
    }
}
