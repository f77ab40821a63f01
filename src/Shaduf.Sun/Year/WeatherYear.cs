using System.Collections.Immutable;

namespace Shaduf.Sun;

/// <summary>
/// A year of weather by the hour: 8,760 means over the hour in local standard time, the first from 00:00 to 01:00 of
/// 1 January (see <see cref="YearCalendar"/>). In the hours of sunrise and sunset the sun stands where it is in the
/// middle of their sunlit part, and every irradiance, the extraterrestrial one too, is spread over the whole hour, so
/// that direct normal x cos(zenith) + diffuse = global, and direct normal over extraterrestrial is that of the sunlit
/// part.
/// </summary>
/// <param name="GlobalWPerM2">Global irradiance on the horizontal [W/m2].</param>
/// <param name="DirectNormalWPerM2">Direct irradiance normal to the sun [W/m2].</param>
/// <param name="DiffuseWPerM2">Diffuse irradiance on the horizontal [W/m2].</param>
/// <param name="AirDegC">Air temperature [degC].</param>
/// <param name="SunZenithDeg">True zenith angle of the sun [deg], 0 to 180.</param>
/// <param name="SunAzimuthDeg">Azimuth of the sun, clockwise from true north [deg], 0 to 360.</param>
/// <param name="ExtraterrestrialNormalWPerM2">Extraterrestrial irradiance normal to the sun [W/m2], 0 at night.</param>
public sealed record WeatherYear(
    ImmutableArray<double> GlobalWPerM2,
    ImmutableArray<double> DirectNormalWPerM2,
    ImmutableArray<double> DiffuseWPerM2,
    ImmutableArray<double> AirDegC,
    ImmutableArray<double> SunZenithDeg,
    ImmutableArray<double> SunAzimuthDeg,
    ImmutableArray<double> ExtraterrestrialNormalWPerM2
);
