using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the part of the brief about weather: twelve months, or the name of a file.</summary>
internal static class MonthReader
{
    private const double NarrowestRangeK = 2;
    private const double WidestRangeK = 30;

    /// <summary>The months; all unknown when they are left out.</summary>
    /// <param name="fields">The months' mapping; null when it is left out.</param>
    /// <returns>Twelve months, January first.</returns>
    public static IReadOnlyList<MonthBrief> List(FieldMap? fields)
    {
        if (fields is null)
        {
            return [.. Enumerable.Repeat(MonthBrief.Unknown, 12)];
        }

        var months = BriefReader.Months.Select(name => Month(fields.Map(name, "Climate of this month."))).ToList();
        fields.Done();
        return months;
    }

    /// <summary>The weather file's name; an error is noted unless there is either a file or months.</summary>
    /// <param name="site">The site's mapping.</param>
    /// <returns>The name as written; null when there is none.</returns>
    public static string? WeatherFile(FieldMap site)
    {
        var named = site.OptionalText(
            "weather",
            "Weather file, seen from this file, in the place of months: EPW, TMY with its heading, or our own CSV.",
            200
        );
        var file = named == FieldMap.UnknownWord ? null : named;
        if (site.IsDescribing)
        {
            return null;
        }

        if (file is not null && site.Has("months"))
        {
            site.Complain("weather", "stands beside months", "either a weather file or months is accepted");
        }
        else if (named is null && !site.Has("months"))
        {
            site.Complain("months", "missing", "'months: ...' or 'weather: FILE' is needed");
        }

        return file;
    }

    private static MonthBrief Month(FieldMap fields)
    {
        var month = new MonthBrief(
            fields.Known("sun", Measure.SunKWhPerM2Day, 0, 12, "Mean daily sun on the level."),
            fields.Known("air", Measure.TemperatureDegC, -35, 40, "Mean air temperature, day and night.")
        )
        {
            SunshineH = fields.Known(
                "sunshine",
                Measure.TimeH,
                0,
                24,
                "Hours of bright sunshine a day, where sun is unknown."
            ),
            LowDegC = fields.Known(
                "low",
                Measure.TemperatureDegC,
                -45,
                40,
                "Mean of the days' lowest air temperatures."
            ),
            HighDegC = fields.Known(
                "high",
                Measure.TemperatureDegC,
                -30,
                50,
                "Mean of the days' highest air temperatures."
            ),
        };
        Check(fields, month);
        fields.Done();
        return month;
    }

    private static void Check(FieldMap fields, MonthBrief month)
    {
        if (!fields.AreSound("air", "low", "high"))
        {
            return;
        }

        if (month.HighDegC - month.LowDegC is { } range and not (>= NarrowestRangeK and <= WidestRangeK))
        {
            fields.Complain(
                "high",
                Invariant($"{range:0.#} K above the lowest"),
                Invariant($"{NarrowestRangeK} to {WidestRangeK} K above 'low' is accepted")
            );
        }
        else if (month.AirDegC < month.LowDegC || month.AirDegC > month.HighDegC)
        {
            fields.Complain("air", "not between the month's low and high", "a mean between them is accepted");
        }
        else if ((month.LowDegC is null) != (month.HighDegC is null))
        {
            fields.Complain(
                month.LowDegC is null ? "high" : "low",
                "stands alone",
                "both of 'low' and 'high', or neither, are accepted"
            );
        }
    }
}
