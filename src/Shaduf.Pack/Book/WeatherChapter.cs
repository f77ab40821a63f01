using Shaduf.Station;
using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The chapter on the weather that the station is sized on.</summary>
internal static class WeatherChapter
{
    private const int MostYearRows = 12;

    /// <summary>The blocks of the chapter.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The blocks in order.</returns>
    public static IEnumerable<Block> Blocks(Design design)
    {
        var weather = design.Sky.Weather;
        yield return new Heading(1, "Weather: what the station is sized on");
        yield return new Paragraph(Invariant($"The hours of the year run: {weather.Says}."));
        yield return Months(weather, design.Brief.Site.SunFrom);
        yield return new Figure(
            WeatherCharts.Days(design, PicturePaper.Half),
            "Light of every day of the year that the station is sized on. Dull spells empty the tank."
        );
        foreach (var block in weather.Record is { } record ? OfRecord(record) : OfDraws(weather))
        {
            yield return block;
        }
    }

    private static Table Months(Weather weather, string? sunFrom) =>
        new(
            [
                new("month"),
                new("light on the level, kWh/m2/d", 1, HorizontalAnchor.Right),
                new("of the light above the air, %", 1, HorizontalAnchor.Right),
                new("air, degC", 0.7, HorizontalAnchor.Right),
                new("light from", 1.4),
                new("air from", 1.4),
            ],
            [
                .. weather.Months.Select(
                    (month, i) =>
                        TableRow.Of(
                            YearCalendarNames.Months[i],
                            Invariant($"{month.SunKWhPerM2Day:0.00}"),
                            Invariant($"{month.ClearnessRatio * 100:0}"),
                            Invariant($"{month.AirDegC:0.0}"),
                            month.SunFrom,
                            month.AirFrom
                        )
                ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = string.IsNullOrEmpty(sunFrom)
                ? "The months"
                : $"The months; the brief's figures come from: {sunFrom}",
        };

    private static IEnumerable<Block> OfDraws(Weather weather)
    {
        if (weather.Days.Where(days => days.GapShare is not null).MaxBy(days => days.GapShare) is { } worst)
        {
            yield return new Figure(
                WeatherCharts.Spread(worst, PicturePaper.Half),
                Invariant(
                    $"Days drawn for {YearCalendarNames.Months[worst.Month]} in all {weather.Others.Count + 1} years against the published spread of days (Bendt, Collares-Pereira, Rabl 1981): the month with the largest gap, {worst.GapShare * 100:0} %; up to {DaySpread.MostGapShare * 100:0} % one month's record could not tell them apart."
                )
            );
        }
    }

    private static IEnumerable<Block> OfRecord(WeatherRecord record)
    {
        yield return new Paragraph(
            Invariant(
                $"The record was taken at latitude {record.Place.LatitudeDeg:0.00}, longitude {record.Place.LongitudeDeg:0.00}, {record.Place.ElevationM:0} m above the sea. SHA-256 of the file begins with {record.Hash[..16]}."
            )
                + Invariant(
                    $"{Left(record.LeapHourCount, "hours of 29 February")}{Left(record.LeftOutYearCount, "years cut short at the file's ends")}"
                )
                + (
                    record.MovedH == 0
                        ? ""
                        : Invariant($" Its clock was moved by {record.MovedH:+0;-0} h to the station's.")
                )
                + (record.NotUsed.Count == 0 ? "" : $" Not used: {string.Join(", ", record.NotUsed)}.")
        );
        yield return new Table(
            [
                new("what was found and done"),
                new("hours", 0.5, HorizontalAnchor.Right),
                new("first on line", 0.6, HorizontalAnchor.Right),
            ],
            record.Counts.Count == 0
                ? [TableRow.Of("every hour is there and possible", "0", "-")]
                :
                [
                    .. record.Counts.Select(count =>
                        TableRow.Of(
                            WeatherFindings.Name(count.Matter),
                            Invariant($"{count.HourCount}"),
                            Invariant($"{count.FirstLine}")
                        )
                    ),
                ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption =
                "Checks of the weather file, all its years together; the rules stand in docs/methods/sun/record-year.md",
        };
        if (record.Years.Count > 1)
        {
            yield return Years(record);
        }
    }

    private static string Left(int count, string what) => count == 0 ? "" : Invariant($" Left out: {count} {what}.");

    private static Table Years(WeatherRecord record) =>
        new(
            [
                new("year"),
                new("light on the level, kWh/m2 a year", 1, HorizontalAnchor.Right),
                new("air, degC", 1, HorizontalAnchor.Right),
            ],
            [
                .. record
                    .Years.Select((year, i) => (Name: record.YearNames[i], Year: year.Year!))
                    .OrderBy(each => each.Year.GlobalWPerM2.Sum())
                    .Take(MostYearRows)
                    .Select(each =>
                        TableRow.Of(
                            each.Name,
                            Invariant($"{each.Year.GlobalWPerM2.Sum() / 1000:0}"),
                            Invariant($"{each.Year.AirDegC.Average():0.0}")
                        )
                    ),
            ]
        )
        {
            SizeMm = Lettering.SmallMm,
            Caption = Invariant(
                $"Years of the record, dullest first{(record.Years.Count > MostYearRows ? Invariant($", {MostYearRows} of {record.Years.Count}") : "")}; the station is sized on the first"
            ),
        };
}
