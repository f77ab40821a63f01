using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Friction of undisturbed ground on the sides of a block that is pulled. A reserve: not counted unless somebody decides to.</summary>
public static class SideFriction
{
    /// <summary>Topsoil that holds nothing [m].</summary>
    /// <source>judgement, no source</source>
    public const double TopsoilM = 0.3;

    /// <summary>Factor by which the friction is made safe.</summary>
    /// <source>judgement, no source</source>
    public const double ModelFactor = 2;

    /// <summary>Pull that the sides hold, made safe: none in made ground, swelling or freezing ground, or round a pit dug too wide.</summary>
    /// <param name="depthM">Depth of the block [m], 0 to 5.</param>
    /// <param name="perimeterM">Length round the block [m], 0 to 60.</param>
    /// <param name="frictionDeg">Angle of friction [deg], 0 to 45.</param>
    /// <param name="weightKNPerM3">Weight of the ground; below water less that of water [kN/m3], 3 to 25.</param>
    /// <returns>Pull [kN].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Pressure at rest 1 − sin φ (Jaky), wall friction two thirds of φ; from memory. Only what is below the topsoil.</source>
    public static double PullKN(double depthM, double perimeterM, double frictionDeg, double weightKNPerM3)
    {
        Within.Require(depthM, 0, 5, "m");
        Within.Require(perimeterM, 0, 60, "m");
        Within.Require(frictionDeg, 0, 45, "deg");
        Within.Require(weightKNPerM3, 3, 25, "kN/m3");
        var angle = frictionDeg * Math.PI / 180;
        var squares = Math.Max(0, (depthM * depthM) - (TopsoilM * TopsoilM));
        return 0.5
            * (1 - Math.Sin(angle))
            * weightKNPerM3
            * squares
            * Math.Tan(angle * 2 / 3)
            * perimeterM
            / ModelFactor;
    }
}
