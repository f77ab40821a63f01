namespace Shaduf.Station;

/// <summary>
/// The parts of a brief that a remembered step is given, and is remembered by. What it has no use for is taken out, so
/// that a step which reads more than it is remembered by breaks where it is tested, instead of giving yesterday's answer.
/// </summary>
internal static class BriefParts
{
    /// <summary>Place, months, surroundings, and the plane of the modules.</summary>
    public static Brief ForSky(Brief brief) =>
        Bare(brief) with
        {
            Site = brief.Site with
            {
                Soil = null,
                SoilResistivityOhmM = null,
                Wind = null,
                RecordLowDegC = null,
                RecordHighDegC = null,
                GroundwaterM = null,
                FrostM = null,
                EdgeM = null,
                SoilTest = null,
                Terrain = null,
                HillSlopeShare = null,
                Earthquake = null,
                SnowKNPerM2 = null,
                National = null!,
                Field = null!,
                Places = null!,
            },
            Array = new(null, brief.Array.TiltDeg, brief.Array.AzimuthDeg, null, null, null, null!),
        };

    /// <summary>The rack, with wind and ground.</summary>
    public static Brief ForRacks(Brief brief) =>
        Bare(brief) with
        {
            Site = brief.Site with
            {
                SunFrom = null,
                Months = null!,
                Record = null,
                WeatherFile = null,
                Surrounds = null!,
                Field = null!,
                Places = null!,
            },
            Rack = brief.Rack,
        };

    /// <summary>The tank on its stand, with wind, ground and the steel at hand.</summary>
    public static Brief ForStand(Brief brief) => ForRacks(brief) with { Tank = brief.Tank };

    private static Brief Bare(Brief brief) =>
        new(null!, brief.Site, null!, null!, null!, null!, null, null!, null!, null!, null!);
}
