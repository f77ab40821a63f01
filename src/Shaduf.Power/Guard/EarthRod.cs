using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>An earth rod driven upright into uniform soil.</summary>
public static class EarthRod
{
    /// <summary>Resistance of one rod to remote earth. Soil tables can be wrong by a factor of three: measure.</summary>
    /// <param name="resistivityOhmM">Soil resistivity [Ω·m], 1 to 100000.</param>
    /// <param name="lengthM">Driven length [m], 0.3 to 100.</param>
    /// <param name="diameterM">Diameter [m], 0.005 to 0.1.</param>
    /// <returns>Resistance [Ω].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>BS 7430:2011, vertical rods; Dwight, Calculation of Resistances to Ground, 1936.</source>
    public static double ResistanceOhm(double resistivityOhmM, double lengthM, double diameterM)
    {
        Within.Require(resistivityOhmM, 1, 100_000, "Ω·m");
        Within.Require(lengthM, 0.3, 100, "m");
        Within.Require(diameterM, 0.005, 0.1, "m");
        return resistivityOhmM / (2 * Math.PI * lengthM) * (Math.Log(8 * lengthM / diameterM) - 1);
    }

    // BS 7430: factor of 1 to 10 rods in a line.
    private static readonly double[] InLine = [0, 1.00, 1.66, 2.15, 2.54, 2.87, 3.15, 3.39, 3.61, 3.81];

    /// <summary>Resistance of equal rods in a line, joined: less than one rod's share because the soil between them is shared.</summary>
    /// <param name="resistivityOhmM">Soil resistivity [Ω·m], 1 to 100000.</param>
    /// <param name="lengthM">Driven length [m], 0.3 to 100.</param>
    /// <param name="diameterM">Diameter [m], 0.005 to 0.1.</param>
    /// <param name="count">Rods, 1 to 10.</param>
    /// <param name="spacingM">Between rods [m], 0.3 to 1000, and at least their length.</param>
    /// <returns>Resistance [Ω].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>BS 7430:2011, n rods in parallel: R (1 + λ a)/n, a = ρ/(2π R s).</source>
    public static double InLineOhm(double resistivityOhmM, double lengthM, double diameterM, int count, double spacingM)
    {
        var oneOhm = ResistanceOhm(resistivityOhmM, lengthM, diameterM);
        Within.RequireCount(count, 1, InLine.Length);
        Within.Require(spacingM, lengthM, 1000, "m");
        var sharedOhm = InLine[count - 1] * resistivityOhmM / (2 * Math.PI * spacingM);
        return (oneOhm + sharedOhm) / count;
    }
}
