using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>The sides of a pit in which somebody works.</summary>
public static class PitSide
{
    /// <summary>Depth beyond which nobody goes into a pit with upright sides that are not held [m].</summary>
    /// <source>common rule of works safety, 1.2 m to 1.5 m by country; the lower taken</source>
    public const double UprightM = 1.2;

    /// <summary>Slope of a side from level.</summary>
    /// <param name="runRatio">Run to one of depth, 0 to 3: 0.75 in firm clay, 1 in sandy clay and angular gravel, 1.5 in sand, soft clay and wet ground.</param>
    /// <returns>Slope [deg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>29 CFR 1926 subpart P, appendix B</source>
    public static double SlopeDeg(double runRatio)
    {
        Within.Require(runRatio, 0, 3, "");
        return 90 - (Math.Atan(runRatio) * 180 / Math.PI);
    }
}
