using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>What a drive keeps of its rated current on a hot or a high site.</summary>
public static class DriveDerating
{
    /// <summary>
    /// Share of rated current: 1 % less for each kelvin above 40 °C and for each 100 m above 1000 m, multiplied. Above
    /// 2000 m the maker must also confirm the insulation.
    /// </summary>
    /// <param name="elevationM">Elevation above the sea [m], -430 to 4000.</param>
    /// <param name="airDegC">Air temperature in the drive's shelter [°C], -40 to 50.</param>
    /// <returns>Share of rated current, 0.63 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range; above 50 °C no drive is rated.</exception>
    /// <source>Drive makers' hardware manuals, typical rule (1 % per 100 m looked up); the maker's own curve goes first.</source>
    public static double Share(double elevationM, double airDegC)
    {
        Within.Require(elevationM, -430, 4000, "m");
        Within.Require(airDegC, -40, 50, "°C");
        var heightShare = 1 - 0.01 * Math.Max(0, elevationM - 1000) / 100;
        var heatShare = 1 - 0.01 * Math.Max(0, airDegC - 40);
        return heightShare * heatShare;
    }
}
