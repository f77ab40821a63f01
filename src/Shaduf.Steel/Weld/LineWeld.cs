using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Two equal runs of fillet weld side by side: both sides of a plate, a stub laid against a tube, an angle's toe and heel.</summary>
public static class LineWeld
{
    /// <summary>The runs as lines along y, apart along z.</summary>
    /// <param name="runMm">Effective length of each run [mm], 30 to 20,000.</param>
    /// <param name="apartMm">Distance between the runs [mm], 1 to 1,000.</param>
    /// <returns>The weld.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Elastic properties of lines; EN 1993-1-8:2005, 4.9</source>
    public static WeldGroup Pair(double runMm, double apartMm)
    {
        Within.Require(runMm, 30, 20_000, "mm");
        Within.Require(apartMm, 1, 1_000, "mm");
        return new(
            2 * runMm,
            2 * runMm * Math.Pow(apartMm / 2, 2),
            2 * Math.Pow(runMm, 3) / 12,
            runMm / 2,
            apartMm / 2
        );
    }
}
