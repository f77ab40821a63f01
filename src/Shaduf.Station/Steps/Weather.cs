using Shaduf.Sun;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The hours of weather that the station is sized on, and others that it is run through.</summary>
/// <param name="Year">The year that the station is sized on.</param>
/// <param name="Others">The other years.</param>
/// <param name="Months">Where the figures of each month come from.</param>
/// <param name="Days">The generated days against the published spread, by month; empty for a record.</param>
/// <param name="Record">The record; null when the years are generated.</param>
public sealed record Weather(
    WeatherYear Year,
    IReadOnlyList<WeatherYear> Others,
    IReadOnlyList<WeatherMonth> Months,
    IReadOnlyList<DaySpread> Days,
    WeatherRecord? Record
)
{
    /// <summary>Seed of the generated year that the station is sized on; others are run to see the spread.</summary>
    public const int DesignSeed = 1;

    // Generated years beside the design year, to see the spread of a random process.
    private const int OtherYearCount = 20;

    /// <summary>The weather of a site: its record, or years drawn from its months.</summary>
    /// <param name="site">The site.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <returns>The weather.</returns>
    public static Weather Of(SiteBrief site, Survey survey)
    {
        var months = MonthSky.Of(site);
        var shown = WeatherMonth.Of(site, months).ToList();
        if (site.Record is { } record)
        {
            return new(record.Dullest, record.Others, shown, [], record);
        }

        var years = Enumerable
            .Range(DesignSeed, OtherYearCount + 1)
            .AsParallel()
            .AsOrdered()
            .Select(seed => Drawn(site, survey, seed))
            .ToList();
        return new(years[0], years[1..], shown, [.. DaySpread.Of(site, years)], null);
    }

    /// <summary>An hourly year drawn from the survey's monthly means.</summary>
    /// <param name="site">The site.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="seed">Seed of the random days and hours.</param>
    /// <returns>The year.</returns>
    public static WeatherYear Drawn(SiteBrief site, Survey survey, int seed) =>
        MonthlyMeansYear.Generate(site.Place, survey.Climate, seed);

    /// <summary>What the years are, in one sentence.</summary>
    public string Says =>
        Record is { } record
            ? Invariant($"record '{record.File}' ({record.Kind}), {record.YearNames[record.DullestIndex]}")
                + (Others.Count > 0 ? Invariant($", the dullest of its {Others.Count + 1} years") : "")
            : Invariant(
                $"one draw of a random process with the brief's monthly means, seed {DesignSeed}; {Others.Count} other draws beside it"
            );

    /// <summary>What was chosen, and why.</summary>
    public ChoiceNote Note =>
        new(
            "weather year",
            Record is { } record
                ? record.YearNames[record.DullestIndex] + " of " + record.File
                : Invariant($"seed {DesignSeed}"),
            Record is null
                ? "drawn from twelve monthly means, which come back exactly: days by Aguiar, Collares-Pereira and Conde 1988, hours by Aguiar and Collares-Pereira 1992"
                : "the weather file's hours as they are, but for the repairs that are counted; of several years the one with the least light"
        );
}

/// <summary>A month of the weather that the station is sized on.</summary>
/// <param name="SunKWhPerM2Day">Sun on the level [kWh/m²/d].</param>
/// <param name="ClearnessRatio">Its share of the sun above the air.</param>
/// <param name="AirDegC">Mean air temperature [°C].</param>
/// <param name="SunFrom">Where the sun comes from.</param>
/// <param name="AirFrom">Where the air comes from.</param>
public sealed record WeatherMonth(
    double SunKWhPerM2Day,
    double ClearnessRatio,
    double AirDegC,
    string SunFrom,
    string AirFrom
)
{
    internal static IEnumerable<WeatherMonth> Of(SiteBrief site, IReadOnlyList<MonthSky> months)
    {
        var above = Sky.AboveTheAirKWhPerM2Day(site.LatitudeDeg);
        var given = site.Record is null ? "brief" : "weather file";
        return months.Select(
            (month, i) =>
                new WeatherMonth(
                    month.SunKWhPerM2Day,
                    month.SunKWhPerM2Day / above[i],
                    month.AirDegC,
                    From(month.Sun),
                    From(month.Air)
                )
        );

        string From(MonthSource source) =>
            source switch
            {
                MonthSource.Given => given,
                MonthSource.Sunshine => "estimate: sunshine hours",
                MonthSource.Range => "estimate: low and high",
                _ => "default",
            };
    }
}

/// <summary>Days of a month of all generated years against the published spread.</summary>
/// <param name="Month">Month, 0 to 11.</param>
/// <param name="MeanRatio">The month's mean clearness.</param>
/// <param name="DayRatios">Clearness of the days.</param>
/// <param name="GapShare">Kolmogorov and Smirnov's distance; null below the clearness that the published spread is made for.</param>
public sealed record DaySpread(int Month, double MeanRatio, IReadOnlyList<double> DayRatios, double? GapShare)
{
    /// <summary>Distance that one month's record passes by chance in one case of twenty.</summary>
    public static double MostGapShare { get; } = ClearnessDistribution.ChanceGapShare(31);

    internal static IEnumerable<DaySpread> Of(SiteBrief site, IReadOnlyList<WeatherYear> years)
    {
        var above = Sky.AboveTheAirByDayKWhPerM2(site.LatitudeDeg);
        for (var month = 0; month < 12; month++)
        {
            var first = YearCalendar.FirstDays[month];
            var days = Enumerable.Range(first, YearCalendar.DaysInMonth[month]).ToList();
            var ratios = years
                .SelectMany(year => days.Select(day => Math.Min(1, LightKWhPerM2(year, day) / above[day])))
                .ToList();
            var mean = ratios.Average();
            yield return new(
                month,
                mean,
                ratios,
                mean is >= ClearnessDistribution.LowestMeanRatio and <= DailyClearness.HighestMeanRatio
                    ? ClearnessDistribution.GapShare(ratios, mean)
                    : null
            );
        }
    }

    private static double LightKWhPerM2(WeatherYear year, int day)
    {
        var sum = 0.0;
        foreach (var hourWPerM2 in year.GlobalWPerM2.AsSpan(24 * day, 24))
        {
            sum += hourWPerM2;
        }

        return sum / 1000;
    }
}
