using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>How hard an earthquake shakes what stands on the ground, by its own period; accelerations over gravity.</summary>
public static class Spectrum
{
    private const double Amplified = 2.5;

    // EN 1998-1, 3.2.2.5: the floor of the design spectrum beyond the plateau.
    private const double FloorShare = 0.2;

    /// <summary>Elastic spectrum.</summary>
    /// <param name="groundRatio">Acceleration of rock a_g over gravity, 0 to 1.</param>
    /// <param name="ground">The ground.</param>
    /// <param name="periodS">Period of the structure [s], 0 to 20.</param>
    /// <param name="dampingPercent">Damping of critical [%], 0 to 30.</param>
    /// <returns>S_e over gravity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1998-1:2004, 3.2.2.2, equations 3.2 to 3.6; beyond 4 s the last branch goes on</source>
    public static double ElasticRatio(double groundRatio, GroundType ground, double periodS, double dampingPercent)
    {
        Within.Require(groundRatio, 0, 1, "");
        Within.Require(periodS, 0, 20, "s");
        Within.Require(dampingPercent, 0, 30, "%");
        var damped = Amplified * Math.Max(0.55, Math.Sqrt(10 / (5 + dampingPercent)));
        return groundRatio * ground.SoilFactor * Shape(ground, periodS, 1, damped);
    }

    /// <summary>Design spectrum for forces on a structure that yields a little.</summary>
    /// <param name="groundRatio">Acceleration of rock a_g over gravity, 0 to 1.</param>
    /// <param name="ground">The ground.</param>
    /// <param name="periodS">Period of the structure [s], 0 to 20.</param>
    /// <param name="behaviourFactor">Behaviour factor q, 1 to 8.</param>
    /// <returns>S_d over gravity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1998-1:2004, 3.2.2.5, equations 3.13 to 3.16, β = 0.2</source>
    public static double DesignRatio(double groundRatio, GroundType ground, double periodS, double behaviourFactor)
    {
        Within.Require(groundRatio, 0, 1, "");
        Within.Require(periodS, 0, 20, "s");
        Within.Require(behaviourFactor, 1, 8, "");
        var shaken = groundRatio * ground.SoilFactor * Shape(ground, periodS, 2.0 / 3, Amplified / behaviourFactor);
        return periodS <= ground.PlateauS ? shaken : Math.Max(FloorShare * groundRatio, shaken);
    }

    // From the start at T = 0 to the plateau, and down from it.
    private static double Shape(GroundType ground, double periodS, double start, double plateau) =>
        periodS <= ground.RiseS ? start + (periodS / ground.RiseS * (plateau - start))
        : periodS <= ground.PlateauS ? plateau
        : periodS <= ground.DriftS ? plateau * ground.PlateauS / periodS
        : plateau * ground.PlateauS * ground.DriftS / (periodS * periodS);
}
