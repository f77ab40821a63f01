using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Rise and fall of head when the water in a main is stopped.</summary>
public static class WaterHammer
{
    /// <summary>Head of a stop so fast that no relief comes back from the far end in time.</summary>
    /// <param name="waveSpeedMPerS">Wave speed [m/s], 50 to 2000.</param>
    /// <param name="velocityMPerS">Velocity stopped [m/s], 0 to 20.</param>
    /// <returns>Rise above, and fall below, the head before [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Joukowsky 1898: dH = a V/g</source>
    public static double JoukowskyM(double waveSpeedMPerS, double velocityMPerS)
    {
        Within.Require(waveSpeedMPerS, 50, 2000, "m/s");
        Within.Require(velocityMPerS, 0, 20, "m/s");
        return waveSpeedMPerS * velocityMPerS / Gravity.MPerS2;
    }

    /// <summary>Head of an even stop that takes longer than the critical time: an upper bound.</summary>
    /// <param name="lengthM">Length of the main [m], 0 to 100000.</param>
    /// <param name="velocityMPerS">Velocity stopped [m/s], 0 to 20.</param>
    /// <param name="closingS">Closing time [s], 0.01 to 3600; valid above the critical time only.</param>
    /// <returns>Rise above the head before [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Michaud 1878: dH = 2 L V/(g t)</source>
    public static double SlowClosingM(double lengthM, double velocityMPerS, double closingS)
    {
        Within.Require(lengthM, 0, 100_000, "m");
        Within.Require(velocityMPerS, 0, 20, "m/s");
        Within.Require(closingS, 0.01, 3600, "s");
        return 2 * lengthM * velocityMPerS / (Gravity.MPerS2 * closingS);
    }

    /// <summary>Time of the wave to the far end and back: a stop within it is a hard one.</summary>
    /// <param name="lengthM">Length of the main [m], 0 to 100000.</param>
    /// <param name="waveSpeedMPerS">Wave speed [m/s], 50 to 2000.</param>
    /// <returns>Critical time [s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>T_c = 2 L/a</source>
    public static double CriticalS(double lengthM, double waveSpeedMPerS)
    {
        Within.Require(lengthM, 0, 100_000, "m");
        Within.Require(waveSpeedMPerS, 50, 2000, "m/s");
        return 2 * lengthM / waveSpeedMPerS;
    }

    /// <summary>Head of a stop of known length: Joukowsky up to the critical time, Michaud beyond.</summary>
    /// <param name="lengthM">Length of the main [m], 0 to 100000.</param>
    /// <param name="waveSpeedMPerS">Wave speed [m/s], 50 to 2000.</param>
    /// <param name="velocityMPerS">Velocity stopped [m/s], 0 to 20.</param>
    /// <param name="closingS">Closing time [s], 0 to 3600; a pump that trips closes in 0.</param>
    /// <returns>Rise above the head before [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>Joukowsky 1898; Michaud 1878</source>
    public static double RiseM(double lengthM, double waveSpeedMPerS, double velocityMPerS, double closingS)
    {
        Within.Require(closingS, 0, 3600, "s");
        return closingS <= CriticalS(lengthM, waveSpeedMPerS)
            ? JoukowskyM(waveSpeedMPerS, velocityMPerS)
            : SlowClosingM(lengthM, velocityMPerS, closingS);
    }
}
