using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>
/// A month's clearness (global over extraterrestrial irradiation) from other records, for places where nobody measured
/// the sun. An estimate: mark it as one.
/// </summary>
public static class EstimatedClearness
{
    /// <summary>Coefficient of the temperature range inland.</summary>
    public const double InlandCoefficient = 0.16;

    /// <summary>Coefficient of the temperature range on a coast.</summary>
    public const double CoastCoefficient = 0.19;

    /// <summary>Clearness from the hours of bright sunshine.</summary>
    /// <param name="sunshineShare">Hours of bright sunshine over hours of daylight, 0 to 1.</param>
    /// <returns>Clearness.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    /// <source>Angstrom, Prescott in Allen et al., FAO Irrigation and Drainage Paper 56, 1998, equation 35</source>
    public static double AngstromRatio(double sunshineShare)
    {
        Within.Require(sunshineShare, 0, 1, "");
        return 0.25 + (0.50 * sunshineShare);
    }

    /// <summary>Clearness from how far the air warms by day: clear skies let days warm and nights cool.</summary>
    /// <param name="rangeK">Mean daily highest less mean daily lowest air temperature [K], 0 to 30.</param>
    /// <param name="rangeCoefficient">0.16 inland, 0.19 on a coast; 0.1 to 0.25.</param>
    /// <returns>Clearness, not yet held against <see cref="ClearSkyRatio"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Hargreaves in Allen et al., FAO Irrigation and Drainage Paper 56, 1998, equation 50</source>
    public static double HargreavesRatio(double rangeK, double rangeCoefficient)
    {
        Within.Require(rangeK, 0, 30, "K");
        Within.Require(rangeCoefficient, 0.1, 0.25, "");
        return rangeCoefficient * Math.Sqrt(rangeK);
    }

    /// <summary>Clearness of days without clouds.</summary>
    /// <param name="elevationM">Height above sea level [m], -450 to 6000.</param>
    /// <returns>Clearness.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is outside its range.</exception>
    /// <source>Allen et al., FAO Irrigation and Drainage Paper 56, 1998, equation 37</source>
    public static double ClearSkyRatio(double elevationM)
    {
        Within.Require(elevationM, -450, 6000, "m");
        return 0.75 + (2e-5 * elevationM);
    }

    /// <summary>Hours from sunrise to sunset, as the sunshine formula counts them.</summary>
    /// <param name="latitudeDeg">Latitude [deg], -90 to 90.</param>
    /// <param name="dayOfYear">Day of the year, 1 to 366.</param>
    /// <returns>Daylight [h], 0 to 24.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Allen et al., FAO Irrigation and Drainage Paper 56, 1998, equations 24, 25 and 34</source>
    public static double DaylightH(double latitudeDeg, int dayOfYear)
    {
        Within.RequireCount(dayOfYear, 1, 366);
        var declinationDeg = Angle.ToDeg(0.409 * Math.Sin((2 * Math.PI * dayOfYear / 365) - 1.39));
        return SolarGeometry.SunsetHourAngleDeg(latitudeDeg, declinationDeg) / 7.5;
    }
}
