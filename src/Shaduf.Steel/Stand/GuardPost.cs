using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>A post of a guard rail, pushed at its top.</summary>
public static class GuardPost
{
    /// <summary>Push on the top rail [N/m]: on a post, times the distance of the posts.</summary>
    /// <source>EN ISO 14122-3:2016 (from memory)</source>
    public const double PushNPerM = 300;

    /// <summary>Most that the top may move [mm].</summary>
    /// <source>EN ISO 14122-3:2016 (from memory)</source>
    public const double MostMoveMm = 30;

    /// <summary>Moment at the foot of a post, without partial factor.</summary>
    /// <param name="spacingM">Distance of the posts [m], 0.1 to 3.</param>
    /// <param name="heightM">Height of the top rail [m], 0.5 to 2.</param>
    /// <returns>M = 0.3 a h [kN·m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Statics; EN ISO 14122-3:2016 (from memory)</source>
    public static double MomentKNm(double spacingM, double heightM)
    {
        Within.Require(spacingM, 0.1, 3, "m");
        Within.Require(heightM, 0.5, 2, "m");
        return PushNPerM / 1000 * spacingM * heightM;
    }

    /// <summary>Movement of the top.</summary>
    /// <param name="spacingM">Distance of the posts [m], 0.1 to 3.</param>
    /// <param name="heightM">Height of the top rail [m], 0.5 to 2.</param>
    /// <param name="inertiaMm4">Second moment of area of the post [mm4], 100 to 1e9.</param>
    /// <returns>δ = 0.3 a h³/(3 E I) [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Theory of elastic beams</source>
    public static double MoveMm(double spacingM, double heightM, double inertiaMm4)
    {
        Within.Require(spacingM, 0.1, 3, "m");
        Within.Require(heightM, 0.5, 2, "m");
        Within.Require(inertiaMm4, 100, 1e9, "mm4");
        return PushNPerM
            * spacingM
            * Math.Pow(heightM * 1000, 3)
            / (3 * FrameModel.SteelElasticModulusNPerMm2 * inertiaMm4);
    }
}
