using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Soil resistivity from a reading in the field. Measure at the end of the dry season.</summary>
public static class SoilTest
{
    /// <summary>From four equal pins in a line, current through the outer two, voltage over the inner two.</summary>
    /// <param name="spacingM">From pin to pin [m], 0.1 to 100; the pins go in no deeper than a twentieth of it.</param>
    /// <param name="readingOhm">Voltage over current [Ω], 0.001 to 100000.</param>
    /// <returns>Resistivity, mean over a depth of about the spacing [Ω·m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Wenner, 1915: ρ = 2π a R (limit of the depth looked up in a utility's design manual).</source>
    public static double FourPinsOhmM(double spacingM, double readingOhm)
    {
        Within.Require(spacingM, 0.1, 100, "m");
        Within.Require(readingOhm, 0.001, 100_000, "Ω");
        return 2 * Math.PI * spacingM * readingOhm;
    }

    /// <summary>From one driven rod, read by the fall of potential: current pin at ten lengths or more, voltage pin at 62 % of that.</summary>
    /// <param name="lengthM">Driven length [m], 0.3 to 10.</param>
    /// <param name="diameterM">Diameter [m], 0.005 to 0.1.</param>
    /// <param name="readingOhm">Voltage over current [Ω], 0.001 to 100000.</param>
    /// <returns>Resistivity, mean along the rod [Ω·m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>The rod formula of BS 7430:2011 turned round (from memory).</source>
    public static double DrivenRodOhmM(double lengthM, double diameterM, double readingOhm)
    {
        Within.Require(lengthM, 0.3, 10, "m");
        Within.Require(readingOhm, 0.001, 100_000, "Ω");
        return readingOhm / EarthRod.ResistanceOhm(1, lengthM, diameterM);
    }
}
