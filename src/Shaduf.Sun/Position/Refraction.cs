using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How much higher the sun is seen than it stands, because the air bends its light.</summary>
public static class Refraction
{
    /// <summary>Half the sun's disc and the refraction at the horizon [deg]: below it there is no sun to be seen.</summary>
    internal const double HorizonDeg = 0.26667 + 0.5667;

    /// <summary>Refraction as the NREL algorithm counts it.</summary>
    /// <param name="elevationDeg">True elevation of the sun's centre [deg], -90 to 90.</param>
    /// <param name="pressureHPa">Yearly mean air pressure at the site [hPa], 0 to 1100.</param>
    /// <param name="airDegC">Yearly mean air temperature [degC], -60 to 60.</param>
    /// <returns>What is to be added to the true elevation [deg]; 0 for a sun that is all below the horizon.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Reda, Andreas, NREL/TP-560-34302, 2008, equation 42</source>
    public static double NrelDeg(double elevationDeg, double pressureHPa, double airDegC)
    {
        Within.Require(elevationDeg, -90, 90, "deg");
        Within.Require(pressureHPa, 0, 1100, "hPa");
        Within.Require(airDegC, -60, 60, "degC");
        return elevationDeg < -HorizonDeg
            ? 0
            : pressureHPa
                / 1010
                * (283 / (273 + airDegC))
                * 1.02
                / (60 * Angle.Tan(elevationDeg + (10.3 / (elevationDeg + 5.11))));
    }
}
