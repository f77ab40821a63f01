using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Temperature of a solar module's cells.</summary>
public static class CellTemperature
{
    /// <summary>By the nominal operating cell temperature of the module's card.</summary>
    /// <param name="planeWPerM2">Irradiance on the plane [W/m2], 0 to 2000.</param>
    /// <param name="airDegC">Air temperature [degC], -60 to 60.</param>
    /// <param name="noctDegC">Nominal operating cell temperature [degC], 35 to 70.</param>
    /// <returns>Cell temperature [degC].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Ross 1976: cell at NOCT in 800 W/m2 and 20 degC, rise in proportion to irradiance (from memory)</source>
    public static double DegCByNoct(double planeWPerM2, double airDegC, double noctDegC)
    {
        RequireSunAndAir(planeWPerM2, airDegC);
        Within.Require(noctDegC, 35, 70, "degC");
        return airDegC + ((noctDegC - 20) * planeWPerM2 / 800);
    }

    /// <summary>By heat loss to air and wind; free-standing rack: 25 W/(m2 K) and 6.84 W s/(m3 K).</summary>
    /// <param name="planeWPerM2">Irradiance on the plane [W/m2], 0 to 2000.</param>
    /// <param name="airDegC">Air temperature [degC], -60 to 60.</param>
    /// <param name="windMPerS">Wind at the module's height [m/s], 0 to 60.</param>
    /// <param name="lossWPerM2K">Loss in still air [W/(m2 K)], 5 to 60.</param>
    /// <param name="windLossWSPerM3K">Added loss for each m/s of wind [W s/(m3 K)], 0 to 20.</param>
    /// <returns>Module temperature [degC].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Faiman, Progress in Photovoltaics 16, 2008; IEC 61853-2</source>
    public static double DegCByFaiman(
        double planeWPerM2,
        double airDegC,
        double windMPerS,
        double lossWPerM2K,
        double windLossWSPerM3K
    )
    {
        RequireSunAndAir(planeWPerM2, airDegC);
        Within.Require(windMPerS, 0, 60, "m/s");
        Within.Require(lossWPerM2K, 5, 60, "W/(m2 K)");
        Within.Require(windLossWSPerM3K, 0, 20, "W s/(m3 K)");
        return airDegC + (planeWPerM2 / (lossWPerM2K + (windLossWSPerM3K * windMPerS)));
    }

    /// <summary>Cell temperature of every hour of a year, by <see cref="DegCByNoct"/>.</summary>
    /// <param name="year">The weather.</param>
    /// <param name="planeWPerM2">Irradiance on the plane [W/m2], 8,760 values of 0 to 2000.</param>
    /// <param name="noctDegC">Nominal operating cell temperature [degC], 35 to 70.</param>
    /// <returns>Cell temperature [degC], 8,760 values.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>As <see cref="DegCByNoct"/></source>
    public static ImmutableArray<double> YearDegCByNoct(
        WeatherYear year,
        ImmutableArray<double> planeWPerM2,
        double noctDegC
    )
    {
        Within.RequireCount(year.AirDegC.Length, YearCalendar.HourCount, YearCalendar.HourCount);
        Within.RequireCount(planeWPerM2.Length, YearCalendar.HourCount, YearCalendar.HourCount);
        var cellDegC = new double[YearCalendar.HourCount];
        for (var hour = 0; hour < cellDegC.Length; hour++)
        {
            cellDegC[hour] = DegCByNoct(planeWPerM2[hour], year.AirDegC[hour], noctDegC);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(cellDegC);
    }

    private static void RequireSunAndAir(double planeWPerM2, double airDegC)
    {
        Within.Require(planeWPerM2, 0, 2000, "W/m2");
        Within.Require(airDegC, -60, 60, "degC");
    }
}
