using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>Flushing and disinfecting a laid pipe.</summary>
public static class PipeFlush
{
    /// <summary>Least speed that carries sand out [m/s].</summary>
    public const double LeastMPerS = 0.75;

    /// <summary>How often the water in the pipe is changed.</summary>
    public const double VolumesCount = 3;

    /// <summary>Water in a pipe.</summary>
    /// <param name="boreMm">Bore [mm], 5 to 2000.</param>
    /// <param name="lengthM">Length [m], 0 to 100000.</param>
    /// <returns>Volume [L].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>geometry</source>
    public static double VolumeL(double boreMm, double lengthM)
    {
        Within.Require(boreMm, 5, 2000, "mm");
        Within.Require(lengthM, 0, 100_000, "m");
        return Math.PI / 4 * Math.Pow(boreMm / 100, 2) * lengthM * 10;
    }

    /// <summary>Flow that flushes a bore.</summary>
    /// <param name="boreMm">Bore [mm], 5 to 2000.</param>
    /// <param name="speedMPerS">Speed [m/s], 0.1 to 5.</param>
    /// <returns>Flow [L/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>continuity</source>
    public static double FlowLPerS(double boreMm, double speedMPerS)
    {
        Within.Require(boreMm, 5, 2000, "mm");
        Within.Require(speedMPerS, 0.1, 5, "m/s");
        return Math.PI / 4 * Math.Pow(boreMm / 1000, 2) * speedMPerS * 1000;
    }

    /// <summary>Chlorine product that doses a volume of water.</summary>
    /// <param name="volumeL">Water [L], 0 to 1e8.</param>
    /// <param name="doseMgPerL">Free chlorine wanted [mg/L], 0.1 to 500: pipes 50 for a day.</param>
    /// <param name="chlorineShare">Chlorine in the product, 0.01 to 1: high-test hypochlorite 0.65.</param>
    /// <returns>Product [kg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or NaN.</exception>
    /// <source>mass balance; dose of AWWA C651 (25 to 50 mg/L for 24 h), from memory</source>
    public static double ProductKg(double volumeL, double doseMgPerL, double chlorineShare)
    {
        Within.Require(volumeL, 0, 1e8, "L");
        Within.Require(doseMgPerL, 0.1, 500, "mg/L");
        Within.Require(chlorineShare, 0.01, 1, "");
        return volumeL * doseMgPerL / 1e6 / chlorineShare;
    }
}
