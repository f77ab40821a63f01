using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Pressure under a rectangular pad whose load stands off its middle.</summary>
public static class EccentricBearing
{
    /// <summary>Largest pressure, in a straight line under the part that presses; the ground takes no pull.</summary>
    /// <param name="forceKN">Force on the ground [kN], 0 to 10000.</param>
    /// <param name="eccentricityM">Distance from the middle [m], 0 to half the width, which is left out.</param>
    /// <param name="widthM">Side of the pad along that distance [m], 0.1 to 30.</param>
    /// <param name="lengthM">The other side [m], 0.1 to 30.</param>
    /// <returns>Pressure [kPa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, NaN, or the load leaves the pad.</exception>
    /// <source>Statics: trapezium up to a sixth of the width, triangle beyond</source>
    public static double LinearKPa(double forceKN, double eccentricityM, double widthM, double lengthM)
    {
        Require(forceKN, widthM, lengthM);
        OnPad(eccentricityM, widthM);
        return eccentricityM <= widthM / 6
            ? forceKN / (widthM * lengthM) * (1 + (6 * eccentricityM / widthM))
            : 2 * forceKN / (3 * lengthM * ((widthM / 2) - eccentricityM));
    }

    /// <summary>Even pressure on the part of the pad whose middle is under the load.</summary>
    /// <param name="forceKN">Force on the ground [kN], 0 to 10000.</param>
    /// <param name="alongWidthM">Distance from the middle along the width [m], 0 to half the width, which is left out.</param>
    /// <param name="alongLengthM">Distance from the middle along the length [m], 0 to half the length, which is left out.</param>
    /// <param name="widthM">Width of the pad [m], 0.1 to 30.</param>
    /// <param name="lengthM">Length of the pad [m], 0.1 to 30.</param>
    /// <returns>Pressure [kPa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, NaN, or the load leaves the pad.</exception>
    /// <source>Meyerhof 1953; EN 1997-1:2004, 6.5.2</source>
    public static double MeyerhofKPa(
        double forceKN,
        double alongWidthM,
        double alongLengthM,
        double widthM,
        double lengthM
    )
    {
        Require(forceKN, widthM, lengthM);
        OnPad(alongWidthM, widthM);
        OnPad(alongLengthM, lengthM);
        return forceKN / ((widthM - (2 * alongWidthM)) * (lengthM - (2 * alongLengthM)));
    }

    private static void Require(double forceKN, double widthM, double lengthM)
    {
        Within.Require(forceKN, 0, 10_000, "kN");
        Within.Require(widthM, 0.1, 30, "m");
        Within.Require(lengthM, 0.1, 30, "m");
    }

    private static void OnPad(double eccentricityM, double sideM) =>
        Within.Require(eccentricityM, 0, Math.BitDecrement(sideM / 2), "m");
}
