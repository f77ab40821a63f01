using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>
/// The EPW form: eight lines of head, then rows of 35 fields without a heading. Source: EnergyPlus documentation,
/// Auxiliary Programs, chapter on the weather converter, section 'EnergyPlus Weather File (EPW) Data Dictionary'.
/// </summary>
internal static class EpwFormat
{
    /// <summary>First word of such a file.</summary>
    public const string FirstWord = "LOCATION";

    private const int HeadLines = 8;

    // Some makers leave out fields at the end; none of those is used here.
    private const int FewestFields = 22;

    // Fields counted from 0, and the number from which a value is missing, by the data dictionary.
    private const int AirField = 6;
    private const int GlobalField = 13;
    private const double MissingAir = 99.9;
    private const double MissingLight = 9999;

    /// <summary>Reads the head.</summary>
    /// <param name="lines">The lines, of which the head's are taken.</param>
    /// <param name="log">Takes what is wrong.</param>
    public static WeatherFormat Head(IEnumerator<WeatherLine> lines, FieldLog log)
    {
        var cells = new WeatherCells(lines.Current, log);
        var place = new Place(
            cells.Number(6, "latitude", -66, 66),
            cells.Number(7, "longitude", -180, 180),
            cells.Number(9, "elevation", -450, 6000),
            cells.Number(8, "time zone", -12, 14)
        );
        for (var line = 2; line <= HeadLines; line++)
        {
            if (!lines.MoveNext() || (line == HeadLines && !IsHourly(new(lines.Current, log))))
            {
                log.Add(
                    new(lines.Current.Number, 1),
                    "DATA PERIODS",
                    "the eighth line does not say that each hour has one record",
                    "'DATA PERIODS,1,1,...' is accepted"
                );
                log.ThrowIfAny();
            }
        }

        return new("EPW", place, IsTypical: true, IsAirAtEnd: true, [], line => Row(line, log));
    }

    private static bool IsHourly(WeatherCells cells) => cells[0] == "DATA PERIODS" && cells[2] == "1";

    private static WeatherRow? Row(WeatherLine line, FieldLog log)
    {
        var cells = new WeatherCells(line, log);
        if (cells.Count < FewestFields)
        {
            cells.Complain(0, "row", $"{cells.Count} fields", $"at least {FewestFields} are accepted");
            return null;
        }

        // Hour 1 is the first of the day; the minutes are not to be relied on.
        return WeatherStamp.OfMonthAndDay(cells, 1, 2, (int)cells.Number(3, "hour", 1, 24) - 1) is { } start
            ? new(
                line.Number,
                start,
                Light(cells, GlobalField, "global horizontal radiation"),
                Light(cells, GlobalField + 1, "direct normal radiation"),
                Light(cells, GlobalField + 2, "diffuse horizontal radiation"),
                cells.Value(AirField, "dry bulb temperature") is { } air && air < MissingAir ? air : null
            )
            : null;
    }

    private static double? Light(WeatherCells cells, int field, string name) =>
        cells.Value(field, name) is { } value && value < MissingLight ? value : null;
}
