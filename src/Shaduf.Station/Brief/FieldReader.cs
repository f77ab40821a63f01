namespace Shaduf.Station;

/// <summary>Climate over watered fields in one month.</summary>
/// <param name="RainMm">Rain of the month in a dry year [mm]; null when unknown.</param>
/// <param name="HumidityShare">Mean relative humidity; null when unknown.</param>
/// <param name="WindMPerS">Mean wind at the height of the instrument [m/s]; null when unknown.</param>
public sealed record FieldMonthBrief(double? RainMm, double? HumidityShare, double? WindMPerS);

/// <summary>Climate over watered fields: what crops need beside sun and air.</summary>
/// <param name="WindHeightM">Height of the instrument that the winds come from [m]; null when unknown.</param>
/// <param name="Months">Twelve months, January first.</param>
public sealed record FieldBrief(double? WindHeightM, IReadOnlyList<FieldMonthBrief> Months);

/// <summary>Reads the climate over watered fields.</summary>
internal static class FieldReader
{
    private static readonly FieldMonthBrief s_unknown = new(null, null, null);

    /// <summary>Reads the group.</summary>
    /// <param name="fields">Its mapping; null when it is left out.</param>
    /// <returns>The climate; all unknown when it is left out.</returns>
    public static FieldBrief Read(FieldMap? fields)
    {
        var height = fields?.Known(
            "windHeight",
            Measure.LengthM,
            1,
            50,
            "Height above ground of the instrument that the winds come from."
        );
        var months = fields?.OptionalMap("months", "Rain, humidity and wind of the twelve months.");
        var field = new FieldBrief(
            height,
            [
                .. BriefReader.Months.Select(name =>
                    months?.OptionalMap(name, "This month.") is { } month ? Month(month) : s_unknown
                ),
            ]
        );
        months?.Done();
        fields?.Done();
        return field;
    }

    private static FieldMonthBrief Month(FieldMap fields)
    {
        var month = new FieldMonthBrief(
            fields.Known("rain", Measure.LengthMm, 0, 3000, "Rain of the month, better of a dry year."),
            fields.Known("humidity", Measure.Share, 0.05, 1, "Mean relative humidity."),
            fields.Known("wind", Measure.SpeedMPerS, 0, 10, "Mean wind, day and night.")
        );
        fields.Done();
        return month;
    }
}
