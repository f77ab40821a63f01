using Shaduf.Working;

namespace Shaduf.Power;

/// <summary>
/// The last stroke of a lightning flash as a sphere that rolls over ground and rods: what it cannot touch is protected.
/// One upright rod over level ground; several rods: <see cref="ProtectedVolume"/>.
/// </summary>
public static class RollingSphere
{
    /// <summary>Radius of the sphere of a class.</summary>
    /// <param name="protection">Class asked.</param>
    /// <returns>Radius [m].</returns>
    /// <source>IEC 62305-3:2010, table 2 (from memory).</source>
    public static double RadiusM(LightningClass protection) =>
        protection switch
        {
            LightningClass.I => 20,
            LightningClass.II => 30,
            LightningClass.III => 45,
            _ => 60,
        };

    /// <summary>How far from a rod things of a height are protected.</summary>
    /// <param name="sphereM">Radius of the sphere [m], 1 to 200.</param>
    /// <param name="heightM">Height of the rod [m], 0 to 200, and not above the radius: of a higher rod only that much counts.</param>
    /// <param name="atM">Height of the thing [m], 0 to 200, and not above the rod.</param>
    /// <returns>Distance from the rod's axis [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Geometry of the sphere of IEC 62305-3:2010, annex A.</source>
    public static double ReachM(double sphereM, double heightM, double atM)
    {
        Within.Require(sphereM, 1, 200, "m");
        Within.Require(heightM, 0, sphereM, "m");
        Within.Require(atM, 0, heightM, "m");
        return HalfChordM(sphereM, heightM) - HalfChordM(sphereM, atM);
    }

    /// <summary>How high things at a distance from a rod are protected.</summary>
    /// <param name="sphereM">Radius of the sphere [m], 1 to 200.</param>
    /// <param name="heightM">Height of the rod [m], 0 to 200, and not above the radius.</param>
    /// <param name="asideM">From the rod's axis [m], 0 to 100000.</param>
    /// <returns>Height [m]; 0 where the sphere stands on the ground.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Geometry of the sphere of IEC 62305-3:2010, annex A.</source>
    public static double ProtectedM(double sphereM, double heightM, double asideM)
    {
        Within.Require(sphereM, 1, 200, "m");
        Within.Require(heightM, 0, sphereM, "m");
        Within.Require(asideM, 0, 100_000, "m");
        var leftM = Math.Max(0, HalfChordM(sphereM, heightM) - asideM);
        return sphereM - Math.Sqrt((sphereM * sphereM) - (leftM * leftM));
    }

    /// <summary>Height of one rod that protects a thing beside it.</summary>
    /// <param name="sphereM">Radius of the sphere [m], 1 to 200.</param>
    /// <param name="asideM">From the rod's axis to the thing [m], 0 to 1000.</param>
    /// <param name="atM">Height of the thing [m], 0 to 200.</param>
    /// <returns>Height [m]; null when no rod at that distance protects it: set more rods, or nearer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Geometry of the sphere of IEC 62305-3:2010, annex A: smallest h with reach at the thing's height.</source>
    public static double? NeededHeightM(double sphereM, double asideM, double atM)
    {
        Within.Require(sphereM, 1, 200, "m");
        Within.Require(asideM, 0, 1000, "m");
        Within.Require(atM, 0, 200, "m");
        if (atM > sphereM)
        {
            return null;
        }

        var chordM = asideM + HalfChordM(sphereM, atM);
        return chordM > sphereM ? null : sphereM - Math.Sqrt((sphereM * sphereM) - (chordM * chordM));
    }

    /// <summary>How far the sphere sinks below the tips of two equal rods, midway between them.</summary>
    /// <param name="sphereM">Radius of the sphere [m], 1 to 200.</param>
    /// <param name="apartM">Between the rods [m], 0 to 400, and not above twice the radius.</param>
    /// <returns>Sag [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Penetration of the rolling sphere, IEC 62305-3:2010, annex E (formula looked up in a maker's lightning guide).</source>
    public static double SagM(double sphereM, double apartM)
    {
        Within.Require(sphereM, 1, 200, "m");
        Within.Require(apartM, 0, 2 * sphereM, "m");
        return sphereM - Math.Sqrt((sphereM * sphereM) - (apartM * apartM / 4));
    }

    /// <summary>The angle of a cone with as much section as the sphere leaves beside the rod.</summary>
    /// <param name="sphereM">Radius of the sphere [m], 1 to 200.</param>
    /// <param name="heightM">Height of the rod [m], 0.01 to 200, and not above the radius; below 2 m the tables keep the angle of 2 m.</param>
    /// <returns>Angle from the rod's axis [deg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Equal-area construction behind IEC 62305-3:2010, table 2 (looked up in a maker's guide of 2014).</source>
    public static double AngleDeg(double sphereM, double heightM)
    {
        Within.Require(sphereM, 1, 200, "m");
        Within.Require(heightM, 0.01, sphereM, "m");
        var groundM = HalfChordM(sphereM, heightM);
        var areaM2 =
            (sphereM * groundM)
            - (groundM / 2 * (sphereM - heightM))
            - (sphereM * sphereM / 2 * Math.Acos((sphereM - heightM) / sphereM));
        return Math.Atan(2 * areaM2 / (heightM * heightM)) * 180 / Math.PI;
    }

    // Half the chord that a level plane at this height cuts from the sphere that stands on the ground.
    internal static double HalfChordM(double sphereM, double heightM) =>
        Math.Sqrt(Math.Max(0, heightM * ((2 * sphereM) - heightM)));
}
