using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How a module is mounted in the measurements of Sandia: front, back, and what is behind it.</summary>
public enum SandiaMount
{
    /// <summary>Glass on both sides, on an open rack.</summary>
    RackGlassGlass,

    /// <summary>Glass in front, polymer sheet behind, on an open rack.</summary>
    RackGlassPolymer,

    /// <summary>Glass on both sides, close to a roof.</summary>
    RoofGlassGlass,

    /// <summary>Glass in front, polymer sheet behind, insulated at the back.</summary>
    InsulatedGlassPolymer,
}

/// <summary>A module's figures in the NOCT form with wind.</summary>
/// <param name="NoctDegC">Nominal operating cell temperature [degC], 35 to 70.</param>
/// <param name="EfficiencyShare">Light that leaves as electricity, 0 to 0.5.</param>
/// <param name="AbsorbedShare">Light that is taken up, 0.5 to 1.</param>
public readonly record struct NoctModule(double NoctDegC, double EfficiencyShare, double AbsorbedShare);

/// <summary>A module's mounting in the NOCT form with wind.</summary>
/// <param name="IsTwoStoreysHigh">Whether it stands two storeys above ground, not one.</param>
/// <param name="GapMm">Air behind it [mm], at least 0; may be infinite.</param>
public readonly record struct NoctMount(bool IsTwoStoreysHigh, double GapMm);

/// <summary>Temperature of a solar module's cells.</summary>
public static class CellTemperature
{
    /// <summary>Added loss for each m/s of wind at the module, free-standing rack [W s/(m3 K)].</summary>
    public const double WindLossWSPerM3K = 6.84;

    /// <summary>Wind at the module that is assumed where the weather has none [m/s]: that of the definition of NOCT.</summary>
    public const double AssumedWindMPerS = 1;

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

    /// <summary>By NOCT, with the wind and with the part of the light that leaves as electricity.</summary>
    /// <param name="planeWPerM2">Irradiance on the plane [W/m2], 0 to 2000.</param>
    /// <param name="airDegC">Air temperature [degC], -60 to 60.</param>
    /// <param name="windMPerS">Wind at 10 m [m/s], 0 to 60.</param>
    /// <param name="module">NOCT, efficiency and absorption of the module.</param>
    /// <param name="mount">How it is mounted.</param>
    /// <returns>Cell temperature [degC].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>NREL/TP-6A20-67399, 2018, section 10.6; Duffie, Beckman, Solar Engineering of Thermal Processes, 23.3</source>
    public static double DegCByNoctInWind(
        double planeWPerM2,
        double airDegC,
        double windMPerS,
        NoctModule module,
        NoctMount mount
    )
    {
        RequireSunAndAir(planeWPerM2, airDegC);
        Within.Require(windMPerS, 0, 60, "m/s");
        Within.Require(module.NoctDegC, 35, 70, "degC");
        Within.Require(module.EfficiencyShare, 0, 0.5, "");
        Within.Require(module.AbsorbedShare, 0.5, 1, "");
        Within.Require(mount.GapMm, 0, double.PositiveInfinity, "mm");
        var warmerK = mount.GapMm switch
        {
            < 12.7 => 18,
            < 38.1 => 11,
            < 63.5 => 6,
            <= 88.9 => 2,
            _ => 0,
        };
        var atModuleMPerS = (mount.IsTwoStoreysHigh ? 0.61 : 0.51) * windMPerS;
        return airDegC
            + (
                planeWPerM2
                / 800
                * (module.NoctDegC + warmerK - 20)
                * (1 - (module.EfficiencyShare / module.AbsorbedShare))
                * 9.5
                / (5.7 + (3.8 * atModuleMPerS))
            );
    }

    /// <summary>By the coefficients that were measured for four ways of mounting.</summary>
    /// <param name="planeWPerM2">Irradiance on the plane [W/m2], 0 to 2000.</param>
    /// <param name="airDegC">Air temperature [degC], -60 to 60.</param>
    /// <param name="windMPerS">Wind at 10 m [m/s], 0 to 60.</param>
    /// <param name="mount">Module and mounting.</param>
    /// <returns>Cell temperature [degC].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>King, Boyson, Kratochvil, SAND2004-3535, 2004, equations 11 and 12, table 1</source>
    public static double DegCBySandia(double planeWPerM2, double airDegC, double windMPerS, SandiaMount mount)
    {
        RequireSunAndAir(planeWPerM2, airDegC);
        Within.Require(windMPerS, 0, 60, "m/s");
        var (a, b, cellAboveBackK) = mount switch
        {
            SandiaMount.RackGlassGlass => (-3.47, -0.0594, 3.0),
            SandiaMount.RackGlassPolymer => (-3.56, -0.0750, 3.0),
            SandiaMount.RoofGlassGlass => (-2.98, -0.0471, 1.0),
            SandiaMount.InsulatedGlassPolymer => (-2.81, -0.0455, 0.0),
            _ => throw new ArgumentOutOfRangeException(nameof(mount), mount, "a mounting of the table is accepted"),
        };
        return airDegC + (planeWPerM2 * Math.Exp(a + (b * windMPerS))) + (planeWPerM2 / 1000 * cellAboveBackK);
    }

    /// <summary>
    /// Loss in still air that makes <see cref="DegCByFaiman"/> agree with a module's NOCT, which is defined at 1 m/s.
    /// </summary>
    /// <param name="noctDegC">Nominal operating cell temperature [degC], 35 to 65.</param>
    /// <returns>Loss in still air [W/(m2 K)].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    /// <source>800/(NOCT - 20) = U0 + U1 x 1 m/s, from the definitions; U1 as Faiman 2008</source>
    public static double StillAirLossWPerM2K(double noctDegC)
    {
        Within.Require(noctDegC, 35, 65, "degC");
        return (800 / (noctDegC - 20)) - WindLossWSPerM3K;
    }

    /// <summary>Cell temperature of every hour of a year, by <see cref="DegCByFaiman"/> as the module's NOCT has it.</summary>
    /// <param name="year">The weather.</param>
    /// <param name="planeWPerM2">Light that the module takes up [W/m2], 8,760 values of 0 to 2000.</param>
    /// <param name="noctDegC">Nominal operating cell temperature [degC], 35 to 65.</param>
    /// <returns>Cell temperature [degC], 8,760 values.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>As <see cref="DegCByFaiman"/> and <see cref="StillAirLossWPerM2K"/></source>
    public static ImmutableArray<double> YearDegC(WeatherYear year, ImmutableArray<double> planeWPerM2, double noctDegC)
    {
        Within.RequireCount(year.AirDegC.Length, YearCalendar.HourCount, YearCalendar.HourCount);
        Within.RequireCount(planeWPerM2.Length, YearCalendar.HourCount, YearCalendar.HourCount);
        var stillAirWPerM2K = StillAirLossWPerM2K(noctDegC);
        var cellDegC = new double[YearCalendar.HourCount];
        for (var hour = 0; hour < cellDegC.Length; hour++)
        {
            cellDegC[hour] = DegCByFaiman(
                planeWPerM2[hour],
                year.AirDegC[hour],
                AssumedWindMPerS,
                stillAirWPerM2K,
                WindLossWSPerM3K
            );
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(cellDegC);
    }

    private static void RequireSunAndAir(double planeWPerM2, double airDegC)
    {
        Within.Require(planeWPerM2, 0, 2000, "W/m2");
        Within.Require(airDegC, -60, 60, "degC");
    }
}
