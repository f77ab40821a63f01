using Shaduf.Station;
using Shaduf.Sun;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The charts of the weather that a station is sized on.</summary>
public static class WeatherCharts
{
    /// <summary>Light of every day of the year on the level, and the light above the air.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture.</returns>
    public static Scene Days(Design design, PaperSize size)
    {
        var year = design.Sky.Year;
        var above = DayKWhPerM2(hour =>
            year.ExtraterrestrialNormalWPerM2[hour]
            * Math.Max(0, Math.Cos(double.DegreesToRadians(year.SunZenithDeg[hour])))
        );
        return new LineChart(
            new("day of the year")
            {
                From = 0,
                To = 365,
                Step = 30,
            },
            new("light of the day, kWh/m2") { From = 0 },
            [new("on the level ground", DayKWhPerM2(hour => year.GlobalWPerM2[hour])), new("above the air", above)]
        ).ToScene(size, "light of every day");
    }

    /// <summary>Days of the month whose generated days are farthest from the published spread, with that spread.</summary>
    /// <param name="days">The month's days.</param>
    /// <param name="size">Size of the picture.</param>
    /// <returns>The picture.</returns>
    public static Scene Spread(DaySpread days, PaperSize size)
    {
        var drawn = days
            .DayRatios.Order()
            .Select((ratio, i) => new ChartPoint(ratio, 100 * (i + 1.0) / days.DayRatios.Count))
            .ToList();
        var published = Enumerable
            .Range(0, 101)
            .Select(i => i / 100.0)
            .Select(ratio => new ChartPoint(ratio, 100 * ClearnessDistribution.BendtShare(ratio, days.MeanRatio)))
            .ToList();
        return new LineChart(
            new("clearness of a day: its light over the light above the air")
            {
                From = 0,
                To = 1,
                Step = 0.1,
            },
            new("days no brighter, %")
            {
                From = 0,
                To = 100,
                Step = 25,
            },
            [new("days drawn", drawn), new("published spread", published)]
        ).ToScene(size, Invariant($"days of {YearCalendarNames.Months[days.Month]}"));
    }

    private static List<ChartPoint> DayKWhPerM2(Func<int, double> hourWPerM2) =>
        [
            .. Enumerable
                .Range(0, YearCalendar.HourCount / 24)
                .Select(day => new ChartPoint(day + 0.5, Enumerable.Range(24 * day, 24).Sum(hourWPerM2) / 1000)),
        ];
}
