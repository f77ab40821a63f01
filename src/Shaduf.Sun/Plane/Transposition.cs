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

    /// <summary>The plane, checked and with its normal worked out once for many moments.</summary>
    internal LaidPlane Laid()
    {
        Require();
        var (sinTilt, cosTilt) = Math.SinCos(Angle.ToRad(TiltDeg));
        return new(sinTilt * Angle.Sin(AzimuthDeg), sinTilt * Angle.Cos(AzimuthDeg), sinTilt, cosTilt);
    }
}

/// <summary>A plane ready for many moments.</summary>
/// <param name="EastShare">Part of its normal to the east.</param>
/// <param name="NorthShare">Part of its normal to the north.</param>
/// <param name="TiltSine">Sine of its slope.</param>
/// <param name="TiltCosine">Cosine of its slope.</param>
internal readonly record struct LaidPlane(double EastShare, double NorthShare, double TiltSine, double TiltCosine)
{
    /// <summary>Share of the sky's dome that an evenly bright sky sends to it.</summary>
    internal double SkyShare => (1 + TiltCosine) / 2;

    /// <summary>Cosine of the angle between the sun and its normal.</summary>
    internal double Cosine(SunDirection sun) =>
        (sun.EastShare * EastShare) + (sun.NorthShare * NorthShare) + (sun.UpShare * TiltCosine);
}

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
)
{
    internal void Require()
    {
        Within.Require(ExtraterrestrialNormalWPerM2, 0, 1440, "W/m2");
        Within.Require(DirectNormalWPerM2, 0, ExtraterrestrialNormalWPerM2, "W/m2");
        Within.Require(DiffuseWPerM2, 0, 2000, "W/m2");
        Within.Require(GlobalWPerM2, 0, 2000, "W/m2");
    }
}

/// <summary>Where the diffuse light of a moment comes from; what is left is spread evenly.</summary>
/// <param name="AroundSunShare">Share from close around the sun.</param>
/// <param name="HorizonShare">Share along the horizon; below zero where it is darker than the rest.</param>
internal readonly record struct SkyGlow(double AroundSunShare, double HorizonShare);

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
        Angle.ArcCos(plane.Laid().Cosine(SunDirection.Of(sun)));

    /// <summary>Irradiance on a plane under an evenly bright sky.</summary>
    /// <param name="sky">What the sky gives.</param>
    /// <param name="sun">The sun; zenith 0 to 180, azimuth 0 to 360 deg.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="albedoShare">Share that the ground throws back, 0 to 1.</param>
    /// <returns>The parts [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Liu, Jordan 1963, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation 2.15.1</source>
    public static PlaneIrradiance Isotropic(SkyMoment sky, SunAngles sun, PlaneFacing plane, double albedoShare) =>
        On(plane, sky, SunDirection.Of(sun), new(0, 0), LowestCosine, albedoShare);

    /// <summary>Irradiance on a plane under a sky that is brighter around the sun.</summary>
    /// <param name="sky">What the sky gives.</param>
    /// <param name="sun">The sun; zenith 0 to 180, azimuth 0 to 360 deg.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="albedoShare">Share that the ground throws back, 0 to 1.</param>
    /// <returns>The parts [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Hay, Davies 1980, in Duffie, Beckman, Solar Engineering of Thermal Processes, section 2.16</source>
    public static PlaneIrradiance HayDavies(SkyMoment sky, SunAngles sun, PlaneFacing plane, double albedoShare) =>
        On(plane, sky, SunDirection.Of(sun), new(AnisotropyShare(sky), 0), LowestCosine, albedoShare);

    /// <summary>Irradiance on a plane under a sky that is brighter around the sun and along the horizon.</summary>
    /// <param name="sky">What the sky gives.</param>
    /// <param name="sun">The sun; zenith 0 to 180, azimuth 0 to 360 deg.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="albedoShare">Share that the ground throws back, 0 to 1.</param>
    /// <returns>The parts [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>
    /// Reindl, Beckman, Duffie 1990, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation 2.16.7
    /// </source>
    public static PlaneIrradiance Reindl(SkyMoment sky, SunAngles sun, PlaneFacing plane, double albedoShare)
    {
        var hayDavies = HayDavies(sky, sun, plane, albedoShare);
        var direction = SunDirection.Of(sun);
        if (sky.GlobalWPerM2 == 0 || direction.UpShare <= 0)
        {
            return hayDavies;
        }

        var beamShare = sky.DirectNormalWPerM2 * direction.UpShare / sky.GlobalWPerM2;
        var halfTiltSine = Angle.Sin(plane.TiltDeg / 2);
        var evenWPerM2 = sky.DiffuseWPerM2 * (1 - AnisotropyShare(sky)) * plane.Laid().SkyShare;
        var rimWPerM2 = evenWPerM2 * Math.Sqrt(beamShare) * halfTiltSine * halfTiltSine * halfTiltSine;
        return hayDavies with { SkyWPerM2 = hayDavies.SkyWPerM2 + rimWPerM2 };
    }

    /// <summary>Irradiance on a plane under the sky of Perez and others: around the sun, along the horizon, and even.</summary>
    /// <param name="sky">What the sky gives.</param>
    /// <param name="sun">The sun; zenith 0 to 180, azimuth 0 to 360 deg.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="albedoShare">Share that the ground throws back, 0 to 1.</param>
    /// <param name="set">The coefficients.</param>
    /// <returns>The parts [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Perez, Ineichen, Seals, Michalsky, Stewart, Solar Energy 44, 1990; sets of 1988: SAND88-7030</source>
    public static PlaneIrradiance Perez(
        SkyMoment sky,
        SunAngles sun,
        PlaneFacing plane,
        double albedoShare,
        PerezSet set
    ) => On(plane, sky, SunDirection.Of(sun), set.Glow(sky, sun.ZenithDeg), PerezSet.LowestCosine, albedoShare);

    private static double AnisotropyShare(SkyMoment sky) =>
        sky.DirectNormalWPerM2 == 0 ? 0 : sky.DirectNormalWPerM2 / sky.ExtraterrestrialNormalWPerM2;

    private static PlaneIrradiance On(
        PlaneFacing facing,
        SkyMoment sky,
        SunDirection sun,
        SkyGlow glow,
        double lowestCosine,
        double albedoShare
    )
    {
        sky.Require();
        Within.Require(albedoShare, 0, 1, "");
        var plane = facing.Laid();
        var groundWPerM2 = sky.GlobalWPerM2 * albedoShare * (1 - plane.SkyShare);
        if (sun.UpShare <= 0)
        {
            return new(0, sky.DiffuseWPerM2 * plane.SkyShare, groundWPerM2);
        }

        var cosBeam = Math.Max(0, plane.Cosine(sun));
        var brightness =
            ((1 - glow.AroundSunShare) * plane.SkyShare)
            + (glow.AroundSunShare * cosBeam / Math.Max(lowestCosine, sun.UpShare))
            + (glow.HorizonShare * plane.TiltSine);
        return new(sky.DirectNormalWPerM2 * cosBeam, Math.Max(0, sky.DiffuseWPerM2 * brightness), groundWPerM2);
    }
}
