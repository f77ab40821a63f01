using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Where a figure of a month comes from, best first.</summary>
internal enum MonthSource
{
    /// <summary>The brief or the weather file gives it.</summary>
    Given,

    /// <summary>Estimated from the hours of bright sunshine.</summary>
    Sunshine,

    /// <summary>Estimated from the days' temperature range.</summary>
    Range,

    /// <summary>The table of defaults.</summary>
    Default,
}

/// <summary>Sun and air of a month as the design takes them.</summary>
/// <param name="SunKWhPerM2Day">Sun on the level [kWh/m²/d].</param>
/// <param name="Sun">Where it comes from.</param>
/// <param name="AirDegC">Mean air temperature [°C].</param>
/// <param name="Air">Where it comes from.</param>
internal sealed record MonthSky(double SunKWhPerM2Day, MonthSource Sun, double AirDegC, MonthSource Air)
{
    private const double BrightestRatio = 0.76;

    /// <summary>The twelve months of a site.</summary>
    /// <param name="site">The site.</param>
    /// <returns>January first.</returns>
    public static IReadOnlyList<MonthSky> Of(SiteBrief site)
    {
        var above = Sky.AboveTheAirKWhPerM2Day(site.LatitudeDeg);
        return [.. site.Months.Select((month, i) => OfMonth(site, month, i, above[i]))];
    }

    /// <summary>What was assumed for lack of measured months.</summary>
    /// <param name="months">The months.</param>
    /// <returns>The assumptions.</returns>
    public static IEnumerable<Assumption> Taken(IReadOnlyList<MonthSky> months)
    {
        (string Id, int Count, string How)[] all =
        [
            (
                "month-sunshine",
                months.Count(month => month.Sun == MonthSource.Sunshine),
                "estimated from sunshine hours"
            ),
            ("month-range", months.Count(month => month.Sun == MonthSource.Range), "estimated from low and high"),
            (
                "month-clearness",
                months.Count(month => month.Sun == MonthSource.Default),
                Invariant($"{Assumption.DefaultOf("month-clearness") * 100:0} % of the sun above the air")
            ),
            ("month-middle", months.Count(month => month.Air == MonthSource.Range), "midway between low and high"),
            (
                "month-air",
                months.Count(month => month.Air == MonthSource.Default),
                Invariant($"{Assumption.DefaultOf("month-air"):0} degC")
            ),
        ];
        return all.Where(each => each.Count > 0)
            .Select(each => Assumption.Of(each.Id, Invariant($"{each.How} in {each.Count} months")));
    }

    private static MonthSky OfMonth(SiteBrief site, MonthBrief month, int index, double aboveKWhPerM2Day)
    {
        var (sun, sunFrom) = month switch
        {
            { SunKWhPerM2Day: { } given } => (given, MonthSource.Given),
            { SunshineH: { } hours } => (
                aboveKWhPerM2Day * Clear(site, EstimatedClearness.AngstromRatio(SunshineShare(site, index, hours))),
                MonthSource.Sunshine
            ),
            { LowDegC: { } low, HighDegC: { } high } => (
                aboveKWhPerM2Day * Clear(site, EstimatedClearness.HargreavesRatio(high - low, RangeCoefficient(site))),
                MonthSource.Range
            ),
            _ => (aboveKWhPerM2Day * Assumption.DefaultOf("month-clearness"), MonthSource.Default),
        };
        var airFrom =
            month.AirDegC is not null ? MonthSource.Given
            : month.MeanDegC is not null ? MonthSource.Range
            : MonthSource.Default;
        return new(sun, sunFrom, month.MeanDegC ?? Assumption.DefaultOf("month-air"), airFrom);
    }

    // An estimate is never above a sky without clouds, nor above what a year can be drawn for anywhere.
    private static double Clear(SiteBrief site, double ratio) =>
        Math.Min(ratio, Math.Min(BrightestRatio, EstimatedClearness.ClearSkyRatio(site.ElevationM)));

    private static double RangeCoefficient(SiteBrief site) =>
        site.IsOnCoast ? EstimatedClearness.CoastCoefficient : EstimatedClearness.InlandCoefficient;

    private static double SunshineShare(SiteBrief site, int month, double hours) =>
        Math.Min(1, hours / DaylightH(site.LatitudeDeg, month));

    /// <summary>Hours of daylight, mean of a month's days.</summary>
    /// <param name="latitudeDeg">Latitude [deg].</param>
    /// <param name="month">Month, 0 to 11.</param>
    /// <returns>Daylight [h].</returns>
    public static double DaylightH(double latitudeDeg, int month) =>
        Enumerable
            .Range(YearCalendar.FirstDays[month] + 1, YearCalendar.DaysInMonth[month])
            .Average(day => EstimatedClearness.DaylightH(latitudeDeg, day));
}
