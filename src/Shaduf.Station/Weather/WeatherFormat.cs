using Shaduf.Sun;

namespace Shaduf.Station;

/// <summary>An hour as a row of a weather file tells it, in the file's own local standard time.</summary>
/// <param name="Line">Line of the file.</param>
/// <param name="Start">Beginning of the hour; the year counts only where the file keeps to the calendar.</param>
/// <param name="GlobalWPerM2">Global irradiance on the horizontal [W/m²]; null when missing.</param>
/// <param name="DirectNormalWPerM2">Direct irradiance normal to the sun [W/m²]; null when missing.</param>
/// <param name="DiffuseWPerM2">Diffuse irradiance on the horizontal [W/m²]; null when missing.</param>
/// <param name="AirDegC">Air temperature [°C]; null when missing.</param>
internal readonly record struct WeatherRow(
    int Line,
    DateTime Start,
    double? GlobalWPerM2,
    double? DirectNormalWPerM2,
    double? DiffuseWPerM2,
    double? AirDegC
);

/// <summary>What the head of a weather file says of its rows.</summary>
/// <param name="Kind">Name of the form, as shown.</param>
/// <param name="Place">Where the record was taken, with the offset of its clock.</param>
/// <param name="IsTypical">Whether months of several years may follow one another as one year.</param>
/// <param name="IsAirAtEnd">Whether the air temperature was read at the end of the hour.</param>
/// <param name="NotUsed">Columns that are not used.</param>
/// <param name="Row">Reads a row; null, with an error noted, when it cannot be read.</param>
internal sealed record WeatherFormat(
    string Kind,
    Place Place,
    bool IsTypical,
    bool IsAirAtEnd,
    IReadOnlyList<string> NotUsed,
    Func<WeatherLine, WeatherRow?> Row
);
