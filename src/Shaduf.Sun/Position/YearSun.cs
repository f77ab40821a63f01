using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>The way from the site to the sun: three parts of a line of length 1.</summary>
/// <param name="EastShare">Part to the east, -1 to 1.</param>
/// <param name="NorthShare">Part to true north, -1 to 1.</param>
/// <param name="UpShare">Part upwards, -1 to 1: the cosine of the zenith angle.</param>
public readonly record struct SunDirection(double EastShare, double NorthShare, double UpShare)
{
    /// <summary>The direction as angles; straight up or down the azimuth is 0.</summary>
    public SunAngles Angles => new(Angle.ArcCos(UpShare), Angle.Turn(Angle.ToDeg(Math.Atan2(EastShare, NorthShare))));

    /// <summary>The direction of a sun given by its angles.</summary>
    /// <param name="sun">The angles; zenith 0 to 180, azimuth 0 to 360 deg.</param>
    /// <returns>The direction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    public static SunDirection Of(SunAngles sun)
    {
        Within.Require(sun.ZenithDeg, 0, 180, "deg");
        Within.Require(sun.AzimuthDeg, 0, 360, "deg");
        var (sinZenith, cosZenith) = Math.SinCos(Angle.ToRad(sun.ZenithDeg));
        var (sinAzimuth, cosAzimuth) = Math.SinCos(Angle.ToRad(sun.AzimuthDeg));
        return new(sinZenith * sinAzimuth, sinZenith * cosAzimuth, cosZenith);
    }
}

/// <summary>
/// The sun over a site in the calendar year, fast: declination and equation of time by PSA+ once a day, straight from
/// midnight to midnight, and only the turn of the earth worked out for each instant.
/// </summary>
/// <source>
/// <see cref="SolarPosition.PsaPlus"/> at the midnights; the straight line between them is worked out and measured here
/// </source>
public sealed class YearSun
{
    // A day before the year and a day after, for sites that are not at Greenwich.
    private const int DaysBefore = 1;

    private static readonly IReadOnlyList<(double DeclinationSine, double AheadDeg)> Midnights =
    [
        .. Enumerable.Range(-DaysBefore, 365 + (2 * DaysBefore) + 1).Select(Midnight),
    ];

    private readonly double sinLatitude;
    private readonly double cosLatitude;

    /// <summary>Prepares the year over a site.</summary>
    /// <param name="place">The site.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is outside its ranges.</exception>
    public YearSun(Place place)
    {
        place.Require();
        Place = place;
        (sinLatitude, cosLatitude) = Math.SinCos(Angle.ToRad(place.LatitudeDeg));
    }

    /// <summary>The site.</summary>
    public Place Place { get; }

    /// <summary>Where the sun stands; true, with parallax, without refraction.</summary>
    /// <param name="yearH">Local standard time since the year began [h], 0 to 8760.</param>
    /// <returns>The direction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the year.</exception>
    public SunDirection DirectionAt(double yearH)
    {
        var (sinDeclination, hourAngleDeg) = At(yearH);
        var cosDeclination = Math.Sqrt(1 - (sinDeclination * sinDeclination));
        var (sinHour, cosHour) = Math.SinCos(Angle.ToRad(hourAngleDeg));
        var up = (sinLatitude * sinDeclination) + (cosLatitude * cosDeclination * cosHour);
        var north = (sinDeclination * cosLatitude) - (cosDeclination * sinLatitude * cosHour);

        // Seen from the ground and not from the earth's centre the sun stands a little lower.
        var outwards = 1 + (SolarPosition.ParallaxRad * up);
        return new(
            -cosDeclination * sinHour * outwards,
            north * outwards,
            up - (SolarPosition.ParallaxRad * (1 - (up * up)))
        );
    }

    /// <summary>Declination and hour angle at an instant of the year.</summary>
    /// <param name="yearH">Local standard time since the year began [h], 0 to 8760.</param>
    internal SunCoordinates CoordinatesAt(double yearH)
    {
        var (sinDeclination, hourAngleDeg) = At(yearH);
        return new(Angle.ToDeg(Math.Asin(sinDeclination)), Angle.HalfTurn(hourAngleDeg));
    }

    private (double DeclinationSine, double HourAngleDeg) At(double yearH)
    {
        Within.Require(yearH, 0, YearCalendar.HourCount, "h");
        var utDay = (yearH - Place.UtcOffsetH) / 24;
        var midnight = Math.Floor(utDay);
        var (before, after) = (Midnights[(int)midnight + DaysBefore], Midnights[(int)midnight + DaysBefore + 1]);
        var sinceMidnight = utDay - midnight;
        var sinDeclination =
            before.DeclinationSine + (sinceMidnight * (after.DeclinationSine - before.DeclinationSine));
        var aheadDeg = before.AheadDeg + (sinceMidnight * (after.AheadDeg - before.AheadDeg));
        return (sinDeclination, (360 * sinceMidnight) - 180 + Place.LongitudeDeg + aheadDeg);
    }

    // Sine of the declination at a UT midnight, and how far the sun is ahead of the mean one.
    private static (double DeclinationSine, double AheadDeg) Midnight(int day)
    {
        var sun = SolarPosition.PsaPlusCoordinates(JulianDay.DaysAtUtc(YearCalendar.Year, 1, 1, 0) + day, 0);
        return (Angle.Sin(sun.DeclinationDeg), Angle.HalfTurn(sun.HourAngleDeg - 180));
    }
}
