using System.Globalization;
using System.Text.RegularExpressions;
using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>
/// The TMY form with a heading: a line about the place, a line of column names, then rows with date and time, the hour
/// named by its end. Source: Wilcox, Marion, Users Manual for TMY3 Data Sets, NREL/TP-581-43156, 2008, tables 1-1 and 1-2.
/// </summary>
internal static partial class TmyFormat
{
    /// <summary>First column of such a file, on its second line.</summary>
    public const string FirstColumn = "Date (MM/DD/YYYY)";

    private static readonly IReadOnlyList<string> Columns =
    [
        FirstColumn,
        "Time (HH:MM)",
        "GHI (W/m^2)",
        "DNI (W/m^2)",
        "DHI (W/m^2)",
        "Dry-bulb (C)",
    ];

    // Missing is -9900; nothing measured comes near it.
    private const double Missing = -9000;

    /// <summary>Reads the head.</summary>
    /// <param name="place">The first line.</param>
    /// <param name="heading">The second line.</param>
    /// <param name="log">Takes what is wrong.</param>
    public static WeatherFormat Head(WeatherLine place, WeatherLine heading, FieldLog log)
    {
        var cells = new WeatherCells(place, log);
        var at = new Place(
            cells.Number(4, "latitude", -66, 66),
            cells.Number(5, "longitude", -180, 180),
            cells.Number(6, "elevation", -450, 6000),
            cells.Number(3, "time zone", -12, 14)
        );
        var names = new WeatherCells(heading, log);
        var found = Columns.Select(name => Find(names, name)).ToList();
        log.ThrowIfAny();
        DateTime? before = null;
        return new("TMY", at, IsTypical: true, IsAirAtEnd: true, [], line => Row(line));

        WeatherRow? Row(WeatherLine line)
        {
            var row = TmyFormat.Row(line, found, log);

            // Midnight is 24:00, or 00:00 of the next day; some makers write 00:00 of the day that ends.
            if (row is { Start.Hour: 23 } night && before == night.Start.AddHours(23))
            {
                row = night with { Start = night.Start.AddDays(1) };
            }

            before = row?.Start;
            return row;
        }
    }

    private static int Find(WeatherCells names, string name)
    {
        for (var i = 0; i < names.Count; i++)
        {
            if (names[i].Equals(name, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        names.Complain(
            0,
            "heading",
            $"there is no column '{name}'",
            $"the columns {string.Join("; ", Columns)} are needed"
        );
        return 0;
    }

    private static WeatherRow? Row(WeatherLine line, IReadOnlyList<int> columns, FieldLog log)
    {
        var cells = new WeatherCells(line, log);
        var date = Date().Match(cells[columns[0]]);
        var time = Time().Match(cells[columns[1]]);
        if (
            !date.Success
            || !time.Success
            || !DateTime.TryParseExact(
                $"2000-{date.Groups[1].Value}-{date.Groups[2].Value}",
                "yyyy-MM-dd",
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var day
            )
        )
        {
            cells.Complain(
                columns[0],
                "date and time",
                $"'{cells[columns[0]]} {cells[columns[1]]}' is not a date with a full hour",
                "01/31/1998 with 01:00 to 24:00 is accepted"
            );
            return null;
        }

        var end = int.Parse(time.Groups[1].Value, CultureInfo.InvariantCulture);
        return new(
            line.Number,
            day.AddHours(end - 1),
            Value(2, "global"),
            Value(3, "direct normal"),
            Value(4, "diffuse"),
            Value(5, "air temperature")
        );

        double? Value(int column, string field) =>
            cells.Value(columns[column], field) is { } value && value > Missing ? value : null;
    }

    [GeneratedRegex(@"^(0[1-9]|1[0-2])/(0[1-9]|[12]\d|3[01])/\d{4}$")]
    private static partial Regex Date();

    [GeneratedRegex("^(0[0-9]|1[0-9]|2[0-4]):00$")]
    private static partial Regex Time();
}
