namespace Shaduf.Sun;

/// <summary>The sun in one hour of a year run.</summary>
/// <param name="Sun">Where it stands in the middle of the hour's sunlit part; of the whole hour at night.</param>
/// <param name="LitShare">Share of the hour in which its centre is up, 0 to 1.</param>
/// <param name="NormalWPerM2">Extraterrestrial irradiance normal to the sun, mean of the hour [W/m2].</param>
/// <param name="HorizontalWPerM2">Extraterrestrial irradiance on the horizontal, mean of the hour [W/m2].</param>
internal readonly record struct SunlitHour(SunAngles Sun, double LitShare, double NormalWPerM2, double HorizontalWPerM2)
{
    // Hour angle at sunset of a day of 8 min: where the sun peeps out for less, the year's hours are night.
    private const double ShortestDayDeg = 1;

    /// <summary>An hour of the calendar year.</summary>
    /// <param name="sun">The sun over the site.</param>
    /// <param name="hour">Hour of the year, 0 to 8759.</param>
    internal static SunlitHour Of(YearSun sun, int hour)
    {
        var middle = sun.CoordinatesAt(hour + 0.5);
        var latitudeDeg = sun.Place.LatitudeDeg;
        var sunsetDeg = SolarGeometry.SunsetHourAngleDeg(latitudeDeg, middle.DeclinationDeg);
        var neverSets = sunsetDeg == 180;
        var startDeg = neverSets ? middle.HourAngleDeg - 7.5 : Math.Max(middle.HourAngleDeg - 7.5, -sunsetDeg);
        var endDeg = neverSets ? middle.HourAngleDeg + 7.5 : Math.Min(middle.HourAngleDeg + 7.5, sunsetDeg);
        if (startDeg >= endDeg || sunsetDeg < ShortestDayDeg)
        {
            return new(sun.DirectionAt(hour + 0.5).Angles, 0, 0, 0);
        }

        var litShare = Math.Min(1, (endDeg - startDeg) / 15);
        var litMiddleDeg = (startDeg + endDeg) / 2;
        var normalWPerM2 = ExtraterrestrialIrradiance.NormalSpencerWPerM2(
            YearCalendar.DayOf(hour) + 1,
            ExtraterrestrialIrradiance.SolarConstantWPerM2
        );
        return new(
            sun.DirectionAt(hour + 0.5 + ((litMiddleDeg - middle.HourAngleDeg) / 15)).Angles,
            litShare,
            litShare * normalWPerM2,
            ExtraterrestrialIrradiance.MeanHorizontalWPerM2(
                litShare * normalWPerM2,
                latitudeDeg,
                middle.DeclinationDeg,
                startDeg,
                endDeg
            )
        );
    }
}
