using Shaduf.Sun;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings on the weather itself.</summary>
public static class WeatherFindings
{
    private const double NearKm = 100;
    private const double NearM = 200;

    /// <summary>How far the weather can be trusted.</summary>
    /// <param name="weather">The weather.</param>
    /// <param name="site">The site.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Weather weather, SiteBrief site, Survey survey) =>
        weather.Record is { } record ? OfRecord(record, site, survey) : [Sun(weather), Days(weather)];

    // Lowered to 'look' by the assumptions that it leans on.
    private static Finding Sun(Weather weather)
    {
        var measured = weather.Months.Count(month => month.SunFrom == "brief");
        return new(
            "weather/sun",
            FindingStatus.Holds,
            measured == 12
                ? "the sun of all twelve months is given by the brief"
                : Invariant(
                    $"the sun of {12 - measured} months is an estimate or a default, and all that follows from it: {string.Join(", ", Estimated(weather))}"
                ),
            measured,
            12,
            "months",
            "brief; estimates by FAO Irrigation and Drainage Paper 56"
        );
    }

    private static IEnumerable<string> Estimated(Weather weather) =>
        weather
            .Months.Select((month, i) => (month.SunFrom, Name: YearCalendarNames.Months[i]))
            .Where(month => month.SunFrom != "brief")
            .GroupBy(month => month.SunFrom)
            .Select(group => $"{string.Join(", ", group.Select(month => month.Name))} ({group.Key})");

    private static Finding Days(Weather weather)
    {
        var compared = weather.Days.Where(days => days.GapShare is not null).ToList();
        var dull = weather.Days.Count - compared.Count;
        if (compared.Count == 0)
        {
            return new(
                "weather/days",
                FindingStatus.Look,
                "no month is as clear as the published spread of days asks for: the generated days are not compared",
                null,
                null,
                "",
                "Bendt, Collares-Pereira, Rabl 1981"
            );
        }

        var worst = compared.MaxBy(days => days.GapShare)!;
        var isNear = worst.GapShare <= DaySpread.MostGapShare;
        return new(
            "weather/days",
            isNear ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"largest gap between the generated days and the published spread of days, in {YearCalendarNames.Months[worst.Month]}: {(isNear ? "nearer than one month's record could tell" : "its dull spells may be too long or too short, its sum is exact")}"
            ) + (dull > 0 ? Invariant($"; {dull} months are too dull to compare") : ""),
            worst.GapShare!.Value * 100,
            DaySpread.MostGapShare * 100,
            "%",
            "Kolmogorov and Smirnov's distance from Bendt, Collares-Pereira, Rabl 1981; bound: Stephens 1970 for 31 days at 5 %"
        );
    }

    private static IEnumerable<Finding> OfRecord(WeatherRecord record, SiteBrief site, Survey survey)
    {
        yield return Repairs(record);
        yield return new(
            "weather/clock",
            record.ClockShiftMin <= RecordYear.UsualShiftMin ? FindingStatus.Holds : FindingStatus.Look,
            record.ClockShiftMin <= RecordYear.UsualShiftMin
                ? "the record's clock goes with the sun: largest shift of a month"
                : "the record's light is shifted against the sun: ask for the offset from UTC, and whether the stamp is the hour's beginning, middle or end",
            record.ClockShiftMin,
            RecordYear.UsualShiftMin,
            "min",
            "centre of the day's light against the sun's crossing of the meridian"
        );
        var awayKm = WeatherRecord.DistanceKm(record.Place, site.Place);
        var higherM = Math.Abs(record.Place.ElevationM - site.ElevationM);
        yield return new(
            "weather/place",
            awayKm <= NearKm && higherM <= NearM ? FindingStatus.Holds : FindingStatus.Look,
            Invariant($"the record was taken {awayKm:0} km from the station, {higherM:0} m higher or lower"),
            awayKm,
            NearKm,
            "km",
            "common practice, no source: within 100 km and 200 m of height"
        );
        if (record.ColdestDegC < survey["record-low"] || record.HottestDegC > survey["record-high"])
        {
            yield return new(
                "weather/extremes",
                FindingStatus.Look,
                Invariant(
                    $"the record has hours from {record.ColdestDegC:0.#} to {record.HottestDegC:0.#} degC, beyond the brief's records of {survey["record-low"]:0.#} and {survey["record-high"]:0.#} degC: correct site.recordLow and site.recordHigh"
                ),
                null,
                null,
                "",
                "weather file against the brief"
            );
        }
    }

    private static Finding Repairs(WeatherRecord record)
    {
        var telling = record.Counts.Where(count => count.Matter is not RecordMatter.NightGlow).ToList();
        return new(
            "weather/record",
            telling.Count == 0 && record.LeftOutYearCount == 0 ? FindingStatus.Holds : FindingStatus.Look,
            telling.Count == 0
                ? "the weather file is whole and possible in every hour; share of the sunlit hours that were filled"
                : $"the weather file was repaired by the stated rules: {string.Join("; ", telling.Select(Says))}; share of the sunlit hours that were filled",
            record.FilledShare * 100,
            RecordYear.MostLostShare * 100,
            "%",
            "limits: Long, Dutton 2002; rules of repair: judgement"
        );
    }

    private static string Says(RecordCount count) =>
        Invariant($"{Name(count.Matter)}: {count.HourCount} h, first on line {count.FirstLine}");

    /// <summary>What was found or done, in words.</summary>
    /// <param name="matter">The matter.</param>
    /// <returns>A few words.</returns>
    public static string Name(RecordMatter matter) =>
        matter switch
        {
            RecordMatter.NoRow => "no row",
            RecordMatter.NoLight => "no usable light",
            RecordMatter.GlobalFromParts => "global from its parts",
            RecordMatter.NoParts => "direct and diffuse split from the global light",
            RecordMatter.Drift => "a little below zero, taken as zero",
            RecordMatter.NightGlow => "a little light at night, taken as zero",
            RecordMatter.NightLight => "light at night, taken as zero",
            RecordMatter.GlobalImpossible => "global light beyond what can be",
            RecordMatter.PartImpossible => "direct or diffuse light beyond what can be",
            RecordMatter.NotClosed => "global light is not the sum of its parts, which were split anew",
            RecordMatter.LightBridged => "light filled from the hours beside",
            RecordMatter.LightCopied => "light filled from another day",
            RecordMatter.NoAir => "no usable air temperature",
            RecordMatter.AirImpossible => "air temperature beyond what can be",
            RecordMatter.AirBridged => "air temperature filled from the hours beside",
            RecordMatter.AirCopied => "air temperature filled from another day",
            _ => throw new ArgumentOutOfRangeException(nameof(matter), matter, "no such matter"),
        };
}
