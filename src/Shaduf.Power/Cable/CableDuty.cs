using System.Collections.Immutable;
using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>What kind of supply a cable carries.</summary>
public enum CableKind
{
    /// <summary>Direct current, out and back.</summary>
    Dc,

    /// <summary>Three phases without a loaded neutral.</summary>
    ThreePhase,
}

/// <summary>What a cable carries; build it with <see cref="Dc"/> or <see cref="ThreePhase"/>.</summary>
/// <param name="Kind">Kind of supply.</param>
/// <param name="PowerFactor">Power factor of the load, 0.3 to 1; 1 for direct current.</param>
/// <param name="FrequencyHz">Frequency [Hz], 0 to 400; 0 for direct current.</param>
public readonly record struct CableSupply(CableKind Kind, double PowerFactor, double FrequencyHz)
{
    /// <summary>Direct current.</summary>
    public static CableSupply Dc { get; } = new(CableKind.Dc, 1, 0);

    /// <summary>Three phases.</summary>
    /// <param name="powerFactor">Power factor of the load, 0.3 to 1.</param>
    /// <param name="frequencyHz">Frequency [Hz], 1 to 400.</param>
    /// <returns>The supply.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>None: a record of the two.</source>
    public static CableSupply ThreePhase(double powerFactor, double frequencyHz)
    {
        Within.Require(powerFactor, 0.3, 1, "");
        Within.Require(frequencyHz, 1, 400, "Hz");
        return new(CableKind.ThreePhase, powerFactor, frequencyHz);
    }
}

/// <summary>How warm a cable may lie and get.</summary>
/// <param name="SurroundingsDegC">Air, ground or water around it [°C], -40 to 90.</param>
/// <param name="LargestConductorDegC">Largest conductor temperature of its insulation [°C], 60 to 120.</param>
public readonly record struct CableWarmth(double SurroundingsDegC, double LargestConductorDegC);

/// <summary>Resistance and reactance of one conductor of a cable.</summary>
/// <param name="ResistanceOhmPerM">Resistance at working temperature [Ω/m], 0 to 1.</param>
/// <param name="ReactanceOhmPerM">Reactance at working frequency [Ω/m], 0 to 0.1.</param>
public readonly record struct LineImpedance(double ResistanceOhmPerM, double ReactanceOhmPerM);

/// <summary>One cable that could be bought.</summary>
/// <param name="Name">Its name in the price book.</param>
/// <param name="SizeMm2">Nominal size [mm²], 1.5 to 120.</param>
/// <param name="Conductor">Kind of conductor.</param>
/// <param name="AmpacityA">Current it may carry where its card speaks of, before the factors of where it lies [A], 1 to 10000.</param>
public sealed record CableOption(string Name, double SizeMm2, Conductor Conductor, double AmpacityA);

/// <summary>A stretch of a cable's way that lies in one manner.</summary>
/// <param name="Where">In what it lies: 'in the ground', 'in the well'.</param>
/// <param name="LengthM">Length, one way [m], 0.1 to 5000.</param>
/// <param name="SurroundingsDegC">Air, ground or water around it [°C], -40 to 90.</param>
/// <param name="LayingFactor">
/// Factor on the option's ampacity here, above 0 to 2: temperature, grouping, depth and soil multiplied; see <see cref="Ampacity"/>.
/// </param>
public sealed record CableStretch(string Where, double LengthM, double SurroundingsDegC, double LayingFactor);

/// <summary>What a cable must do.</summary>
/// <param name="CurrentA">Working current, for drop and loss [A], 0.001 to 1000.</param>
/// <param name="LeastAmpacityA">Current that it must be able to carry for ever [A], at least <paramref name="CurrentA"/>, to 1000.</param>
/// <param name="SystemV">Voltage that the drop is a share of; between lines for three phases [V], 5 to 2000.</param>
/// <param name="LargestDropShare">Largest drop as a share of <paramref name="SystemV"/>, 0.001 to 0.2.</param>
/// <param name="Supply">What it carries.</param>
/// <param name="LargestConductorDegC">Largest conductor temperature of its insulation [°C], 60 to 120.</param>
/// <param name="Stretches">The stretches of its way, at least one.</param>
public sealed record CableDuty(
    double CurrentA,
    double LeastAmpacityA,
    double SystemV,
    double LargestDropShare,
    CableSupply Supply,
    double LargestConductorDegC,
    ImmutableArray<CableStretch> Stretches
)
{
    /// <summary>Length of the whole way, one way [m].</summary>
    public double LengthM => Stretches.Sum(stretch => stretch.LengthM);
}
