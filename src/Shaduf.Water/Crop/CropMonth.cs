using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>A crop's water in one month.</summary>
/// <param name="SeasonDays">Days of the month on which the crop stands [days].</param>
/// <param name="ReferenceMmPerDay">Reference evapotranspiration [mm/d].</param>
/// <param name="Coefficient">Mean crop coefficient of those days; 0 when there are none.</param>
/// <param name="CropMmPerDay">What the crop drinks, mean over all days of the month [mm/d].</param>
/// <param name="RainMmPerDay">Usable rain on the days on which it stands, mean over all days of the month, never above what the crop drinks [mm/d].</param>
/// <source>FAO-56 chapter 6; a crop planted in one year and harvested in the next stands in both</source>
public sealed record CropMonth(
    int SeasonDays,
    double ReferenceMmPerDay,
    double Coefficient,
    double CropMmPerDay,
    double RainMmPerDay
)
{
    private static readonly int[] DaysInMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    private const int DaysInYear = 365;

    /// <summary>Need beyond the rain, mean over all days of the month [mm/d].</summary>
    public double NetMmPerDay => CropMmPerDay - RainMmPerDay;

    /// <summary>The year of a crop that is planted every year on the same day.</summary>
    /// <param name="curve">The crop, its four stages known, at most a year from planting to harvest.</param>
    /// <param name="plantedIndex">Day of planting, 0 on the first of January, 0 to 364.</param>
    /// <param name="referenceMmPerDay">Reference evapotranspiration of the twelve months [mm/d], 0 to 30.</param>
    /// <param name="rainMmPerMonth">Usable rain of the twelve months [mm/month], 0 to 3000.</param>
    /// <returns>Twelve months.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range, or NaN.</exception>
    /// <source>ETc = Kc ETo day by day, FAO-56 eq. 58; the month's reference on each of its days</source>
    public static IReadOnlyList<CropMonth> Year(
        CropCurve curve,
        int plantedIndex,
        IReadOnlyList<double> referenceMmPerDay,
        IReadOnlyList<double> rainMmPerMonth
    )
    {
        Within.RequireCount(curve.SeasonDays, 1, DaysInYear);
        Within.RequireCount(plantedIndex, 0, DaysInYear - 1);
        Within.RequireCount(referenceMmPerDay.Count, 12, 12);
        Within.RequireCount(rainMmPerMonth.Count, 12, 12);
        var months = new List<CropMonth>(12);
        var first = 0;
        for (var month = 0; month < 12; month++)
        {
            Within.Require(referenceMmPerDay[month], 0, 30, "mm/d");
            Within.Require(rainMmPerMonth[month], 0, 3000, "mm/month");
            var days = DaysInMonth[month];
            var coefficients = Enumerable
                .Range(first, days)
                .Select(day => (day - plantedIndex + DaysInYear) % DaysInYear)
                .Where(day => day < curve.SeasonDays)
                .Select(curve.DayCoefficient)
                .ToList();
            var crop = coefficients.Sum() * referenceMmPerDay[month] / days;
            var rain = rainMmPerMonth[month] / days * coefficients.Count / days;
            months.Add(
                new(
                    coefficients.Count,
                    referenceMmPerDay[month],
                    coefficients.Count > 0 ? coefficients.Average() : 0,
                    crop,
                    Math.Min(rain, crop)
                )
            );
            first += days;
        }

        return months;
    }
}
