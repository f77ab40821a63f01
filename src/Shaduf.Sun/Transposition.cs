using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>How a plane lies.</summary>
/// <param name="TiltDeg">Slope from the horizontal [deg], 0 to 90.</param>
/// <param name="AzimuthDeg">Where it looks, clockwise from true north [deg], 0 to 360.</param>
public readonly record struct PlaneFacing(double TiltDeg, double AzimuthDeg)
{
    internal void Require()
    {
        Within.Require(TiltDeg, 0, 90, "deg");
        Within.Require(AzimuthDeg, 0, 360, "deg");
    }

    /// <summary>The plane, checked and with its slope's sine and cosine worked out once for many moments.</summary>
    internal LaidPlane Laid()
    {
        Require();
        return new(AzimuthDeg, Angle.Sin(TiltDeg), Angle.Cos(TiltDeg));
    }
}

/// <summary>A plane ready for many moments.</summary>
/// <param name="AzimuthDeg">Where it looks [deg].</param>
/// <param name="TiltSine">Sine of its slope.</param>
/// <param name="TiltCosine">Cosine of its slope.</param>
internal readonly record struct LaidPlane(double AzimuthDeg, double TiltSine, double TiltCosine);

/// <summary>What the sky gives at a moment, or as the mean of an hour.</summary>
/// <param name="GlobalWPerM2">Global irradiance on the horizontal [W/m2], 0 to 2000.</param>
/// <param name="DirectNormalWPerM2">Direct irradiance normal to the sun [W/m2], 0 to extraterrestrial.</param>
/// <param name="DiffuseWPerM2">Diffuse irradiance on the horizontal [W/m2], 0 to 2000.</param>
/// <param name="ExtraterrestrialNormalWPerM2">Extraterrestrial irradiance normal to the sun [W/m2], 0 to 1440.</param>
public readonly record struct SkyMoment(
    double GlobalWPerM2,
    double DirectNormalWPerM2,
    double DiffuseWPerM2,
    double ExtraterrestrialNormalWPerM2
);

/// <summary>Irradiance on a plane by its three parts.</summary>
/// <param name="BeamWPerM2">Straight from the sun [W/m2].</param>
/// <param name="SkyWPerM2">From the sky around and beside the sun [W/m2].</param>
/// <param name="GroundWPerM2">Thrown back by the ground [W/m2].</param>
public readonly record struct PlaneIrradiance(double BeamWPerM2, double SkyWPerM2, double GroundWPerM2)
{
    /// <summary>All that falls on the plane [W/m2].</summary>
    public double TotalWPerM2 => BeamWPerM2 + SkyWPerM2 + GroundWPerM2;
}

/// <summary>
/// Irradiance from the horizontal onto a plane, with a free horizon. When the sun is down there is no beam, and the sky
/// counts as evenly bright.
/// </summary>
public static class Transposition
{
    // Rb takes the sun as at least 1 deg up, so that a sun on the horizon cannot make it endless.
    private const double LowestCosine = 0.01745;

    /// <summary>Angle between the sun and a plane's normal.</summary>
    /// <param name="sun">The sun; zenith 0 to 180, azimuth 0 to 360 deg.</param>
    /// <param name="plane">The plane.</param>
    /// <returns>Angle of incidence [deg], 0 to 180; above 90 the sun is behind the plane.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Duffie, Beckman, Solar Engineering of Thermal Processes, equation 1.6.3</source>
    public static double IncidenceDeg(SunAngles sun, PlaneFacing plane) =>
        Angle.ArcCos(Cosines(sun, plane.Laid()).Incidence);

    /// <summary>Irradiance on a plane under an evenly bright sky.</summary>
    /// <param name="sky">What the sky gives.</param>
    /// <param name="sun">The sun; zenith 0 to 180, azimuth 0 to 360 deg.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="albedoShare">Share that the ground throws back, 0 to 1.</param>
    /// <returns>The parts [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Liu, Jordan 1963, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation 2.15.1</source>
    public static PlaneIrradiance Isotropic(SkyMoment sky, SunAngles sun, PlaneFacing plane, double albedoShare) =>
        Parts(sky, sun, plane.Laid(), albedoShare, circumsolar: false);

    /// <summary>Irradiance on a plane under a sky that is brighter around the sun.</summary>
    /// <param name="sky">What the sky gives.</param>
    /// <param name="sun">The sun; zenith 0 to 180, azimuth 0 to 360 deg.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="albedoShare">Share that the ground throws back, 0 to 1.</param>
    /// <returns>The parts [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Hay, Davies 1980, in Duffie, Beckman, Solar Engineering of Thermal Processes, section 2.16</source>
    public static PlaneIrradiance HayDavies(SkyMoment sky, SunAngles sun, PlaneFacing plane, double albedoShare) =>
        HayDaviesLaid(sky, sun, plane.Laid(), albedoShare);

    internal static PlaneIrradiance HayDaviesLaid(SkyMoment sky, SunAngles sun, LaidPlane plane, double albedoShare) =>
        Parts(sky, sun, plane, albedoShare, circumsolar: true);

    private static PlaneIrradiance Parts(
        SkyMoment sky,
        SunAngles sun,
        LaidPlane plane,
        double albedoShare,
        bool circumsolar
    )
    {
        Within.Require(sky.ExtraterrestrialNormalWPerM2, 0, 1440, "W/m2");
        Within.Require(sky.DirectNormalWPerM2, 0, sky.ExtraterrestrialNormalWPerM2, "W/m2");
        Within.Require(sky.DiffuseWPerM2, 0, 2000, "W/m2");
        Within.Require(sky.GlobalWPerM2, 0, 2000, "W/m2");
        Within.Require(albedoShare, 0, 1, "");
        var (cosZenith, cosIncidence) = Cosines(sun, plane);
        var skySeen = (1 + plane.TiltCosine) / 2;
        var groundWPerM2 = sky.GlobalWPerM2 * albedoShare * (1 - skySeen);
        var evenWPerM2 = sky.DiffuseWPerM2 * skySeen;
        if (sky.DirectNormalWPerM2 == 0 || cosZenith <= 0)
        {
            return new(0, evenWPerM2, groundWPerM2);
        }

        var cosBeam = Math.Max(0, cosIncidence);
        var beamWPerM2 = sky.DirectNormalWPerM2 * cosBeam;
        if (!circumsolar)
        {
            return new(beamWPerM2, evenWPerM2, groundWPerM2);
        }

        var anisotropy = sky.DirectNormalWPerM2 / sky.ExtraterrestrialNormalWPerM2;
        var beamRatio = cosBeam / Math.Max(LowestCosine, cosZenith);
        var aroundSunWPerM2 = sky.DiffuseWPerM2 * anisotropy * beamRatio;
        return new(beamWPerM2, aroundSunWPerM2 + ((1 - anisotropy) * evenWPerM2), groundWPerM2);
    }

    private static (double Zenith, double Incidence) Cosines(SunAngles sun, LaidPlane plane)
    {
        Within.Require(sun.ZenithDeg, 0, 180, "deg");
        Within.Require(sun.AzimuthDeg, 0, 360, "deg");
        var (sinZenith, cosZenith) = Math.SinCos(Angle.ToRad(sun.ZenithDeg));
        var across = Angle.Cos(sun.AzimuthDeg - plane.AzimuthDeg);
        return (cosZenith, (cosZenith * plane.TiltCosine) + (sinZenith * plane.TiltSine * across));
    }
}
