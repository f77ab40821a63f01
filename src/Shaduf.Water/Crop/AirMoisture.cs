using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Pressure and moisture of the air over a field.</summary>
public static class AirMoisture
{
    /// <summary>Mean air pressure at a height.</summary>
    /// <param name="elevationM">Height above sea level [m], -430 to 5500.</param>
    /// <returns>Pressure [kPa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 (Allen, Pereira, Raes, Smith 1998) eq. 7</source>
    public static double PressureKPa(double elevationM)
    {
        Within.Require(elevationM, -430, 5500, "m");
        return 101.3 * Math.Pow((293 - (0.0065 * elevationM)) / 293, 5.26);
    }

    /// <summary>Psychrometric constant.</summary>
    /// <param name="pressureKPa">Air pressure [kPa], 40 to 120.</param>
    /// <returns>Constant [kPa/K].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 8</source>
    public static double PsychrometricKPaPerK(double pressureKPa)
    {
        Within.Require(pressureKPa, 40, 120, "kPa");
        return 0.665e-3 * pressureKPa;
    }

    /// <summary>Vapour pressure of saturated air.</summary>
    /// <param name="airDegC">Temperature [degC], -60 to 60.</param>
    /// <returns>Vapour pressure [kPa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 11</source>
    public static double SaturationKPa(double airDegC)
    {
        Within.Require(airDegC, -60, 60, "degC");
        return 0.6108 * Math.Exp(17.27 * airDegC / (airDegC + 237.3));
    }

    /// <summary>Slope of the saturation curve.</summary>
    /// <param name="airDegC">Temperature [degC], -60 to 60.</param>
    /// <returns>Slope [kPa/K].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 13</source>
    public static double SlopeKPaPerK(double airDegC) => 4098 * SaturationKPa(airDegC) / Math.Pow(airDegC + 237.3, 2);

    /// <summary>Mean saturation of a day: of its highest and its lowest temperature, not of its mean.</summary>
    /// <param name="highDegC">Highest temperature of the day [degC], -60 to 60.</param>
    /// <param name="lowDegC">Lowest temperature of the day [degC], -60 to 60.</param>
    /// <returns>Vapour pressure [kPa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 12</source>
    public static double MeanSaturationKPa(double highDegC, double lowDegC) =>
        (SaturationKPa(highDegC) + SaturationKPa(lowDegC)) / 2;

    /// <summary>Vapour in the air from wet and dry bulb.</summary>
    /// <param name="wetDegC">Wet bulb [degC], -20 to 60.</param>
    /// <param name="dryDegC">Dry bulb [degC], -20 to 60.</param>
    /// <param name="pressureKPa">Air pressure [kPa], 40 to 120.</param>
    /// <param name="instrumentPerK">Coefficient of the instrument [1/K], 0 to 0.002; 0.000662 with a fan.</param>
    /// <returns>Vapour pressure [kPa]; below 0 when the readings cannot be right.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 15 and 16</source>
    public static double FromWetBulbKPa(double wetDegC, double dryDegC, double pressureKPa, double instrumentPerK)
    {
        Within.Require(wetDegC, -20, 60, "degC");
        Within.Require(dryDegC, -20, 60, "degC");
        Within.Require(pressureKPa, 40, 120, "kPa");
        Within.Require(instrumentPerK, 0, 0.002, "1/K");
        return SaturationKPa(wetDegC) - (instrumentPerK * pressureKPa * (dryDegC - wetDegC));
    }

    /// <summary>Vapour in the air from the day's highest and lowest relative humidity.</summary>
    /// <param name="highDegC">Highest temperature of the day [degC], -60 to 60.</param>
    /// <param name="lowDegC">Lowest temperature of the day [degC], -60 to 60.</param>
    /// <param name="highestPercent">Highest relative humidity [%], 0 to 100.</param>
    /// <param name="lowestPercent">Lowest relative humidity [%], 0 to 100.</param>
    /// <returns>Vapour pressure [kPa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 17</source>
    public static double FromHumidityRangeKPa(
        double highDegC,
        double lowDegC,
        double highestPercent,
        double lowestPercent
    )
    {
        Within.Require(highestPercent, 0, 100, "%");
        Within.Require(lowestPercent, 0, 100, "%");
        return ((SaturationKPa(lowDegC) * highestPercent) + (SaturationKPa(highDegC) * lowestPercent)) / 200;
    }

    /// <summary>Vapour in the air from the mean relative humidity.</summary>
    /// <param name="highDegC">Highest temperature of the day [degC], -60 to 60.</param>
    /// <param name="lowDegC">Lowest temperature of the day [degC], -60 to 60.</param>
    /// <param name="meanPercent">Mean relative humidity [%], 0 to 100.</param>
    /// <returns>Vapour pressure [kPa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 19</source>
    public static double FromMeanHumidityKPa(double highDegC, double lowDegC, double meanPercent)
    {
        Within.Require(meanPercent, 0, 100, "%");
        return meanPercent / 100 * MeanSaturationKPa(highDegC, lowDegC);
    }

    /// <summary>Relative humidity at the hottest time of the day; never above 100 %.</summary>
    /// <param name="vapourKPa">Vapour in the air [kPa], 0 to 20.</param>
    /// <param name="highDegC">Highest temperature of the day [degC], -60 to 60.</param>
    /// <returns>Humidity [%].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 63</source>
    public static double LowestPercent(double vapourKPa, double highDegC)
    {
        Within.Require(vapourKPa, 0, 20, "kPa");
        return Math.Min(100, 100 * vapourKPa / SaturationKPa(highDegC));
    }
}
