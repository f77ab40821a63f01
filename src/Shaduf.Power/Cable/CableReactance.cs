using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Reactance of a cable's conductor, one way.</summary>
public static class CableReactance
{
    /// <summary>Reactance of flat or round submersible cable.</summary>
    /// <param name="sizeMm2">Nominal size [mm²], 1.5 to 35, a size of the table.</param>
    /// <param name="frequencyHz">Frequency [Hz], 0 to 400.</param>
    /// <returns>Reactance [Ω/km], in proportion to frequency.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range or the table.</exception>
    /// <source>Table at 50 Hz in a submersible-motor maker's application manual; looked up.</source>
    public static double SubmersibleOhmPerKm(double sizeMm2, double frequencyHz)
    {
        Within.Require(frequencyHz, 0, 400, "Hz");
        return Submersible.At(sizeMm2) * (frequencyHz / 50);
    }

    /// <summary>Reactance by which the standard reckons when no table is at hand: 0.08 Ω/km at 50 Hz.</summary>
    /// <param name="frequencyHz">Frequency [Hz], 0 to 400.</param>
    /// <returns>Reactance [Ω/km], in proportion to frequency.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside its range.</exception>
    /// <source>IEC 60364-5-52:2009, annex G: λ = 0.08 mΩ/m.</source>
    public static double AnnexGOhmPerKm(double frequencyHz)
    {
        Within.Require(frequencyHz, 0, 400, "Hz");
        return 0.08 * (frequencyHz / 50);
    }

    /// <summary>The submersible table's figure where it has the size, and the standard's round figure elsewhere.</summary>
    /// <param name="sizeMm2">Nominal size [mm²], 1.5 to 120.</param>
    /// <param name="frequencyHz">Frequency [Hz], 0 to 400.</param>
    /// <returns>Reactance [Ω/km].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>As <see cref="SubmersibleOhmPerKm"/> and <see cref="AnnexGOhmPerKm"/>.</source>
    public static double OhmPerKm(double sizeMm2, double frequencyHz)
    {
        Within.Require(sizeMm2, 1.5, 120, "mm²");
        return Submersible.Holds(sizeMm2) ? SubmersibleOhmPerKm(sizeMm2, frequencyHz) : AnnexGOhmPerKm(frequencyHz);
    }

    private static readonly SizeTable Submersible = new(
        "SubmersibleCable.csv",
        "reactance_ohm_per_km",
        "the submersible cable table"
    );
}
