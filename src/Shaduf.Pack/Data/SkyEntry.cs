using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>One month of light, mean day.</summary>
public sealed record SkyMonthEntry(
    string Month,
    double LevelKWhPerM2Day,
    double OpenKWhPerM2Day,
    double HorizonLostShare,
    double NearLostShare,
    double PlaneKWhPerM2Day,
    double ReflectedShare,
    double EffectiveKWhPerM2Day
);

/// <summary>A point of the skyline.</summary>
public sealed record HorizonEntry(double AzimuthDeg, double ElevationDeg);

/// <summary>The light on the modules.</summary>
/// <param name="Months">By month.</param>
/// <param name="Horizon">The skyline every 15 deg.</param>
/// <param name="Near">What stands near.</param>
public sealed record SkyEntry(
    IReadOnlyList<SkyMonthEntry> Months,
    IReadOnlyList<HorizonEntry> Horizon,
    IReadOnlyList<string> Near
)
{
    /// <summary>The entry of a design.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The entry.</returns>
    internal static SkyEntry Of(Design design) =>
        new(
            [.. SkyMonth.Of(design.Sky).Select(MonthOf)],
            [
                .. Enumerable
                    .Range(0, 24)
                    .Select(i => new HorizonEntry(i * 15, Math.Round(design.Sky.Horizon.ElevationDeg(i * 15), 2))),
            ],
            [.. design.Layout.Things.Select(thing => thing.Name)]
        );

    private static SkyMonthEntry MonthOf(SkyMonth month, int index) =>
        new(
            YearCalendarNames.Months[index],
            Math.Round(month.LevelKWhPerM2Day, 4),
            Math.Round(month.OpenKWhPerM2Day, 4),
            Math.Round(month.HorizonLostShare, 5),
            Math.Round(month.NearLostShare, 5),
            Math.Round(month.PlaneKWhPerM2Day, 4),
            Math.Round(month.ReflectedShare, 5),
            Math.Round(month.EffectiveKWhPerM2Day, 4)
        );
}
