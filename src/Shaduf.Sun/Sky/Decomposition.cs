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

    /// <summary>Share of diffuse in an hour's global irradiation: Erbs, Klein and Duffie made continuous.</summary>
    /// <param name="clearnessRatio">Hourly clearness: global over extraterrestrial on the horizontal, 0 to 1.</param>
    /// <returns>Diffuse share, 0.165 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The clearness is outside its range.</exception>
    /// <source>Driesse, Jensen, Perez, Solar Energy 267, 2024</source>
    public static double ErbsDriesseHourlyDiffuseShare(double clearnessRatio)
    {
        Within.Require(clearnessRatio, 0, 1, "");
        var k = clearnessRatio;
        return k switch
        {
            <= 0.216 => 1 - (0.09 * k),
            <= 0.792 => 0.94629663357100100
                + (
                    k
                    * (
                        -0.11390583806313881
                        + (k * (4.24692671521831700 + (k * (-16.47050842469730700 + (k * 12.26911439571261000)))))
                    )
                ),
            _ => 0.165,
        };
    }

    /// <summary>Share of diffuse in an hour's global irradiation, by Boland, Scott and Luther.</summary>
    /// <param name="clearnessRatio">Hourly clearness: global over extraterrestrial on the horizontal, 0 to 1.</param>
    /// <returns>Diffuse share, 0.035 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The clearness is outside its range.</exception>
    /// <source>Boland, Scott, Luther, Environmetrics 12, 2001</source>
    public static double BolandHourlyDiffuseShare(double clearnessRatio) => Boland(clearnessRatio, 7.997, 0.586);

    /// <summary>Share of diffuse in a quarter hour's global irradiation, by Boland, Scott and Luther.</summary>
    /// <param name="clearnessRatio">Clearness of the quarter hour, 0 to 1.</param>
    /// <returns>Diffuse share, 0.034 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The clearness is outside its range.</exception>
    /// <source>Boland, Scott, Luther, Environmetrics 12, 2001</source>
    public static double BolandQuarterHourlyDiffuseShare(double clearnessRatio) => Boland(clearnessRatio, 8.645, 0.613);

    /// <summary>Direct irradiance by the DISC model; it was fitted with a solar constant of 1370 W/m2.</summary>
    /// <param name="globalWPerM2">Global irradiance on the horizontal [W/m2], 0 to 2000.</param>
    /// <param name="zenithDeg">True zenith angle of the sun [deg], 0 to 180.</param>
    /// <param name="extraterrestrialNormalWPerM2">Extraterrestrial irradiance normal to the sun [W/m2], above 0 to 1440.</param>
    /// <param name="pressurePa">Air pressure [Pa], 30000 to 110000.</param>
    /// <returns>Direct irradiance normal to the sun [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Maxwell, SERI/TR-215-3087, 1987</source>
    public static double DiscDirectNormalWPerM2(
        double globalWPerM2,
        double zenithDeg,
        double extraterrestrialNormalWPerM2,
        double pressurePa
    )
    {
        var k = ClearnessRatio(globalWPerM2, zenithDeg, extraterrestrialNormalWPerM2);
        Within.Require(pressurePa, 30_000, 110_000, "Pa");
        if (zenithDeg > HighestZenithWithBeamDeg)
        {
            return 0;
        }

        const double mostAir = 12;
        var air = Math.Min(mostAir, AirMass.KastenRatio(zenithDeg) * pressurePa / AirMass.SeaLevelPa);
        var (a, b, c) =
            k <= 0.6
                ? (
                    0.512 + (k * (-1.56 + (k * (2.286 - (2.222 * k))))),
                    0.37 + (0.962 * k),
                    -0.28 + (k * (0.932 - (2.048 * k)))
                )
                : (
                    -5.743 + (k * (21.77 + (k * (-27.49 + (11.56 * k))))),
                    41.4 + (k * (-118.5 + (k * (66.05 + (31.9 * k))))),
                    -47.01 + (k * (184.2 + (k * (-222.0 + (73.81 * k)))))
                );
        var clearest = 0.866 + (air * (-0.122 + (air * (0.0121 + (air * (-0.000653 + (1.4e-5 * air)))))));
        var taken = a + (b * Math.Exp(c * air));
        return Math.Max(0, extraterrestrialNormalWPerM2 * (clearest - taken));
    }

    /// <summary>Share of diffuse in a day's global irradiation, by Erbs, Klein and Duffie.</summary>
    /// <param name="clearnessRatio">The day's clearness, 0 to 1.</param>
    /// <param name="sunsetHourAngleDeg">Hour angle at sunset [deg], 0 to 180.</param>
    /// <returns>Diffuse share, 0.14 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>
    /// Erbs, Klein, Duffie, Solar Energy 28, 1982, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation
    /// 2.11.1 (from memory)
    /// </source>
    public static double ErbsDailyDiffuseShare(double clearnessRatio, double sunsetHourAngleDeg)
    {
        Within.Require(clearnessRatio, 0, 1, "");
        Within.Require(sunsetHourAngleDeg, 0, 180, "deg");
        var k = clearnessRatio;
        return sunsetHourAngleDeg <= 81.4
            ? k < 0.715
                ? 1 + (k * (-0.2727 + (k * (2.4495 + (k * (-11.9514 + (k * 9.3879)))))))
                : 0.143
            : k < 0.722
                ? 1 + (k * (0.2832 + (k * (-2.5557 + (k * 0.8448)))))
                : 0.175;
    }

    /// <summary>Share of diffuse in a month's global irradiation, by Erbs, Klein and Duffie.</summary>
    /// <param name="clearnessRatio">The month's mean clearness, 0.3 to 0.8.</param>
    /// <param name="sunsetHourAngleDeg">Hour angle at sunset on the month's average day [deg], 0 to 180.</param>
    /// <returns>Diffuse share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>
    /// Erbs, Klein, Duffie, Solar Energy 28, 1982, in Duffie, Beckman, Solar Engineering of Thermal Processes, equation
    /// 2.12.1 (from memory)
    /// </source>
    public static double ErbsMonthlyDiffuseShare(double clearnessRatio, double sunsetHourAngleDeg)
    {
        Within.Require(clearnessRatio, 0.3, 0.8, "");
        Within.Require(sunsetHourAngleDeg, 0, 180, "deg");
        var k = clearnessRatio;
        return sunsetHourAngleDeg <= 81.4
            ? 1.391 + (k * (-3.560 + (k * (4.189 - (2.137 * k)))))
            : 1.311 + (k * (-3.022 + (k * (3.427 - (1.821 * k)))));
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

    /// <summary>Direct and diffuse by the share that a rule gives for the clearness.</summary>
    /// <param name="globalWPerM2">Global irradiance on the horizontal [W/m2], 0 to 2000.</param>
    /// <param name="zenithDeg">True zenith angle of the sun [deg], 0 to 180.</param>
    /// <param name="extraterrestrialNormalWPerM2">Extraterrestrial irradiance normal to the sun [W/m2], above 0 to 1440.</param>
    /// <param name="diffuseShare">The rule: one of the hourly ones here.</param>
    /// <returns>Direct and diffuse [W/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Definition of clearness; near the horizon: common practice, no source</source>
    public static SplitIrradiance Split(
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

    private static double Boland(double clearnessRatio, double steepness, double middle)
    {
        Within.Require(clearnessRatio, 0, 1, "");
        return 1 / (1 + Math.Exp(steepness * (clearnessRatio - middle)));
    }
}
