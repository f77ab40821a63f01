using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>The end of a round tube that sits on the side of another.</summary>
public static class Saddle
{
    /// <summary>
    /// Distance from the header's axis along the branch to where the branch meets the header's side, at an angle round
    /// the branch. Take the outer radius of a branch whose edge is bevelled to fit, the inner one where it is left square.
    /// </summary>
    /// <param name="headerMm">Outer radius of the header [mm], 2 to 1000.</param>
    /// <param name="branchMm">Radius of the branch [mm], 1 to the header's less the offset.</param>
    /// <param name="angleDeg">Angle between both axes [deg], 20 to 90.</param>
    /// <param name="offsetMm">Distance of the axes where they pass each other [mm], -1000 to 1000.</param>
    /// <param name="aroundDeg">Angle round the branch, 0 on the side of the acute angle [deg], 0 to 360.</param>
    /// <returns>Distance [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Two cylinders: (sqrt(R2 - (o + r sin t)2) - r cos t cos b)/sin b</source>
    public static double ReachMm(double headerMm, double branchMm, double angleDeg, double offsetMm, double aroundDeg)
    {
        Within.Require(headerMm, 2, 1000, "mm");
        Within.Require(offsetMm, -1000, 1000, "mm");
        Within.Require(branchMm, 1, headerMm - Math.Abs(offsetMm), "mm");
        Within.Require(angleDeg, 20, 90, "deg");
        Within.Require(aroundDeg, 0, 360, "deg");
        var (sin, cos) = Math.SinCos(aroundDeg * Math.PI / 180);
        var (sinB, cosB) = Math.SinCos(angleDeg * Math.PI / 180);
        var asideMm = offsetMm + (branchMm * sin);
        var heightMm = Math.Sqrt(Math.Max(0, (headerMm * headerMm) - (asideMm * asideMm)));
        return (heightMm - (branchMm * cos * cosB)) / sinB;
    }

    /// <summary>How far the end is cut back behind its long point, which is where the reach is least.</summary>
    /// <param name="headerMm">Outer radius of the header [mm], 2 to 1000.</param>
    /// <param name="branchMm">Radius of the branch [mm], 1 to the header's.</param>
    /// <param name="angleDeg">Angle between both axes [deg], 20 to 90.</param>
    /// <returns>Depth between long point and deepest cut [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Largest reach less least reach, by steps of 0.25 deg round the branch</source>
    public static double DepthMm(double headerMm, double branchMm, double angleDeg)
    {
        var reaches = Enumerable
            .Range(0, 721)
            .Select(step => ReachMm(headerMm, branchMm, angleDeg, 0, step * 0.25))
            .ToList();
        return reaches.Max() - reaches.Min();
    }
}
