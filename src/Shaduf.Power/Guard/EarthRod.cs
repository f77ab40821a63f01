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
}
