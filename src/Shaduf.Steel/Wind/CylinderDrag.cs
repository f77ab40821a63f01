using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Push of the wind on a round body that stands across it.</summary>
public static class CylinderDrag
{
    private const double AirViscosityM2PerS = 15e-6;

    /// <summary>Coefficient on diameter times height, end effect not counted in its favour.</summary>
    /// <param name="diameterM">Diameter b [m], 0.05 to 30.</param>
    /// <param name="peakNPerM2">Pressure of the gust at its height q_p [N/m2], 1 to 50,000.</param>
    /// <param name="roughnessMm">Roughness of its face k [mm], 0.001 to 3: 0.05 smooth plastic, 0.2 zinc.</param>
    /// <returns>c_f,0, 1.2 at most.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, 7.9.2, figure 7.28: below Re of some 2e5 1.2 (first branch from memory)</source>
    public static double Coefficient(double diameterM, double peakNPerM2, double roughnessMm)
    {
        Within.Require(diameterM, 0.05, 30, "m");
        Within.Require(peakNPerM2, 1, 50_000, "N/m2");
        Within.Require(roughnessMm, 0.001, 3, "mm");
        var gustMPerS = Math.Sqrt(2 * peakNPerM2 / WindPressure.CodeAirKgPerM3);
        var millions = diameterM * gustMPerS / AirViscosityM2PerS / 1e6;
        var falling = 0.11 / Math.Pow(millions, 1.4);
        return falling >= Largest
            ? Largest
            : Math.Min(Largest, Math.Max(falling, ByRoughness(diameterM, roughnessMm, millions)));
    }

    private const double Largest = 1.2;

    private static double ByRoughness(double diameterM, double roughnessMm, double millions) =>
        Largest + (0.18 * Math.Log10(10 * roughnessMm / (1000 * diameterM)) / (1 + (0.4 * Math.Log10(millions))));
}
