using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of the light on the modules.</summary>
internal static class SkyFindings
{
    /// <summary>Share of a month's light that shade may take without a second look; common practice, no source.</summary>
    public const double MostShadedShare = 0.05;

    public static IEnumerable<Finding> Of(Sky sky)
    {
        var months = SkyMonth.Of(sky);
        var worst = Enumerable.Range(0, 12).MaxBy(month => months[month].ShadedShare);
        var (name, month) = (YearCalendarNames.Months[worst], months[worst]);
        var holds = month.ShadedShare <= MostShadedShare;
        var taken = Invariant(
            $"in {name} the skyline takes {month.HorizonLostShare * 100:0.0} % of the light on the modules and what stands near {month.NearLostShare * 100:0.0} %; the year run has it taken off"
        );
        yield return new(
            "sky/shade",
            holds ? FindingStatus.Holds : FindingStatus.Look,
            holds ? taken : $"{taken}: look for a place with a freer sky, or move what stands in the light",
            month.ShadedShare * 100,
            MostShadedShare * 100,
            "%",
            "straight rays at five instants an hour; the limit is common practice, no source"
        );
    }
}
