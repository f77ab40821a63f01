namespace Shaduf.Station;

/// <summary>A reading that is taken on site.</summary>
/// <param name="Name">Its name in the brief.</param>
/// <param name="Unit">Its usual unit.</param>
/// <param name="Lowest">The least that can be [that unit].</param>
/// <param name="Highest">The most that can be [that unit].</param>
/// <param name="IsNeeded">Whether the sheet is worth nothing without it.</param>
/// <param name="About">What is read.</param>
public sealed record ReadingField(string Name, string Unit, double Lowest, double Highest, bool IsNeeded, string About)
{
    private Measure measure = Measure.Plain;

    internal static ReadingField Needed(string name, Measure measure, double lowest, double highest, string about) =>
        new(name, measure.OwnUnit, lowest, highest, true, about) { measure = measure };

    internal static ReadingField Wanted(string name, Measure measure, double lowest, double highest, string about) =>
        new(name, measure.OwnUnit, lowest, highest, false, about) { measure = measure };

    internal double? Read(FieldMap fields) =>
        IsNeeded
            ? fields.Quantity(Name, measure, Lowest, Highest, About)
            : fields.Known(Name, measure, Lowest, Highest, About);
}

/// <summary>Readings that are taken together; the brief, the site book and its file name them alike.</summary>
/// <param name="Fields">The readings in order.</param>
public sealed record ReadingSheet(IReadOnlyList<ReadingField> Fields)
{
    private const string Light = "Light on the plane of the modules.";
    private const string Cell = "Cell temperature: behind a module, 3 K added in full sun.";

    /// <summary>Of the whole station.</summary>
    public static ReadingSheet OfStation { get; } =
        new([
            ReadingField.Wanted("rest", Measure.LengthM, -20, 500, "Depth to the water before pumping that morning."),
            ReadingField.Wanted("earth", Measure.ResistanceOhm, 0.01, 10_000, "Resistance of the earth."),
            ReadingField.Wanted("motor", Measure.ResistanceMohm, 0, 100_000, "Insulation of motor and cable."),
        ]);

    /// <summary>Of one string.</summary>
    public static ReadingSheet OfString { get; } =
        new([
            ReadingField.Needed("light", Measure.LightWPerM2, 50, 1500, Light),
            ReadingField.Needed("cell", Measure.TemperatureDegC, -40, 110, Cell),
            ReadingField.Wanted("open", Measure.VoltageV, 0, 2000, "Open voltage."),
            ReadingField.Wanted("short", Measure.CurrentA, 0, 100, "Short-circuit current."),
            ReadingField.Wanted("insulation", Measure.ResistanceMohm, 0, 100_000, "Insulation to earth."),
        ]);

    /// <summary>Of the pump in steady sun.</summary>
    public static ReadingSheet OfPump { get; } =
        new([
            ReadingField.Needed("light", Measure.LightWPerM2, 50, 1500, Light),
            ReadingField.Needed("cell", Measure.TemperatureDegC, -40, 110, Cell),
            ReadingField.Needed("voltage", Measure.VoltageV, 1, 2000, "Voltage at the drive's input."),
            ReadingField.Needed("current", Measure.CurrentA, 0.01, 500, "Current there."),
            ReadingField.Needed("flow", Measure.FlowM3PerH, 0, 500, "Flow by the meter, or by a drum and a watch."),
            ReadingField.Wanted("level", Measure.LengthM, -20, 500, "Depth to the water while the pump runs."),
            ReadingField.Wanted("gauge", Measure.PressureBar, 0, 100, "Gauge at the start of the main."),
        ]);

    /// <summary>Of the tank while it fills.</summary>
    public static ReadingSheet OfTank { get; } =
        new([
            ReadingField.Needed("volume", Measure.VolumeM3, 0.01, 1000, "Water caught."),
            ReadingField.Needed("time", Measure.TimeH, 0.01, 100, "Time that it took."),
        ]);

    internal IReadOnlyList<double?> Read(FieldMap fields) => [.. Fields.Select(field => field.Read(fields))];
}
