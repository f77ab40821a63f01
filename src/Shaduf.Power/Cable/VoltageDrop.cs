using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Voltage and power lost along a cable.</summary>
public static class VoltageDrop
{
    /// <summary>Drop of direct current, out and back.</summary>
    /// <param name="currentA">Current [A], 0 to 10000.</param>
    /// <param name="lengthM">Length, one way [m], 0 to 10000.</param>
    /// <param name="ohmPerM">Resistance of one conductor at working temperature [Ω/m], 0 to 1.</param>
    /// <returns>Drop [V].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Ohm's law over both conductors.</source>
    public static double DirectV(double currentA, double lengthM, double ohmPerM)
    {
        RequireRun(currentA, lengthM);
        Within.Require(ohmPerM, 0, 1, "Ω/m");
        return 2 * lengthM * currentA * ohmPerM;
    }

    /// <summary>Drop between the lines of three phases.</summary>
    /// <param name="currentA">Current of a line [A], 0 to 10000.</param>
    /// <param name="lengthM">Length, one way [m], 0 to 10000.</param>
    /// <param name="impedance">Resistance and reactance of one conductor.</param>
    /// <param name="powerFactor">Power factor of the load, lagging, 0.3 to 1.</param>
    /// <returns>Drop [V].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>First-order drop √3 L I (r cos φ + x sin φ), as in IEC 60364-5-52:2009, annex G.</source>
    public static double ThreePhaseV(double currentA, double lengthM, LineImpedance impedance, double powerFactor)
    {
        RequireRun(currentA, lengthM);
        Within.Require(impedance.ResistanceOhmPerM, 0, 1, "Ω/m");
        Within.Require(impedance.ReactanceOhmPerM, 0, 0.1, "Ω/m");
        Within.Require(powerFactor, 0.3, 1, "");
        var alongOhmPerM = impedance.ResistanceOhmPerM * powerFactor + impedance.ReactanceOhmPerM * Sine(powerFactor);
        return Math.Sqrt(3) * lengthM * currentA * alongOhmPerM;
    }

    /// <summary>
    /// Drop by the standard's short formula, with a resistivity 1.25 times that at 20 °C and 0.08 mΩ/m: from line to
    /// neutral for three phases, out and back for direct current (no reactance).
    /// </summary>
    /// <param name="supply">What the cable carries.</param>
    /// <param name="currentA">Current of a line [A], 0 to 10000.</param>
    /// <param name="lengthM">Length, one way [m], 0 to 10000.</param>
    /// <param name="conductor">Kind of conductor.</param>
    /// <param name="sizeMm2">Nominal size [mm²], 0.5 to 1000.</param>
    /// <returns>Drop [V].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>IEC 60364-5-52:2009, annex G.</source>
    public static double AnnexGV(
        CableSupply supply,
        double currentA,
        double lengthM,
        Conductor conductor,
        double sizeMm2
    )
    {
        RequireRun(currentA, lengthM);
        Within.Require(supply.PowerFactor, 0.3, 1, "");
        Within.Require(sizeMm2, 0.5, 1000, "mm²");
        var resistivityOhmMm2PerM = conductor == Conductor.AluminiumClass2 ? 0.036 : 0.0225;
        var ways = supply.Kind == CableKind.Dc ? 2 : 1;
        var reactanceOhmPerM = CableReactance.AnnexGOhmPerKm(supply.FrequencyHz) / 1000;
        var alongOhmPerM =
            resistivityOhmMm2PerM / sizeMm2 * supply.PowerFactor + reactanceOhmPerM * Sine(supply.PowerFactor);
        return ways * lengthM * currentA * alongOhmPerM;
    }

    /// <summary>Power that the cable turns to heat.</summary>
    /// <param name="kind">Kind of supply: two conductors for direct current, three for three phases.</param>
    /// <param name="currentA">Current of a line [A], 0 to 10000.</param>
    /// <param name="lengthM">Length, one way [m], 0 to 10000.</param>
    /// <param name="ohmPerM">Resistance of one conductor at working temperature [Ω/m], 0 to 1.</param>
    /// <returns>Power [W].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Joule's law over the loaded conductors.</source>
    public static double LossW(CableKind kind, double currentA, double lengthM, double ohmPerM)
    {
        RequireRun(currentA, lengthM);
        Within.Require(ohmPerM, 0, 1, "Ω/m");
        return (kind == CableKind.Dc ? 2 : 3) * lengthM * currentA * currentA * ohmPerM;
    }

    internal static double Sine(double powerFactor) => Math.Sqrt(1 - powerFactor * powerFactor);

    private static void RequireRun(double currentA, double lengthM)
    {
        Within.Require(currentA, 0, 10_000, "A");
        Within.Require(lengthM, 0, 10_000, "m");
    }
}
