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

    /// <summary>Least light of a plane that the brief gives, over that of the rule of thumb, without a second look; judgement, no source.</summary>
    public const double LeastFacingShare = 0.9;

    /// <summary>Whether a tilt or a direction that the brief gives loses much light; nothing where both were searched.</summary>
    /// <param name="facing">The plane beside the rule of thumb's.</param>
    /// <param name="array">What the brief says of the array.</param>
    /// <returns>The finding, if any.</returns>
    public static IEnumerable<Finding> OfFacing(FacingTable facing, ArrayBrief array)
    {
        if (array is { TiltDeg: null, AzimuthDeg: null })
        {
            yield break;
        }

        var (chosen, thumb) = (facing.Chosen.Facing, facing.ByThumb);
        var share = thumb.LightShare > 0 ? 1 / thumb.LightShare : 1;
        var holds = share >= LeastFacingShare;
        var said = Invariant(
            $"{chosen.TiltDeg:0} deg towards {FacingTable.Towards(chosen.AzimuthDeg)}, as the brief asks, against {thumb.Facing.TiltDeg:0} deg towards {FacingTable.Towards(thumb.Facing.AzimuthDeg)} by the rule of thumb: light for the demand in the worst month"
        );
        yield return new(
            "sky/facing",
            holds ? FindingStatus.Holds : FindingStatus.Look,
            holds ? said : $"{said}; look whether array.tilt and array.azimuth are meant so, or leave them to 'choose'",
            share * 100,
            LeastFacingShare * 100,
            "%",
            "year run on both planes; the limit is a judgement, no source"
        );
    }
}
