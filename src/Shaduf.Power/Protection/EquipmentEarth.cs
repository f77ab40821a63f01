using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>Where an equipment's earth conductor runs.</summary>
public enum EarthRun
{
    /// <summary>A core of the equipment's own cable.</summary>
    InCable,

    /// <summary>By itself, in conduit or otherwise guarded.</summary>
    Guarded,

    /// <summary>By itself, unguarded.</summary>
    Unguarded,

    /// <summary>From the array's frames and rack.</summary>
    Frame,

    /// <summary>From frames and rack that are joined to a lightning rod.</summary>
    FrameWithRod,
}

/// <summary>Size of an equipment's earth conductor.</summary>
/// <param name="AdiabaticMm2">What the fault current needs [mm²], 0 to 10000.</param>
/// <param name="LeastMm2">What strength or lightning needs [mm²], 0 to 16.</param>
/// <param name="SizeMm2">The standard size that serves both [mm²], 1.5 to 120.</param>
public sealed record EarthSize(double AdiabaticMm2, double LeastMm2, double SizeMm2);

/// <summary>
/// Earth conductor of drive, motor and array. An array drives little more than its short-circuit current and for ever: the
/// conductor must carry it, and no fuse will clear it.
/// </summary>
public static class EquipmentEarth
{
    /// <summary>Smallest standard copper size that bears the fault and is strong enough for where it runs.</summary>
    /// <param name="faultA">Fault current [A], 0 to 5000.</param>
    /// <param name="timeS">Time that it flows [s], 0.001 to 5.</param>
    /// <param name="kCoefficient">Heat coefficient k [A √s/mm²], 100 to 250; see <see cref="ProtectiveConductor.AdiabaticMm2"/>.</param>
    /// <param name="run">Where it runs.</param>
    /// <returns>The size and what asks for it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or there is no such run.</exception>
    /// <source>
    /// IEC 60364-5-54:2011, 543.1.2 (adiabatic) and 543.1.3 (2.5 and 4 mm²); frames 6 mm² (IEC 62548, from memory), 16 mm²
    /// where part of a stroke may flow (IEC 62305-3, table 8, from memory).
    /// </source>
    public static EarthSize For(double faultA, double timeS, double kCoefficient, EarthRun run)
    {
        Within.Require(faultA, 0, 5000, "A");
        Within.Require(kCoefficient, 100, 250, "A √s/mm²");
        var adiabaticMm2 = ProtectiveConductor.AdiabaticMm2(faultA, timeS, kCoefficient);
        var leastMm2 = run switch
        {
            EarthRun.InCable => 0,
            EarthRun.Guarded => 2.5,
            EarthRun.Unguarded => 4,
            EarthRun.Frame => 6,
            EarthRun.FrameWithRod => 16.0,
            _ => throw new ArgumentOutOfRangeException(nameof(run), run, "There is no such run."),
        };
        return new(
            adiabaticMm2,
            leastMm2,
            ConductorResistance.StandardMm2(Conductor.CopperClass2, Math.Max(adiabaticMm2, leastMm2))
        );
    }
}
