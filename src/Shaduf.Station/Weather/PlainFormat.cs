using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>
/// Our own form: a heading whose column names carry their unit, and times that carry their offset from UTC. Lines that
/// begin with # are remarks; before the heading <c># latitude: 13.2</c>, <c># longitude: ...</c>, <c># elevation: ...</c>
/// say where the record was taken, and <c># missing: -999</c> names a code for missing values.
/// </summary>
internal static class PlainFormat
{
    private const double JoulePerWh = 3600;

    private static readonly IReadOnlyList<(string Name, bool IsEnd)> Times =
    [
        ("hour_ending", true),
        ("hour_beginning", false),
    ];

    private static readonly IReadOnlyList<(string Unit, Func<double, double> ToOwn)> Light =
    [
        ("w_m2", x => x),
        ("wh_m2", x => x),
        ("kj_m2", x => x * 1e3 / JoulePerWh),
        ("mj_m2", x => x * 1e6 / JoulePerWh),
    ];

    private static readonly IReadOnlyList<(string Unit, Func<double, double> ToOwn)> Air =
    [
        ("degC", x => x),
        ("degF", x => (x - 32) / 1.8),
        ("K", x => x - 273.15),
    ];

    /// <summary>Whether a line can be the heading of such a file.</summary>
    public static bool IsHeading(WeatherLine line, FieldLog log)
    {
        var cells = new WeatherCells(line, log);
        return Enumerable.Range(0, cells.Count).Any(i => Times.Any(time => IsNamed(cells[i], time.Name)));
    }

    /// <summary>Reads the head.</summary>
    /// <param name="remarks">The remarks before the heading.</param>
    /// <param name="heading">The heading.</param>
    /// <param name="station">The station, for a file that does not say where it was taken.</param>
    /// <param name="log">Takes what is wrong.</param>
    public static WeatherFormat Head(
        IReadOnlyList<WeatherLine> remarks,
        WeatherLine heading,
        Place station,
        FieldLog log
    )
    {
        var place = new Place(
            Said(remarks, "latitude", (-66, 66), log) ?? station.LatitudeDeg,
            Said(remarks, "longitude", (-180, 180), log) ?? station.LongitudeDeg,
            Said(remarks, "elevation", (-450, 6000), log) ?? station.ElevationM,
            station.UtcOffsetH
        );
        var missing = Said(remarks, "missing", (double.MinValue, double.MaxValue), log);
        var names = new WeatherCells(heading, log);
        var time = Enumerable.Range(0, names.Count).First(i => Times.Any(each => IsNamed(names[i], each.Name)));
        var isEnd = Times.First(each => IsNamed(names[time], each.Name)).IsEnd;
        var columns = new[]
        {
            Column(names, "global", Light, isNeeded: true),
            Column(names, "direct_normal", Light, isNeeded: false),
            Column(names, "diffuse", Light, isNeeded: false),
            Column(names, "air", Air, isNeeded: true),
        };
        log.ThrowIfAny();
        var notUsed = Enumerable.Range(0, names.Count).Where(i => i != time && columns.All(column => column?.At != i));
        return new(
            "CSV",
            place,
            IsTypical: false,
            IsAirAtEnd: false,
            [.. notUsed.Select(i => names[i])],
            line => Row(new(line, log))
        );

        WeatherRow? Row(WeatherCells cells)
        {
            if (cells.Count != names.Count)
            {
                cells.Complain(
                    0,
                    "row",
                    $"{cells.Count} cells",
                    $"{names.Count} cells, as in the heading, are accepted"
                );
                return null;
            }

            return WeatherStamp.OfInstant(cells, time, names[time], place.UtcOffsetH) is { } stamp
                ? new(
                    cells.Line,
                    stamp.AddHours(isEnd ? -1 : 0),
                    Value(cells, columns[0]),
                    Value(cells, columns[1]),
                    Value(cells, columns[2]),
                    Value(cells, columns[3])
                )
                : null;
        }

        double? Value(WeatherCells cells, PlainColumn? column) =>
            column is { } at && cells.Value(at.At, names[at.At]) is { } value && value != missing
                ? at.ToOwn(value)
                : null;
    }

    private static PlainColumn? Column(
        WeatherCells names,
        string quantity,
        IReadOnlyList<(string Unit, Func<double, double> ToOwn)> units,
        bool isNeeded
    )
    {
        var found = Enumerable
            .Range(0, names.Count)
            .SelectMany(i =>
                units
                    .Where(unit => IsNamed(names[i], $"{quantity}_{unit.Unit}"))
                    .Select(unit => new PlainColumn(i, unit.ToOwn))
            )
            .ToList();
        if (found.Count > 1 || (isNeeded && found.Count == 0))
        {
            names.Complain(
                found.Count > 1 ? found[1].At : 0,
                "heading",
                found.Count > 1 ? $"a second column of {quantity}" : $"no column of {quantity} with its unit",
                $"one column named {string.Join(", ", units.Select(unit => $"{quantity}_{unit.Unit}"))} is accepted"
            );
        }

        return found.FirstOrDefault();
    }

    // Spreadsheets and people write the same names with capitals.
    private static bool IsNamed(string cell, string name) => cell.Equals(name, StringComparison.OrdinalIgnoreCase);

    // '# latitude: 13.2' among the remarks.
    private static double? Said(
        IReadOnlyList<WeatherLine> remarks,
        string name,
        (double Lowest, double Highest) range,
        FieldLog log
    )
    {
        foreach (var line in remarks)
        {
            var (said, value) = line.Text.TrimStart('#').Split(':', 2, StringSplitOptions.TrimEntries) switch
            {
                [var before, var after] => (before, after),
                _ => ("", ""),
            };
            if (said == name)
            {
                return new WeatherCells(new(line.Number, value), log).Number(0, name, range.Lowest, range.Highest);
            }
        }

        return null;
    }

    private sealed record PlainColumn(int At, Func<double, double> ToOwn);
}
