namespace Shaduf.Sun;

/// <summary>One hour of a record, as its file has it; a null is a missing value.</summary>
/// <param name="Line">Line in the file; of the row before when the hour has none.</param>
/// <param name="HasRow">Whether the file has a row for the hour.</param>
/// <param name="GlobalWPerM2">Global irradiance on the horizontal, mean of the hour [W/m2].</param>
/// <param name="DirectNormalWPerM2">Direct irradiance normal to the sun, mean of the hour [W/m2].</param>
/// <param name="DiffuseWPerM2">Diffuse irradiance on the horizontal, mean of the hour [W/m2].</param>
/// <param name="AirDegC">Air temperature [degC].</param>
public readonly record struct RecordHour(
    int Line,
    bool HasRow,
    double? GlobalWPerM2,
    double? DirectNormalWPerM2,
    double? DiffuseWPerM2,
    double? AirDegC
);
