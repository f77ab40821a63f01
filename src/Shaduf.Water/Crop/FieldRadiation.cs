using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Sun on a field and what stays of it, as the reference evapotranspiration wants them.</summary>
public static class FieldRadiation
{
    private const double SolarMJPerM2Min = 0.0820;
    private const double StefanMJPerM2Day = 4.903e-9;
    private const double ReflectedShare = 0.23;

    /// <summary>Distance of the earth from the sun, as 1 over its square.</summary>
    /// <param name="dayIndex">Day of the year, 1 to 366.</param>
    /// <returns>Mean distance over distance, squared [ratio].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range.</exception>
    /// <source>FAO-56 eq. 23</source>
    public static double DistanceFactor(int dayIndex)
    {
        Within.RequireCount(dayIndex, 1, 366);
        return 1 + (0.033 * Math.Cos(2 * Math.PI * dayIndex / 365));
    }

    /// <summary>Declination of the sun.</summary>
    /// <param name="dayIndex">Day of the year, 1 to 366.</param>
    /// <returns>Declination [rad].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range.</exception>
    /// <source>FAO-56 eq. 24</source>
    public static double DeclinationRad(int dayIndex)
    {
        Within.RequireCount(dayIndex, 1, 366);
        return 0.409 * Math.Sin((2 * Math.PI * dayIndex / 365) - 1.39);
    }

    /// <summary>Hour angle of the sunset.</summary>
    /// <param name="latitudeDeg">Latitude, north positive [deg], -66 to 66.</param>
    /// <param name="dayIndex">Day of the year, 1 to 366.</param>
    /// <returns>Angle [rad].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 25</source>
    public static double SunsetRad(double latitudeDeg, int dayIndex)
    {
        Within.Require(latitudeDeg, -66, 66, "deg");
        return Math.Acos(-Math.Tan(latitudeDeg * Math.PI / 180) * Math.Tan(DeclinationRad(dayIndex)));
    }

    /// <summary>Sun on a level field above the air.</summary>
    /// <param name="latitudeDeg">Latitude, north positive [deg], -66 to 66.</param>
    /// <param name="dayIndex">Day of the year, 1 to 366.</param>
    /// <returns>Radiation [MJ/m2/d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 21</source>
    public static double AboveTheAirMJPerM2Day(double latitudeDeg, int dayIndex)
    {
        var sunset = SunsetRad(latitudeDeg, dayIndex);
        var (latitude, declination) = (latitudeDeg * Math.PI / 180, DeclinationRad(dayIndex));
        return 24
            * 60
            / Math.PI
            * SolarMJPerM2Min
            * DistanceFactor(dayIndex)
            * (
                (sunset * Math.Sin(latitude) * Math.Sin(declination))
                + (Math.Cos(latitude) * Math.Cos(declination) * Math.Sin(sunset))
            );
    }

    /// <summary>Length of the day.</summary>
    /// <param name="latitudeDeg">Latitude, north positive [deg], -66 to 66.</param>
    /// <param name="dayIndex">Day of the year, 1 to 366.</param>
    /// <returns>Time [h].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 34</source>
    public static double DaylightH(double latitudeDeg, int dayIndex) => 24 / Math.PI * SunsetRad(latitudeDeg, dayIndex);

    /// <summary>Sun on the field from the hours of bright sunshine.</summary>
    /// <param name="aboveMJPerM2Day">Sun above the air [MJ/m2/d], 0 to 50.</param>
    /// <param name="sunshineH">Hours of bright sunshine [h], 0 to the length of the day.</param>
    /// <param name="daylightH">Length of the day [h], above 0 to 24.</param>
    /// <returns>Radiation [MJ/m2/d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 35 with a = 0.25, b = 0.50</source>
    public static double FromSunshineMJPerM2Day(double aboveMJPerM2Day, double sunshineH, double daylightH)
    {
        Within.Require(aboveMJPerM2Day, 0, 50, "MJ/m2/d");
        Within.Require(daylightH, double.Epsilon, 24, "h");
        Within.Require(sunshineH, 0, daylightH, "h");
        return (0.25 + (0.50 * sunshineH / daylightH)) * aboveMJPerM2Day;
    }

