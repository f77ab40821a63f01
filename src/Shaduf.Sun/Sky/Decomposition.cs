using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Global irradiance split in two: direct (normal) x cos(zenith) + diffuse = global.</summary>
/// <param name="DirectNormalWPerM2">Direct irradiance normal to the sun [W/m2].</param>
/// <param name="DiffuseWPerM2">Diffuse irradiance on the horizontal [W/m2].</param>
public readonly record struct SplitIrradiance(double DirectNormalWPerM2, double DiffuseWPerM2);

/// <summary>
/// Splits global irradiance on the horizontal into direct and diffuse. The rules near the horizon are part of the
/// method: clearness takes cos(zenith) as at least 0.065 and counts as at most 1; beyond a zenith of 87 deg all is
/// diffuse.
/// </summary>
public static class Decomposition
{
    private const double LowestCosine = 0.065;
    private const double HighestZenithWithBeamDeg = 87;

    /// <summary>Share of diffuse in an hour's global irradiation, by Erbs, Klein and Duffie.</summary>
    /// <param name="clearnessRatio">Hourly clearness: global over extraterrestrial on the horizontal, 0 to 1.</param>
    /// <returns>Diffuse share, 0.165 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The clearness is outside its range.</exception>
    /// <source>Erbs, Klein, Duffie, Solar Energy 28, 1982</source>
    public static double ErbsHourlyDiffuseShare(double clearnessRatio)
    {
        Within.Require(clearnessRatio, 0, 1, "");
        var k = clearnessRatio;
        return k switch
        {
            <= 0.22 => 1 - (0.09 * k),
            <= 0.80 => 0.9511 + (k * (-0.1604 + (k * (4.388 + (k * (-16.638 + (k * 12.336))))))),
            _ => 0.165,
        };
    }

    /// <summary>Share of diffuse in an hour's global irradiation, by Orgill and Hollands.</summary>
    /// <param name="clearnessRatio">Hourly clearness: global over extraterrestrial on the horizontal, 0 to 1.</param>
    /// <returns>Diffuse share, 0.177 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The clearness is outside its range.</exception>
    /// <source>Orgill, Hollands, Solar Energy 19, 1977</source>
    public static double OrgillHollandsHourlyDiffuseShare(double clearnessRatio)
    {
        Within.Require(clearnessRatio, 0, 1, "");
        return clearnessRatio switch
        {
            < 0.35 => 1 - (0.249 * clearnessRatio),
            <= 0.75 => 1.557 - (1.84 * clearnessRatio),
            _ => 0.177,
        };
    }

    /// <summary>Direct and diffuse by the share of Erbs, Klein and Duffie.</summary>
    /// <param name="globalWPerM2">Global irradiance on the horizontal [W/m2], 0 to 2000.</param>
    /// <param name="zenithDeg">True zenith angle of the sun [deg], 0 to 180.</param>
    /// <param name="extraterrestrialNormalWPerM2">Extraterrestrial irradiance normal to the sun [W/m2], above 0 to 1440.</param>
    /// <returns>Direct and diffuse [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Erbs, Klein, Duffie, Solar Energy 28, 1982</source>
    public static SplitIrradiance ErbsSplit(
        double globalWPerM2,
        double zenithDeg,
        double extraterrestrialNormalWPerM2
    ) => Split(globalWPerM2, zenithDeg, extraterrestrialNormalWPerM2, ErbsHourlyDiffuseShare);

    /// <summary>Direct and diffuse by the share of Orgill and Hollands.</summary>
    /// <param name="globalWPerM2">Global irradiance on the horizontal [W/m2], 0 to 2000.</param>
    /// <param name="zenithDeg">True zenith angle of the sun [deg], 0 to 180.</param>
    /// <param name="extraterrestrialNormalWPerM2">Extraterrestrial irradiance normal to the sun [W/m2], above 0 to 1440.</param>
    /// <returns>Direct and diffuse [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Orgill, Hollands, Solar Energy 19, 1977</source>
    public static SplitIrradiance OrgillHollandsSplit(
        double globalWPerM2,
        double zenithDeg,
        double extraterrestrialNormalWPerM2
    ) => Split(globalWPerM2, zenithDeg, extraterrestrialNormalWPerM2, OrgillHollandsHourlyDiffuseShare);

    /// <summary>Clearness: global over extraterrestrial on the horizontal, with the rules near the horizon.</summary>
    /// <param name="globalWPerM2">Global irradiance on the horizontal [W/m2], 0 to 2000.</param>
    /// <param name="zenithDeg">True zenith angle of the sun [deg], 0 to 180.</param>
    /// <param name="extraterrestrialNormalWPerM2">Extraterrestrial irradiance normal to the sun [W/m2], above 0 to 1440.</param>
    /// <returns>Clearness, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Duffie, Beckman, Solar Engineering of Thermal Processes, equation 2.9.3; floor: common practice, no source</source>
    public static double ClearnessRatio(double globalWPerM2, double zenithDeg, double extraterrestrialNormalWPerM2)
    {
        Within.Require(globalWPerM2, 0, 2000, "W/m2");
        Within.Require(zenithDeg, 0, 180, "deg");
        Within.Require(extraterrestrialNormalWPerM2, double.Epsilon, 1440, "W/m2");
        var cosine = Math.Max(LowestCosine, Angle.Cos(zenithDeg));
        return Math.Min(1, globalWPerM2 / (extraterrestrialNormalWPerM2 * cosine));
    }

    private static SplitIrradiance Split(
        double globalWPerM2,
        double zenithDeg,
        double extraterrestrialNormalWPerM2,
        Func<double, double> diffuseShare
    )
    {
        var clearnessRatio = ClearnessRatio(globalWPerM2, zenithDeg, extraterrestrialNormalWPerM2);
        if (zenithDeg > HighestZenithWithBeamDeg)
        {
            return new(0, globalWPerM2);
        }

        var diffuseWPerM2 = globalWPerM2 * diffuseShare(clearnessRatio);
        return new((globalWPerM2 - diffuseWPerM2) / Angle.Cos(zenithDeg), diffuseWPerM2);
    }
}
