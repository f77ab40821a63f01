using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>From the basic wind speed (10-minute mean at 10 m over open country) to the pressure of a gust at a height.</summary>
public static class WindPressure
{
    /// <summary>Density of air that the code takes where the country does not say otherwise [kg/m3].</summary>
    public const double CodeAirKgPerM3 = 1.25;

    private const double ShapeK = 0.2;
    private const double ShapeN = 0.5;
    private static readonly Terrain Open = Terrain.Of("II");

    /// <summary>Factor on a basic speed of 50 years for another return period.</summary>
    /// <param name="returnYears">Return period [years], 2 to 10,000.</param>
    /// <returns>c_prob; 1 for 50 years.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, 4.2(2) note 4, K = 0.2, n = 0.5</source>
    public static double ReturnFactor(double returnYears)
    {
        Within.Require(returnYears, 2, 10_000, "years");
        return Math.Pow(Rarity(1 / returnYears) / Rarity(1.0 / 50), ShapeN);
    }

    /// <summary>Mean wind at a height, over the basic speed.</summary>
    /// <param name="terrain">The ground.</param>
    /// <param name="heightM">Height above ground [m], 0 to 200.</param>
    /// <returns>c_r.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, equations 4.4 and 4.5</source>
    public static double RoughnessFactor(Terrain terrain, double heightM)
    {
        Within.Require(heightM, 0, 200, "m");
        return TerrainFactor(terrain) * LogHeight(terrain, heightM);
    }

    /// <summary>Turbulence intensity at a height.</summary>
    /// <param name="terrain">The ground.</param>
    /// <param name="heightM">Height above ground [m], 0 to 200.</param>
    /// <param name="slopeFactor">Speeding-up over a hill c_0, 1 to 2; 1 on flat ground.</param>
    /// <returns>I_v as a share of the mean speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, equation 4.7, k_I = 1</source>
    public static double TurbulenceShare(Terrain terrain, double heightM, double slopeFactor = 1)
    {
        Within.Require(heightM, 0, 200, "m");
        Within.Require(slopeFactor, 1, 2, "");
        return 1 / (slopeFactor * LogHeight(terrain, heightM));
    }

    /// <summary>Slope below which a hill does not speed the wind up: rise over run.</summary>
    /// <source>EN 1991-1-4:2005, annex A.3 (from memory)</source>
    public const double GentleSlopeShare = 0.05;

    /// <summary>Most that the wind is sped up anywhere on a hill: what the annex gives at its crest near the ground, s = 1.</summary>
    /// <param name="slopeShare">Slope up which the wind comes: rise over run, 0 to 10.</param>
    /// <returns>c_0: 1 below a slope of 0.05, 1 + 2 Φ up to 0.3, 1.6 above.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, annex A.3, equations A.1 to A.3 with the largest s (from memory)</source>
    public static double LargestHillFactor(double slopeShare)
    {
        Within.Require(slopeShare, 0, 10, "");
        return slopeShare < GentleSlopeShare ? 1 : Math.Min(1.6, 1 + (2 * slopeShare));
    }

    /// <summary>Peak pressure over the pressure of the basic speed.</summary>
    /// <param name="terrain">The ground.</param>
    /// <param name="heightM">Height above ground [m], 0 to 200.</param>
    /// <param name="slopeFactor">Speeding-up over a hill c_0, 1 to 2; 1 on flat ground.</param>
    /// <returns>c_e.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, equations 4.8 and 4.9</source>
    public static double ExposureFactor(Terrain terrain, double heightM, double slopeFactor = 1)
    {
        var gust = 1 + (7 * TurbulenceShare(terrain, heightM, slopeFactor));
        return gust * Math.Pow(RoughnessFactor(terrain, heightM) * slopeFactor, 2);
    }

    /// <summary>Pressure of a gust at a height.</summary>
    /// <param name="basicMPerS">Basic speed v_b: 10-minute mean at 10 m over open country [m/s], 0 to 90.</param>
    /// <param name="terrain">The ground.</param>
    /// <param name="heightM">Height above ground [m], 0 to 200.</param>
    /// <param name="slopeFactor">Speeding-up over a hill c_0, 1 to 2; 1 on flat ground.</param>
    /// <param name="airKgPerM3">Density of the air [kg/m3], 0.7 to 1.5.</param>
    /// <returns>Peak velocity pressure q_p [N/m2].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, equations 4.8 and 4.10</source>
    public static double PeakNPerM2(
        double basicMPerS,
        Terrain terrain,
        double heightM,
        double slopeFactor = 1,
        double airKgPerM3 = CodeAirKgPerM3
    )
    {
        Within.Require(basicMPerS, 0, 90, "m/s");
        Within.Require(airKgPerM3, 0.7, 1.5, "kg/m3");
        return ExposureFactor(terrain, heightM, slopeFactor) * airKgPerM3 * basicMPerS * basicMPerS / 2;
    }

    /// <summary>Basic speed at which the pressure of a gust reaches a figure: the way back from a resistance.</summary>
    /// <param name="peakNPerM2">Peak velocity pressure [N/m2], 0 to 50,000.</param>
    /// <param name="terrain">The ground.</param>
    /// <param name="heightM">Height above ground [m], 0 to 200.</param>
    /// <param name="slopeFactor">Speeding-up over a hill c_0, 1 to 2; 1 on flat ground.</param>
    /// <param name="airKgPerM3">Density of the air [kg/m3], 0.7 to 1.5.</param>
    /// <returns>Basic speed v_b [m/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>EN 1991-1-4:2005, equations 4.8 and 4.10, solved for v_b</source>
    public static double BasicMPerS(
        double peakNPerM2,
        Terrain terrain,
        double heightM,
        double slopeFactor = 1,
        double airKgPerM3 = CodeAirKgPerM3
    )
    {
        Within.Require(peakNPerM2, 0, 50_000, "N/m2");
        Within.Require(airKgPerM3, 0.7, 1.5, "kg/m3");
        return Math.Sqrt(2 * peakNPerM2 / (airKgPerM3 * ExposureFactor(terrain, heightM, slopeFactor)));
    }

    /// <summary>Density of the standard atmosphere.</summary>
    /// <param name="elevationM">Elevation above sea [m], -430 to 11,000.</param>
    /// <returns>Density [kg/m3].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>ISO 2533:1975, standard atmosphere (from memory)</source>
    public static double AirKgPerM3(double elevationM)
    {
        Within.Require(elevationM, -430, 11_000, "m");
        return 1.225 * Math.Pow(1 - (2.25577e-5 * elevationM), 4.25588);
    }

    private static double Rarity(double yearlyShare) => 1 - (ShapeK * Math.Log(-Math.Log(1 - yearlyShare)));

    private static double TerrainFactor(Terrain terrain) => 0.19 * Math.Pow(terrain.RoughnessM / Open.RoughnessM, 0.07);

    private static double LogHeight(Terrain terrain, double heightM) =>
        Math.Log(Math.Max(heightM, terrain.LeastHeightM) / terrain.RoughnessM);
}