    /// <summary>Sun on the field from the swing of the air over the day.</summary>
    /// <param name="aboveMJPerM2Day">Sun above the air [MJ/m2/d], 0 to 50.</param>
    /// <param name="swingK">Highest less lowest temperature [K], 0 to 35.</param>
    /// <param name="placeCoefficient">Coefficient of the place [1/sqrt(K)], 0.1 to 0.25; 0.16 inland, 0.19 on the coast.</param>
    /// <returns>Radiation [MJ/m2/d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 50 (Hargreaves)</source>
    public static double FromSwingMJPerM2Day(double aboveMJPerM2Day, double swingK, double placeCoefficient)
    {
        Within.Require(aboveMJPerM2Day, 0, 50, "MJ/m2/d");
        Within.Require(swingK, 0, 35, "K");
        Within.Require(placeCoefficient, 0.1, 0.25, "1/sqrt(K)");
        return placeCoefficient * Math.Sqrt(swingK) * aboveMJPerM2Day;
    }

    /// <summary>Swing of the air over the day that belongs to a sun: <see cref="FromSwingMJPerM2Day"/> turned round.</summary>
    /// <param name="clearnessRatio">Sun on the field over sun above the air, 0 to 0.9.</param>
    /// <param name="placeCoefficient">Coefficient of the place [1/sqrt(K)], 0.1 to 0.25; 0.16 inland, 0.19 on the coast.</param>
    /// <returns>Highest less lowest temperature [K].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 50, solved for the swing</source>
    public static double SwingK(double clearnessRatio, double placeCoefficient)
    {
        Within.Require(clearnessRatio, 0, 0.9, "");
        Within.Require(placeCoefficient, 0.1, 0.25, "1/sqrt(K)");
        return Math.Pow(clearnessRatio / placeCoefficient, 2);
    }

    /// <summary>Sun on the field under a clear sky.</summary>
    /// <param name="aboveMJPerM2Day">Sun above the air [MJ/m2/d], 0 to 50.</param>
    /// <param name="elevationM">Height above sea level [m], -430 to 5500.</param>
    /// <returns>Radiation [MJ/m2/d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 37</source>
    public static double ClearSkyMJPerM2Day(double aboveMJPerM2Day, double elevationM)
    {
        Within.Require(aboveMJPerM2Day, 0, 50, "MJ/m2/d");
        Within.Require(elevationM, -430, 5500, "m");
        return (0.75 + (2e-5 * elevationM)) * aboveMJPerM2Day;
    }

    /// <summary>Short-wave radiation that the crop keeps.</summary>
    /// <param name="sunMJPerM2Day">Sun on the field [MJ/m2/d], 0 to 50.</param>
    /// <returns>Radiation [MJ/m2/d].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 38, albedo 0.23 of the reference crop</source>
    public static double ShortWaveMJPerM2Day(double sunMJPerM2Day)
    {
        Within.Require(sunMJPerM2Day, 0, 50, "MJ/m2/d");
        return (1 - ReflectedShare) * sunMJPerM2Day;
    }

    /// <summary>Long-wave radiation that the crop loses to the sky.</summary>
    /// <param name="highDegC">Highest temperature of the day [degC], -60 to 60.</param>
    /// <param name="lowDegC">Lowest temperature of the day [degC], -60 to 60.</param>
    /// <param name="vapourKPa">Vapour in the air [kPa], 0 to 20; beyond 5.9 the sky takes nothing.</param>
    /// <param name="clearnessRatio">Sun on the field over sun under a clear sky, 0.25 to 1: never above 1.</param>
    /// <returns>Radiation [MJ/m2/d]; the cloud term is never below 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 39; the ratio held at 0.25 or above as in the paper's figure 15 (from memory)</source>
    public static double LongWaveMJPerM2Day(double highDegC, double lowDegC, double vapourKPa, double clearnessRatio)
    {
        Within.Require(highDegC, -60, 60, "degC");
        Within.Require(lowDegC, -60, 60, "degC");
        Within.Require(vapourKPa, 0, 20, "kPa");
        Within.Require(clearnessRatio, 0.25, 1, "");
        var emitted = StefanMJPerM2Day * (Math.Pow(highDegC + 273.16, 4) + Math.Pow(lowDegC + 273.16, 4)) / 2;
        var dryness = Math.Max(0, 0.34 - (0.14 * Math.Sqrt(vapourKPa)));
        return emitted * dryness * Math.Max(0, (1.35 * clearnessRatio) - 0.35);
    }

    /// <summary>Heat that goes into the soil in a month.</summary>
    /// <param name="beforeDegC">Mean temperature of the month before [degC], -60 to 60.</param>
    /// <param name="afterDegC">Mean temperature of the month after [degC], -60 to 60.</param>
    /// <returns>Heat [MJ/m2/d]; below 0 when the soil gives heat off.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>FAO-56 eq. 43</source>
    public static double SoilHeatMJPerM2Day(double beforeDegC, double afterDegC)
    {
        Within.Require(beforeDegC, -60, 60, "degC");
        Within.Require(afterDegC, -60, 60, "degC");
        return 0.07 * (afterDegC - beforeDegC);
    }
}
