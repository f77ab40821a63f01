using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>
/// Plane cuts of a tube. The axis runs along u, outwards at the end considered; v and w are the axes of the section. Saw
/// angles are from a square cut.
/// </summary>
public static class PlaneCut
{
    /// <summary>Saw angle of both of two equal tubes that meet.</summary>
    /// <param name="includedDeg">Angle between their axes [deg], 24 to 180.</param>
    /// <returns>Saw angle [deg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside its range, or NaN.</exception>
    /// <source>Trigonometry: the cut halves the angle</source>
    public static double EqualMitreDeg(double includedDeg)
    {
        Within.Require(includedDeg, 24, 180, "deg");
        return 90 - (includedDeg / 2);
    }

    /// <summary>Saw angle of a tube that meets another of another width, outer faces flush.</summary>
    /// <param name="ownMm">Width of this tube in the plane of both axes [mm], 5 to 1000.</param>
    /// <param name="otherMm">Width of the other [mm], 5 to 1000.</param>
    /// <param name="includedDeg">Angle between their axes [deg], 24 to 156.</param>
    /// <returns>Saw angle of this tube [deg], below 0 where it leans the other way; both angles sum to 180 less the angle between the axes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Trigonometry: the cut runs from the inner to the outer corner of both</source>
    public static double UnequalMitreDeg(double ownMm, double otherMm, double includedDeg)
    {
        Within.Require(ownMm, 5, 1000, "mm");
        Within.Require(otherMm, 5, 1000, "mm");
        Within.Require(includedDeg, 24, 156, "deg");
        var (sin, cos) = Math.SinCos(includedDeg * Math.PI / 180);
        return Math.Atan2(otherMm + (ownMm * cos), ownMm * sin) * 180 / Math.PI;
    }

    /// <summary>How much longer the long point is than the short one.</summary>
    /// <param name="widthMm">Width of the tube in the plane of the cut [mm], 5 to 1000.</param>
    /// <param name="sawDeg">Saw angle [deg], 0 to 78.</param>
    /// <returns>Difference [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Trigonometry</source>
    public static double SlantMm(double widthMm, double sawDeg)
    {
        Within.Require(widthMm, 5, 1000, "mm");
        Within.Require(sawDeg, 0, 78, "deg");
        return widthMm * Math.Tan(sawDeg * Math.PI / 180);
    }

    /// <summary>Where the cut lies along the tube at a point of its section, from where it meets the axis.</summary>
    /// <param name="alongVRatio">Of the plane's normal: share along v to share along u, -5 to 5.</param>
    /// <param name="alongWRatio">Of the plane's normal: share along w to share along u, -5 to 5.</param>
    /// <param name="vMm">The point along v [mm], -500 to 500.</param>
    /// <param name="wMm">The point along w [mm], -500 to 500.</param>
    /// <returns>Distance outwards [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Plane and straight line</source>
    public static double OffsetMm(double alongVRatio, double alongWRatio, double vMm, double wMm)
    {
        Within.Require(alongVRatio, -5, 5, "");
        Within.Require(alongWRatio, -5, 5, "");
        Within.Require(vMm, -500, 500, "mm");
        Within.Require(wMm, -500, 500, "mm");
        return -((alongVRatio * vMm) + (alongWRatio * wMm));
    }

    /// <summary>Angle to which the table of a saw is turned for a cut that leans two ways.</summary>
    /// <param name="alongVRatio">Of the plane's normal: share along v to share along u, 0 to 5.</param>
    /// <returns>Table angle [deg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside its range, or NaN.</exception>
    /// <source>Plane and straight line: atan(n_v/n_u)</source>
    public static double TableDeg(double alongVRatio)
    {
        Within.Require(alongVRatio, 0, 5, "");
        return Math.Atan(alongVRatio) * 180 / Math.PI;
    }

    /// <summary>Angle to which the blade is tilted for a cut that leans two ways.</summary>
    /// <param name="alongVRatio">Of the plane's normal: share along v to share along u, 0 to 5.</param>
    /// <param name="alongWRatio">Of the plane's normal: share along w to share along u, 0 to 5.</param>
    /// <returns>Tilt of the blade [deg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Plane and straight line: asin(n_w)</source>
    public static double BladeDeg(double alongVRatio, double alongWRatio)
    {
        Within.Require(alongVRatio, 0, 5, "");
        Within.Require(alongWRatio, 0, 5, "");
        return Math.Asin(alongWRatio / Math.Sqrt(1 + (alongVRatio * alongVRatio) + (alongWRatio * alongWRatio)))
            * 180
            / Math.PI;
    }

    /// <summary>How far the cut of a round tube lies behind its long point, at an angle round the tube from there.</summary>
    /// <param name="diameterMm">Outer diameter [mm], 5 to 1000.</param>
    /// <param name="sawDeg">Saw angle [deg], 0 to 78.</param>
    /// <param name="aroundDeg">Angle round the tube [deg], 0 to 360.</param>
    /// <returns>Distance behind the long point [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Plane and cylinder: r tan mu (1 - cos t)</source>
    public static double RoundOrdinateMm(double diameterMm, double sawDeg, double aroundDeg)
    {
        Within.Require(aroundDeg, 0, 360, "deg");
        return SlantMm(diameterMm, sawDeg) / 2 * (1 - Math.Cos(aroundDeg * Math.PI / 180));
    }
}
