using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>
/// Size of a protective conductor. A photovoltaic array cannot clear a fault by its own current: this is for the
/// alternating-current side and for a fault fed from elsewhere.
/// </summary>
public static class ProtectiveConductor
{
    /// <summary>Smallest section that bears a fault current without losing its insulation.</summary>
    /// <param name="faultA">Fault current, r.m.s. [A], 0 to 200000.</param>
    /// <param name="timeS">Time until the protection opens [s], 0.001 to 5.</param>
    /// <param name="kCoefficient">
    /// Heat coefficient k [A √s/mm²], 40 to 250: 143 copper with PVC laid apart, 115 copper core in a PVC cable, 176
    /// copper with 90 °C insulation laid apart (looked up); 143 the same in a cable, 95 aluminium with PVC laid apart
    /// (from memory).
    /// </param>
    /// <returns>Section [mm²], before rounding up to a standard size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>IEC 60364-5-54:2011, 543.1.2 (adiabatic, up to 5 s) and tables A.54.2 to A.54.6.</source>
    public static double AdiabaticMm2(double faultA, double timeS, double kCoefficient)
    {
        Within.Require(faultA, 0, 200_000, "A");
        Within.Require(timeS, 0.001, 5, "s");
        Within.Require(kCoefficient, 40, 250, "A √s/mm²");
        return faultA * Math.Sqrt(timeS) / kCoefficient;
    }

    /// <summary>Section by the line conductor's, of the same metal, without calculation.</summary>
    /// <param name="lineMm2">Section of the line conductor [mm²], 0.5 to 1000.</param>
    /// <returns>Section [mm²]: the line's up to 16, 16 up to 35, half of the line's beyond.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The section is outside its range.</exception>
    /// <source>IEC 60364-5-54:2011, table 54.2.</source>
    public static double ByLineMm2(double lineMm2)
    {
        Within.Require(lineMm2, 0.5, 1000, "mm²");
        return lineMm2 switch
        {
            <= 16 => lineMm2,
            <= 35 => 16,
            _ => lineMm2 / 2,
        };
    }
}
