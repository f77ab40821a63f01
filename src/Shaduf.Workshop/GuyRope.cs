using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>A rope that holds a frame upright against the wind before its feet hold it.</summary>
public static class GuyRope
{
    /// <summary>Pull of the rope on the windward side; no foot is taken to help.</summary>
    /// <param name="windKN">Force of the wind [kN], 0 to 1000.</param>
    /// <param name="windHeightM">Height at which it acts [m], 0 to 20.</param>
    /// <param name="tiedHeightM">Height at which the rope is tied [m], 0.05 to 20.</param>
    /// <param name="slopeDeg">Slope of the rope from level [deg], 10 to 70.</param>
    /// <returns>Pull [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics: moments about the foot, F h_F/(h_g cos θ)</source>
    public static double PullKN(double windKN, double windHeightM, double tiedHeightM, double slopeDeg)
    {
        Within.Require(windKN, 0, 1000, "kN");
        Within.Require(windHeightM, 0, 20, "m");
        Within.Require(tiedHeightM, 0.05, 20, "m");
        return windKN * windHeightM / (tiedHeightM * Math.Cos(Angle(slopeDeg)));
    }

    /// <summary>Part of the pull that lifts the anchor, and presses the column.</summary>
    /// <param name="pullKN">Pull of the rope [kN], 0 to 1000.</param>
    /// <param name="slopeDeg">Slope of the rope from level [deg], 10 to 70.</param>
    /// <returns>Force straight up [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics: T sin θ</source>
    public static double UpKN(double pullKN, double slopeDeg)
    {
        Within.Require(pullKN, 0, 1000, "kN");
        return pullKN * Math.Sin(Angle(slopeDeg));
    }

    private static double Angle(double slopeDeg)
    {
        Within.Require(slopeDeg, 10, 70, "deg");
        return slopeDeg * Math.PI / 180;
    }
}
