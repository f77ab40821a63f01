namespace Shaduf.Station;

/// <summary>Reads the part of the brief about where the water comes from.</summary>
internal static class SourceReader
{
    /// <summary>Reads the source: open water when <c>surface</c> is given, else a borehole or well.</summary>
    /// <param name="fields">The mapping <c>source</c>.</param>
    /// <returns>The source.</returns>
    public static SourceBrief Read(FieldMap fields)
    {
        var waterDegC = fields.Known("waterTemperature", Measure.TemperatureDegC, 5, 40, "Temperature of the water.");
        var common = fields.Given;
        var borehole = BoreholeReader.Read(fields, waterDegC);
        var ofBorehole = fields.Given.Except(common).ToList();
        var surface = fields.OptionalMap(
            "surface",
            "A river, pond, canal or open well with a surface pump; then no field of a borehole stands beside it. Levels are above sea, as in lift.route."
        );
        fields.Done();
        if (surface is null)
        {
            BoreholeReader.Check(fields, borehole);
            return borehole;
        }

        foreach (var name in ofBorehole)
        {
            fields.Complain(
                name,
                "a borehole's figure beside source.surface",
                "either a borehole or 'surface' is accepted"
            );
        }

        return SurfaceReader.Read(surface, waterDegC);
    }
}
