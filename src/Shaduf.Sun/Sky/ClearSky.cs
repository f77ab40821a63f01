using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>What comes down under a sky without clouds.</summary>
public static class ClearSky
{
    /// <summary>Global irradiance from the sun's height alone.</summary>
    /// <param name="zenithDeg">Apparent zenith angle [deg], 0 to 180.</param>
    /// <returns>Global irradiance on the horizontal [W/m2]; 0 with the sun down.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    /// <source>Haurwitz, Journal of Meteorology 2, 1945</source>
    public static double HaurwitzWPerM2(double zenithDeg)
    {
        Within.Require(zenithDeg, 0, 180, "deg");
        var cosine = Angle.Cos(zenithDeg);
        return zenithDeg < 90 && cosine > 0 ? 1098 * cosine * Math.Exp(-0.059 / cosine) : 0;
    }

    /// <summary>From the haze of the air and the height of the site.</summary>
    /// <param name="zenithDeg">Apparent zenith angle [deg], 0 to 180.</param>
    /// <param name="pressurePa">Air pressure [Pa], 30000 to 110000.</param>
    /// <param name="elevationM">Height above sea level [m], -450 to 6000.</param>
    /// <param name="linkeFactor">Linke turbidity, 1 to 15: 2 very clean, 3 clean, 4 to 5 humid or dusty, 6 and more smoke or dust storms.</param>
    /// <param name="extraterrestrialNormalWPerM2">Extraterrestrial irradiance normal to the sun [W/m2], 1280 to 1440.</param>
    /// <returns>Global, direct and diffuse; 0 with the sun down.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Ineichen, Perez, Solar Energy 73, 2002</source>
    public static SkyMoment IneichenPerez(
        double zenithDeg,
        double pressurePa,
        double elevationM,
        double linkeFactor,
        double extraterrestrialNormalWPerM2
    )
    {
        Within.Require(zenithDeg, 0, 180, "deg");
        Within.Require(pressurePa, 30_000, 110_000, "Pa");
        Within.Require(elevationM, -450, 6000, "m");
        Within.Require(linkeFactor, 1, 15, "");
        Within.Require(extraterrestrialNormalWPerM2, 1280, 1440, "W/m2");
        if (zenithDeg >= 90)
        {
            return new(0, 0, 0, extraterrestrialNormalWPerM2);
        }

        var air = AirMass.KastenYoungRatio(zenithDeg) * pressurePa / AirMass.SeaLevelPa;
        var (high8, high1) = (Math.Exp(-elevationM / 8000), Math.Exp(-elevationM / 1250));
        var (g1, g2) = ((5.09e-5 * elevationM) + 0.868, (3.92e-5 * elevationM) + 0.0387);
        var cosine = Angle.Cos(zenithDeg);
        var perCosine = g1 * extraterrestrialNormalWPerM2 * Math.Exp(-g2 * air * (high8 + (high1 * (linkeFactor - 1))));
        var beam = extraterrestrialNormalWPerM2 * (0.664 + (0.163 / high8)) * Math.Exp(-0.09 * air * (linkeFactor - 1));
        var most = perCosine * (1 - ((0.1 - (0.2 * Math.Exp(-linkeFactor))) / (0.1 + (0.882 / high8))));
        var direct = Math.Max(0, Math.Min(beam, most));
        return new(perCosine * cosine, direct, (perCosine - direct) * cosine, extraterrestrialNormalWPerM2);
    }

    /// <summary>From aerosol and water in the air.</summary>
    /// <param name="zenithDeg">Apparent zenith angle [deg], 0 to 180.</param>
    /// <param name="pressurePa">Air pressure [Pa], 30000 to 110000.</param>
    /// <param name="aerosolNumber">Optical depth of the aerosol at 700 nm, 0 to 0.45.</param>
    /// <param name="waterMm">Water that the column of air holds [mm], 2 to 100.</param>
    /// <param name="extraterrestrialNormalWPerM2">Extraterrestrial irradiance normal to the sun [W/m2], 1280 to 1440.</param>
    /// <returns>Global, direct and diffuse; 0 with the sun down.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Ineichen, Solar Energy 82, 2008 (simplified Solis)</source>
    public static SkyMoment SimplifiedSolis(
        double zenithDeg,
        double pressurePa,
        double aerosolNumber,
        double waterMm,
        double extraterrestrialNormalWPerM2
    )
    {
        Within.Require(zenithDeg, 0, 180, "deg");
        Within.Require(pressurePa, 30_000, 110_000, "Pa");
        Within.Require(aerosolNumber, 0, 0.45, "");
        Within.Require(waterMm, 2, 100, "mm");
        Within.Require(extraterrestrialNormalWPerM2, 1280, 1440, "W/m2");
        var sine = Angle.Cos(zenithDeg);
        if (zenithDeg >= 90 || sine <= 0)
        {
            return new(0, 0, 0, extraterrestrialNormalWPerM2);
        }

        var (a, w, p) = (aerosolNumber, waterMm / 10, Math.Log(pressurePa / AirMass.SeaLevelPa));
        var lw = Math.Log(w);
        var top =
            extraterrestrialNormalWPerM2
            * (
                (0.12 * Math.Pow(w, 0.56) * a * a)
                + (0.97 * Math.Pow(w, 0.032) * a)
                + (1.08 * Math.Pow(w, 0.0051))
                + (0.071 * p)
            );
        var beamDepth =
            ((1.82 + (0.056 * lw) + (0.0071 * lw * lw)) * a)
            + 0.33
            + (0.045 * lw)
            + (0.0096 * lw * lw)
            + (((0.0089 * w) + 0.13) * p);
        var beamPower = (((0.00925 * a * a) + (0.0148 * a) - 0.0172) * lw) - (0.7565 * a * a) + (0.5057 * a) + 0.4557;
        var globalDepth =
            ((1.24 + (0.047 * lw) + (0.0061 * lw * lw)) * a)
            + 0.27
            + (0.043 * lw)
            + (0.0090 * lw * lw)
            + (((0.0079 * w) + 0.1) * p);
        var globalPower = (-0.0147 * lw) - (0.3079 * a * a) + (0.2846 * a) + 0.3798;
        var diffusePower = (-0.337 * a * a) + (0.63 * a) + 0.116 + (p / (18 + (152 * a)));
        double Passed(double depth, double power) => top * Math.Exp(-depth / Math.Pow(sine, power));
        return new(
            Passed(globalDepth, globalPower) * sine,
            Passed(beamDepth, beamPower),
            Passed(DiffuseDepth(a, w, p), diffusePower),
            extraterrestrialNormalWPerM2
        );
    }

    private static double DiffuseDepth(double a, double w, double p)
    {
        var (t4, t3, t2, t1, t0, tp) =
            a < 0.05
                ? (
                    (86 * w) - 13800,
                    (-3.11 * w) + 79.4,
                    (-0.23 * w) + 74.8,
                    (0.092 * w) - 8.86,
                    (0.0042 * w) + 3.12,
                    -0.83 * Math.Pow(1 + a, -17.2)
                )
                : (
                    (-0.21 * w) + 11.6,
                    (0.27 * w) - 20.7,
                    (-0.134 * w) + 15.5,
                    (0.0554 * w) - 5.71,
                    (0.0057 * w) + 2.94,
                    -0.71 * Math.Pow(1 + a, -15.0)
                );
        return (((((((t4 * a) + t3) * a) + t2) * a) + t1) * a) + t0 + (tp * p);
    }
}
