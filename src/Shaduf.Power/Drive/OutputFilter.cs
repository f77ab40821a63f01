using System.Collections.Immutable;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Power;

/// <summary>What stands between a drive and its motor's cable.</summary>
public enum FilterKind
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A filter that flattens the slope of the pulses (dU/dt filter, output reactor).</summary>
    Slope,

    /// <summary>A filter that makes the pulses a sine.</summary>
    Sine,
}

/// <summary>Which filter the motor's cable asks for, and why.</summary>
/// <param name="Kind">Kind of filter.</param>
/// <param name="CriticalM">Cable length from which a pulse comes back in full [m], 0 to 100000.</param>
/// <param name="PeakV">Peak at the motor's terminals without a filter [V], 0 to 4000.</param>
/// <param name="Why">Each reason, in plain words; empty when none is needed.</param>
public sealed record FilterNeed(FilterKind Kind, double CriticalM, double PeakV, ImmutableArray<string> Why);

/// <summary>
/// Pulses of an inverter on the motor's cable: they come back from the motor and add up. A submersible's winding bears
/// less than a dry motor's.
/// </summary>
public static class OutputFilter
{
    /// <summary>Speed of a pulse in cable [m/s]: 150 to 200 m/µs; near the lower end, which shortens the cable that may stay bare.</summary>
    public const double WaveMPerS = 1.6e8;

    /// <summary>Cable beyond which a slope filter no longer serves [m]: 100 to 150 m, the lower end.</summary>
    public const double LongestSlopeM = 100;

    private const double LongestBareM = 15;
    private const double HighMotorV = 379;
    private const double LargestPeakV = 1000;
    private const double SlowRiseS = 2e-6;

    /// <summary>Cable length from which a pulse comes back in full: it is over and back within the pulse's rise.</summary>
    /// <param name="riseS">Rise time of the pulse [s], 1e-9 to 1e-3.</param>
    /// <param name="waveMPerS">Speed of the pulse in the cable [m/s], 1e8 to 3e8.</param>
    /// <returns>Length [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Travelling waves, l = v t/2, as in drive makers' guides; IEC TS 60034-25 treats the matter (from memory).</source>
    public static double CriticalM(double riseS, double waveMPerS)
    {
        Within.Require(riseS, 1e-9, 1e-3, "s");
        Within.Require(waveMPerS, 1e8, 3e8, "m/s");
        return waveMPerS * riseS / 2;
    }

    /// <summary>Peak between the motor's terminals: twice the bus voltage from the critical length on, in proportion below it.</summary>
    /// <param name="busV">Largest bus voltage while the motor runs [V], 0 to 2000.</param>
    /// <param name="cableM">Cable from drive to motor [m], 0 to 5000.</param>
    /// <param name="criticalM">Critical length [m], 0.01 to 200000.</param>
    /// <returns>Peak [V].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Travelling waves on an open end; in proportion below the critical length: makers' guides, from memory.</source>
    public static double PeakV(double busV, double cableM, double criticalM)
    {
        Within.Require(busV, 0, 2000, "V");
        Within.Require(cableM, 0, 5000, "m");
        Within.Require(criticalM, 0.01, 200_000, "m");
        return busV * (1 + Math.Min(1, cableM / criticalM));
    }

    /// <summary>Filter that a submersible three-phase motor asks for.</summary>
    /// <param name="busV">Largest bus voltage while the motor runs [V], 0 to 2000.</param>
    /// <param name="motorV">Rated voltage of the motor between lines [V], 10 to 1000.</param>
    /// <param name="cableM">Cable from drive to motor, the drop cable with it [m], 0 to 5000.</param>
    /// <param name="riseS">Rise time of the drive's pulses [s], 1e-9 to 1e-3.</param>
    /// <param name="bareM">Longest cable that the drive's maker allows without a filter [m], 0 to infinity.</param>
    /// <param name="slopeM">Longest cable that the drive's maker allows with a slope filter [m], 0 to infinity.</param>
    /// <returns>The filter and each reason for it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>
    /// Submersible-motor makers' rules, looked up: a filter above 1000 V of peak, below 2 µs of rise, or above 379 V of
    /// motor with more than 15 m (50 ft) of cable; slope filter to 100 m, sine filter beyond.
    /// </source>
    public static FilterNeed For(double busV, double motorV, double cableM, double riseS, double bareM, double slopeM)
    {
        Within.Require(motorV, 10, 1000, "V");
        Within.Require(bareM, 0, double.PositiveInfinity, "m");
        Within.Require(slopeM, 0, double.PositiveInfinity, "m");
        var criticalM = CriticalM(riseS, WaveMPerS);
        var peakV = PeakV(busV, cableM, criticalM);
        ImmutableArray<string> why =
        [
            .. peakV > LargestPeakV
                ? [Invariant($"{peakV:0} V of peak at the motor is above {LargestPeakV:0} V")]
                : Array.Empty<string>(),
            .. riseS < SlowRiseS
                ? [Invariant($"the pulses rise in {riseS * 1e6:0.##} µs, faster than {SlowRiseS * 1e6:0} µs")]
                : Array.Empty<string>(),
            .. motorV > HighMotorV && cableM > LongestBareM
                ? [Invariant($"a motor of {motorV:0} V with {cableM:0} m of cable, more than {LongestBareM:0} m")]
                : Array.Empty<string>(),
            .. cableM > bareM
                ? [Invariant($"{cableM:0} m of cable, more than the {bareM:0} m that the drive bears bare")]
                : Array.Empty<string>(),
        ];
        return new(KindOf(why, cableM, Math.Min(LongestSlopeM, slopeM)), criticalM, peakV, why);
    }

    private static FilterKind KindOf(ImmutableArray<string> why, double cableM, double slopeM) =>
        why.IsEmpty ? FilterKind.None
        : cableM <= slopeM ? FilterKind.Slope
        : FilterKind.Sine;
}
