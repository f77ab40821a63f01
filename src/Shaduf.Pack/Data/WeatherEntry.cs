using Shaduf.Station;
using static Shaduf.Pack.DesignEntries;

namespace Shaduf.Pack;

/// <summary>A month of weather.</summary>
public sealed record WeatherMonthEntry(
    string Month,
    double LevelKWhPerM2Day,
    double ClearnessRatio,
    double AirDegC,
    string LightFrom,
    string AirFrom,
    double? DayGapShare
);

/// <summary>Something found in a weather file, in all its years together.</summary>
public sealed record WeatherCountEntry(string Matter, int HourCount, int FirstLine);

/// <summary>A weather file.</summary>
public sealed record WeatherFileEntry(
    string File,
    string Kind,
    string Sha256,
    double LatitudeDeg,
    double LongitudeDeg,
    double ElevationM,
    IReadOnlyList<string> Years,
    double FilledShare,
    double ClockShiftMin,
    int LeapHourCount,
    IReadOnlyList<WeatherCountEntry> Counts
);

/// <summary>The weather that the station is sized on.</summary>
/// <param name="Says">What the years are.</param>
/// <param name="Seed">Seed of the draw; null for a file.</param>
/// <param name="File">The file; null for a draw.</param>
/// <param name="Months">The months, January first.</param>
public sealed record WeatherEntry(
    string Says,
    int? Seed,
    WeatherFileEntry? File,
    IReadOnlyList<WeatherMonthEntry> Months
)
{
    internal static WeatherEntry Of(Weather weather) =>
        new(
            weather.Says,
            weather.Record is null ? Weather.DesignSeed : null,
            weather.Record is { } record ? FileOf(record) : null,
            [
                .. weather.Months.Select(
                    (month, i) =>
                        new WeatherMonthEntry(
                            YearCalendarNames.Months[i],
                            R(month.SunKWhPerM2Day),
                            R(month.ClearnessRatio),
                            R(month.AirDegC),
                            month.SunFrom,
                            month.AirFrom,
                            weather.Days.Count > 0 && weather.Days[i].GapShare is { } gap ? R(gap) : null
                        )
                ),
            ]
        );

    private static WeatherFileEntry FileOf(WeatherRecord record) =>
        new(
            record.File,
            record.Kind,
            record.Hash,
            record.Place.LatitudeDeg,
            record.Place.LongitudeDeg,
            record.Place.ElevationM,
            record.YearNames,
            R(record.FilledShare),
            R(record.ClockShiftMin),
            record.LeapHourCount,
            [
                .. record.Counts.Select(count => new WeatherCountEntry(
                    WeatherFindings.Name(count.Matter),
                    count.HourCount,
                    count.FirstLine
                )),
            ]
        );
}
