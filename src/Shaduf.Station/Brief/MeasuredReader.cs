namespace Shaduf.Station;

/// <summary>Reads what was measured on the finished station; what cannot be is refused at its place.</summary>
internal static class MeasuredReader
{
    private const string Light = "Light on the plane of the modules.";
    private const string Cell = "Cell temperature: behind a module, 3 K added in full sun.";

    /// <summary>Reads the mapping <c>measured</c>.</summary>
    /// <param name="fields">The mapping; null when there is none.</param>
    /// <returns>The readings; null when there are none.</returns>
    public static MeasuredBrief? Read(FieldMap? fields)
    {
        if (fields is null)
        {
            return null;
        }

        var measured = new MeasuredBrief(
            fields.OptionalDate("on", "The day."),
            fields.OptionalText("by", "Who measured.") ?? "",
            fields.Items("strings", 0, 100, "Readings of the strings.", String),
            fields.Items("pump", 0, 50, "The pump in steady sun, some minutes apart.", Run),
            fields.Known("rest", Measure.LengthM, -20, 500, "Depth to the water before pumping that morning."),
            fields.Known("earth", Measure.ResistanceOhm, 0.01, 10_000, "Resistance of the earth."),
            fields.Known("motor", Measure.ResistanceMohm, 0, 100_000, "Insulation of motor and cable."),
            Tank(fields.OptionalMap("tank", "Water caught in the tank by its marks.")),
            Instruments(fields.OptionalMap("instruments", "How far the instruments may be wrong."))
        )
        {
            Ticked = fields.Items("ticked", 0, 2000, "Points ticked in the site book.", Tick),
        };
        var numbers = measured.Strings.Select(each => each.Number).ToList();
        if (fields.AreSound("strings") && numbers.Distinct().Count() < numbers.Count)
        {
            fields.Complain("strings", "a string is told twice", "one entry a string is accepted");
        }

        fields.Done();
        return measured;
    }

    private static StringReading String(FieldMap fields)
    {
        var reading = new StringReading(
            fields.Count("string", 1, 100, "Number of the string."),
            fields.Quantity("light", Measure.LightWPerM2, 50, 1500, Light),
            fields.Quantity("cell", Measure.TemperatureDegC, -40, 110, Cell),
            fields.Known("open", Measure.VoltageV, 0, 2000, "Open voltage."),
            fields.Known("short", Measure.CurrentA, 0, 100, "Short-circuit current."),
            fields.Known("insulation", Measure.ResistanceMohm, 0, 100_000, "Insulation to earth.")
        );
        fields.Done();
        return reading;
    }

    private static PumpReading Run(FieldMap fields)
    {
        var reading = new PumpReading(
            fields.Quantity("light", Measure.LightWPerM2, 50, 1500, Light),
            fields.Quantity("cell", Measure.TemperatureDegC, -40, 110, Cell),
            fields.Quantity("voltage", Measure.VoltageV, 1, 2000, "Voltage at the drive's input."),
            fields.Quantity("current", Measure.CurrentA, 0.01, 500, "Current there."),
            fields.Quantity("flow", Measure.FlowM3PerH, 0, 500, "Flow by the meter, or by a drum and a watch."),
            fields.Known("level", Measure.LengthM, -20, 500, "Depth to the water while the pump runs."),
            fields.Known("gauge", Measure.PressureBar, 0, 100, "Gauge at the start of the main.")
        );
        fields.Done();
        return reading;
    }

    private static TankReading? Tank(FieldMap? fields)
    {
        if (fields is null)
        {
            return null;
        }

        var reading = new TankReading(
            fields.Quantity("volume", Measure.VolumeM3, 0.01, 1000, "Water caught."),
            fields.Quantity("time", Measure.TimeH, 0.01, 100, "Time that it took.")
        );
        fields.Done();
        return reading;
    }

    private static string Tick(FieldMap fields)
    {
        var point = fields.Text("point", "Name of the point.", 120);
        fields.OptionalText("at", "When it was ticked.", 40);
        fields.Done();
        return point;
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
