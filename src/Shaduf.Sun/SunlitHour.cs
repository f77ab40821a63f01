namespace Shaduf.Sun;

/// <summary>The sun in one hour of a year run; for latitudes without polar day or night.</summary>
/// <param name="Sun">Where it stands in the middle of the hour's sunlit part; of the whole hour at night.</param>
/// <param name="LitShare">Share of the hour in which its centre is up, 0 to 1.</param>
/// <param name="NormalWPerM2">Extraterrestrial irradiance normal to the sun, mean of the hour [W/m2].</param>
/// <param name="HorizontalWPerM2">Extraterrestrial irradiance on the horizontal, mean of the hour [W/m2].</param>
internal readonly record struct SunlitHour(SunAngles Sun, double LitShare, double NormalWPerM2, double HorizontalWPerM2)
{
    private static readonly double YearStartDay = JulianDay.DaysAtUtc(YearCalendar.Year, 1, 1, 0);

    internal static SunlitHour Of(Place place, int hour)
    {
        var middleDay = YearStartDay + ((hour + 0.5 - place.UtcOffsetH) / 24);
        var sun = SolarPosition.PsaPlusCoordinates(middleDay, place.LongitudeDeg);
        var sunsetDeg = SolarGeometry.SunsetHourAngleDeg(place.LatitudeDeg, sun.DeclinationDeg);
        var startDeg = Math.Max(sun.HourAngleDeg - 7.5, -sunsetDeg);
        var endDeg = Math.Min(sun.HourAngleDeg + 7.5, sunsetDeg);
        if (startDeg >= endDeg)
        {
            return new(SolarPosition.PsaPlus(middleDay, place.LatitudeDeg, place.LongitudeDeg), 0, 0, 0);
        }

        var litShare = (endDeg - startDeg) / 15;
        var litMiddleDeg = (startDeg + endDeg) / 2;
        var litMiddleDay = middleDay + ((litMiddleDeg - sun.HourAngleDeg) / 360);
        var normalWPerM2 = ExtraterrestrialIrradiance.NormalSpencerWPerM2(
            YearCalendar.DayOf(hour) + 1,
            ExtraterrestrialIrradiance.SolarConstantWPerM2
        );
        var horizontalMJPerM2 = ExtraterrestrialIrradiance.HourHorizontalMJPerM2(
            normalWPerM2,
            place.LatitudeDeg,
            sun.DeclinationDeg,
            startDeg,
            endDeg
        );
        return new(
            SolarPosition.PsaPlus(litMiddleDay, place.LatitudeDeg, place.LongitudeDeg),
            litShare,
            litShare * normalWPerM2,
            horizontalMJPerM2 * 1e6 / 3600
        );
    }
}
