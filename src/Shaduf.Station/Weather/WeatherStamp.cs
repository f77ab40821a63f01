using System.Globalization;
using System.Text.RegularExpressions;

namespace Shaduf.Station;

/// <summary>Reads the times of weather files.</summary>
internal static partial class WeatherStamp
{
    // Any leap year: rows of a typical year bear no year that counts.
    private const int AnyYear = 2000;

    /// <summary>The beginning of an hour from a month, a day and an hour; null, with an error noted, when there is no such day.</summary>
    public static DateTime? OfMonthAndDay(WeatherCells cells, int monthCell, int dayCell, int hour)
    {
        var month = (int)cells.Number(monthCell, "month", 1, 12);
        var day = (int)cells.Number(dayCell, "day", 1, 31);
        if (day <= DateTime.DaysInMonth(AnyYear, month))
        {
            return new DateTime(AnyYear, month, day, hour, 0, 0, DateTimeKind.Unspecified);
        }

        cells.Complain(dayCell, "day", $"there is no day {day} in month {month}", "a day of the month is accepted");
        return null;
    }

    /// <summary>An instant written with its offset from UTC, in another offset's time; null, with an error noted, otherwise.</summary>
    public static DateTime? OfInstant(WeatherCells cells, int cell, string field, double utcOffsetH)
    {
        if (
            !WithOffset().IsMatch(cells[cell])
            || !DateTimeOffset.TryParse(cells[cell], CultureInfo.InvariantCulture, DateTimeStyles.None, out var instant)
            || instant.Year is < 1900 or > 2200
        )
        {
            cells.Complain(
                cell,
                field,
                $"'{cells[cell]}' is not a time with its offset from UTC",
                "a time as 2021-03-01T13:00+02:00 is accepted"
            );
            return null;
        }

        var local = instant.UtcDateTime.AddHours(utcOffsetH);
        if (local is { Minute: 0, Second: 0 })
        {
            return DateTime.SpecifyKind(local, DateTimeKind.Unspecified);
        }

        cells.Complain(
            cell,
            field,
            $"'{cells[cell]}' is not on the hour by the station's clock",
            "one row for each full hour is accepted"
        );
        return null;
    }

    [GeneratedRegex(@"^\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}(:\d{2})?(Z|[+-]\d{2}:\d{2})$")]
    private static partial Regex WithOffset();
}
