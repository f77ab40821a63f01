using System.Globalization;

namespace Shaduf.Station;

/// <summary>Reads what was measured on the finished station; what cannot be is refused at its place.</summary>
internal static class MeasuredReader
{
    /// <summary>Reads the mapping <c>measured</c>.</summary>
    /// <param name="fields">The mapping; null when there is none.</param>
    /// <returns>The readings; null when there are none.</returns>
    public static MeasuredBrief? Read(FieldMap? fields)
    {
        if (fields is null)
        {
            return null;
        }

        var station = ReadingSheet.OfStation.Read(fields);
        var measured = new MeasuredBrief(
            fields.OptionalDate("on", "The day."),
            fields.OptionalText("by", "Who measured.") ?? "",
            fields.Items("strings", 0, 100, "Readings of the strings.", String),
            fields.Items("pump", 0, 50, "The pump in steady sun, some minutes apart.", Run),
            station[0],
            station[1],
            station[2],
            Tank(fields.OptionalMap("tank", "Water caught in the tank by its marks.")),
            Instruments(fields.OptionalMap("instruments", "How far the instruments may be wrong."))
        )
        {
            Ticked = fields.Items("ticked", 0, 2000, "Points ticked in the site book.", Tick),
            Notes = fields.Items("notes", 0, 200, "What the crew wrote down.", Note),
            Station = fields.OptionalText("station", "The station's name, as the site book's file tells it."),
        };
        Once(fields, "strings", "a string", measured.Strings.Select(each => each.Number));
        Once(fields, "ticked", "a point", measured.Ticked.Select(each => each.Point));

        fields.Done();
        return measured;
    }

    private static StringReading String(FieldMap fields)
    {
        var number = fields.Count("string", 1, 100, "Number of the string.");
        var read = ReadingSheet.OfString.Read(fields);
        fields.Done();
        return new(number, read[0]!.Value, read[1]!.Value, read[2], read[3], read[4]);
    }

    private static PumpReading Run(FieldMap fields)
    {
        var read = ReadingSheet.OfPump.Read(fields);
        fields.Done();
        return new(read[0]!.Value, read[1]!.Value, read[2]!.Value, read[3]!.Value, read[4]!.Value, read[5], read[6]);
    }

    private static TankReading? Tank(FieldMap? fields)
    {
        if (fields is null)
        {
            return null;
        }

        var read = ReadingSheet.OfTank.Read(fields);
        fields.Done();
        return new(read[0]!.Value, read[1]!.Value);
    }

    /// <summary>Reads a file exported from the site book; it holds the same fields, and JSON is YAML.</summary>
    /// <param name="path">The file's path.</param>
    /// <param name="shown">Its path as the user sees it.</param>
    /// <param name="source">Where the water comes from.</param>
    /// <returns>The readings.</returns>
    /// <exception cref="BadInputException">Anything in it is wrong; all of it is listed.</exception>
    public static MeasuredBrief? ReadFile(string path, string shown, SourceBrief source)
    {
        var log = new FieldLog(shown);
        var fields = FieldMap.Reading(Top(path, log), log);
        var measured = Read(fields);
        MeasuredLimits.CheckAt(fields, "", measured, source);
        log.ThrowIfAny();
        return measured;
    }

    // A file that was cut short on its way is told as what it is.
    private static YamlMap Top(string path, FieldLog log)
    {
        try
        {
            return YamlFile.Read(path, log).Top;
        }
        catch (BadInputException bad)
        {
            throw new BadInputException([
                .. bad.Errors.Select(error => new FileError(
                    error.File,
                    error.Line,
                    error.Column,
                    error.Field,
                    error.Problem.Replace("not YAML", "not a whole file", StringComparison.Ordinal),
                    "the file as the site book exported it is accepted"
                )),
            ]);
        }
    }

    private static void Once<T>(FieldMap fields, string list, string what, IEnumerable<T> keys)
        where T : notnull
    {
        if (fields.AreSound(list) && keys.CountBy(key => key).Any(count => count.Value > 1))
        {
            fields.Complain(list, $"{what} is told twice", $"one entry for {what} is accepted");
        }
    }

    private static Tick Tick(FieldMap fields)
    {
        var point = fields.Text("point", "Name of the point.", 120);
        var at = fields.OptionalText("at", "When it was ticked, by the clock of the site, as 2026-05-01T08:00.", 40);
        var by = fields.OptionalText("by", "Who ticked it.") ?? "";
        var isTime = DateTime.TryParseExact(
            at,
            "yyyy-MM-dd'T'HH:mm",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out var time
        );
        if (at is not null && !isTime)
        {
            fields.Complain("at", $"'{at}' is not a time", "a time as 2026-05-01T08:00 is accepted");
        }

        fields.Done();
        return new(point, isTime ? time : null, by);
    }

    private static SiteNote Note(FieldMap fields)
    {
        var note = new SiteNote(
            fields.Text("about", "What the note is about."),
            fields.Text("text", "The note.", FieldMap.LongestValue)
        );
        fields.Done();
        return note;
    }

    private static Instruments Instruments(FieldMap? fields)
    {
        var usual = Station.Instruments.Usual;
        double Share(string name, double taken) =>
            fields?.Known(name, Measure.Share, 0, 0.3, "Uncertainty, as a share of the reading.") ?? taken;
        var instruments = new Instruments(
            Share("light", usual.LightShare),
            fields?.Known("cell", Measure.TemperatureDegC, 0, 20, "Uncertainty.") ?? usual.CellK,
            Share("voltage", usual.VoltageShare),
            Share("current", usual.CurrentShare),
            Share("flow", usual.FlowShare),
            fields?.Known("level", Measure.LengthM, 0, 5, "Uncertainty.") ?? usual.LevelM,
            fields?.Known("gauge", Measure.PressureBar, 0, 5, "Uncertainty.") ?? usual.GaugeBar,
            Share("ohm", usual.OhmShare)
        );
        fields?.Done();
        return instruments;
    }
}
