using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Water of a plot through the year, with its working.</summary>
internal static class PlotYear
{
    private const string Method = "station/plot-year";

    /// <summary>The use of a plot.</summary>
    /// <param name="plot">The plot.</param>
    /// <param name="field">Climate over the field.</param>
    /// <param name="reachingShare">Share of the water that reaches the roots.</param>
    /// <param name="pattern">Hours of draw.</param>
    /// <returns>The use.</returns>
    public static UseYear Of(PlotBrief plot, FieldYear field, double reachingShare, DrawPattern pattern) =>
        plot.Planting is { } planting
            ? Planted(plot, planting, field, reachingShare, pattern)
            : Given(plot, reachingShare, pattern);

    private static UseYear Given(PlotBrief plot, double reachingShare, DrawPattern pattern)
    {
        var months = plot.NeedMmPerDay.Select(mm => VolumeM3PerDay(mm, plot.AreaM2, reachingShare, 0)).ToList();
        return new(
            plot.Crop,
            Invariant(
                $"{plot.AreaM2 / 10_000:0.##} ha; need from January on {string.Join(" ", plot.NeedMmPerDay.Select(mm => Invariant($"{mm:0.#}")))} mm/d over {reachingShare * 100:0} %"
            ),
            months,
            pattern,
            false
        );
    }

    private static UseYear Planted(
        PlotBrief plot,
        PlantingBrief planting,
        FieldYear field,
        double reachingShare,
        DrawPattern pattern
    )
    {
        var curve = field is { WindMPerS: { } wind, LowestPercent: { } percent }
            ? planting.Curve.ForClimate(wind, percent)
            : planting.Curve;
        var year = CropMonth.Year(
            curve,
            planting.PlantedIndex,
            [.. field.Months.Select(month => month.ReferenceMmPerDay)],
            [.. field.Months.Select(month => month.UsableRainMm)]
        );
        var leaching = planting.LeachingShare ?? 0;
        var volumes = year.Select(month => VolumeM3PerDay(month.NetMmPerDay, plot.AreaM2, reachingShare, leaching))
            .ToList();
        return new(
            plot.Crop,
            Invariant(
                $"{plot.AreaM2 / 10_000:0.##} ha planted {DayOf(planting.PlantedIndex)}, {curve.SeasonDays} days; {reachingShare * 100:0} % reaches the roots"
            ),
            volumes,
            pattern,
            false
        )
        {
            Working = new(
                Invariant(
                    $"Water of {plot.Crop}, {plot.AreaM2:0} m2: Kc {curve.StartCoefficient:0.00}, {curve.FullCoefficient:0.00}, {curve.EndCoefficient:0.00} over {string.Join(", ", curve.StageDays)} days; {field.Method}"
                ),
                [
                    .. Enumerable
                        .Range(0, 12)
                        .Where(month => year[month].SeasonDays > 0)
                        .Select(month => MonthLine(month, year[month], field.Months[month], volumes[month])),
                ]
            ),
        };
    }

    private static Line MonthLine(int month, CropMonth crop, FieldMonth field, double m3PerDay) =>
        new(
            YearCalendarNames.Months[month][..3],
            "(Kc ETo days - Pe) A / (Ea (1 - LR))",
            Invariant(
                $"{field.Says}: ETo {crop.ReferenceMmPerDay:0.00}; Kc {crop.Coefficient:0.00} on {crop.SeasonDays} days: crop {crop.CropMmPerDay:0.00}, rain {crop.RainMmPerDay:0.00}, net {crop.NetMmPerDay:0.00} mm/d"
            ),
            m3PerDay,
            "m3/d",
            Method,
            "FAO-56"
        );

    private static double VolumeM3PerDay(double netMm, double areaM2, double reachingShare, double leachingShare) =>
        CropWater.VolumeM3PerDay(CropWater.GrossMmPerDay(netMm, reachingShare, leachingShare), areaM2);

    private static string DayOf(int index)
    {
        var day = new DateOnly(Sun.YearCalendar.Year, 1, 1).AddDays(index);
        return Invariant($"{day:d MMM}");
    }
}
