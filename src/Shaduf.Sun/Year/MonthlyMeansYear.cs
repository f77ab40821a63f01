using System.Collections.Immutable;
using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>
/// An hourly year from twelve monthly means: one draw of a random process, not a forecast. Look at ten seeds or more
/// before a tank is sized on it.
/// </summary>
public static class MonthlyMeansYear
{
    /// <summary>
    /// Draws a year: daily clearness as a Markov chain, the months made exact, hours that scatter about their mean and keep
    /// the day's sum, direct and diffuse by Erbs, and air temperature with its daily swing.
    /// </summary>
    /// <param name="place">
    /// The site: latitude -66 to 66 (no polar day or night), UTC offset within 4 h of what the longitude says.
    /// </param>
    /// <param name="climate">Its twelve monthly means.</param>
    /// <param name="seed">Draws the year, any number; the same seed gives the same year.</param>
    /// <returns>The year.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The place is outside the ranges, there are not twelve means, or a month's clearness is not 0.05 to 0.80; the
    /// message names the month.
    /// </exception>
    /// <source>
    /// Aguiar, Collares-Pereira, Conde 1988; Aguiar, Collares-Pereira 1992; Erbs, Klein, Duffie 1982; Erbs, Klein, Beckman
    /// 1983
    /// </source>
    public static WeatherYear Generate(Place place, MonthlyClimate climate, int seed)
    {
        Require(place);
        var hours = new SunlitHour[YearCalendar.HourCount];
        var daysAboveWhPerM2 = new double[YearCalendar.HourCount / 24];
        var sun = new YearSun(place);
        for (var hour = 0; hour < hours.Length; hour++)
        {
            hours[hour] = SunlitHour.Of(sun, hour);
            daysAboveWhPerM2[YearCalendar.DayOf(hour)] += hours[hour].HorizontalWPerM2;
        }

        var monthRatios = MonthRatios(climate, daysAboveWhPerM2);
        var random = new SplitMix64(unchecked((ulong)seed));
        var dayRatios = DayRatios(monthRatios, daysAboveWhPerM2, random);
        var globalWPerM2 = new double[hours.Length];
        for (var day = 0; day < dayRatios.Length; day++)
        {
            FillDay(place, day, dayRatios[day], hours.AsSpan(day * 24, 24), globalWPerM2.AsSpan(day * 24, 24), random);
        }

        var splits = hours.Select((hour, i) => Split(globalWPerM2[i], hour)).ToArray();
        return new(
            [.. globalWPerM2],
            [.. splits.Select(split => split.DirectNormalWPerM2)],
            [.. splits.Select(split => split.DiffuseWPerM2)],
            AirDegC(place, climate, monthRatios),
            [.. hours.Select(hour => hour.Sun.ZenithDeg)],
            [.. hours.Select(hour => hour.Sun.AzimuthDeg)],
            [.. hours.Select(hour => hour.NormalWPerM2)]
        );
    }

    private static void FillDay(
        Place place,
        int day,
        double dayRatio,
        ReadOnlySpan<SunlitHour> hours,
        Span<double> globalWPerM2,
        SplitMix64 random
    )
    {
        Span<LitHour> lit = stackalloc LitHour[24];
        var count = 0;
        var equationOfTimeMin = SolarGeometry.EquationOfTimeMin(day + 1);
        for (var i = 0; i < 24; i++)
        {
            if (hours[i].HorizontalWPerM2 > 0)
            {
                var solarTimeH = SolarGeometry.SolarTimeH(i + 0.5, place, equationOfTimeMin);
                var elevationDeg = Math.Max(0, 90 - hours[i].Sun.ZenithDeg);
                lit[count++] = new(
                    elevationDeg,
                    solarTimeH - (24 * Math.Floor(solarTimeH / 24)),
                    hours[i].HorizontalWPerM2
                );
            }
        }

        var ratios = HourlyClearness.Day(dayRatio, lit[..count], random);
        var at = 0;
        for (var i = 0; i < 24; i++)
        {
            if (hours[i].HorizontalWPerM2 > 0)
            {
                globalWPerM2[i] = ratios[at++] * hours[i].HorizontalWPerM2;
            }
        }
    }

    private static SplitIrradiance Split(double globalWPerM2, SunlitHour hour) =>
        globalWPerM2 > 0 ? Decomposition.ErbsSplit(globalWPerM2, hour.Sun.ZenithDeg, hour.NormalWPerM2) : default;

    private static void Require(Place place)
    {
        Within.Require(place.LatitudeDeg, -66, 66, "deg");
        place.Require();

        // An offset of the wrong sign would put noon into the night; the date line makes 24 h of it none.
        var offsetFromSunH = Angle.HalfTurn((15 * place.UtcOffsetH) - place.LongitudeDeg) / 15;
        Within.Require(offsetFromSunH, -4, 4, "h", "UtcOffsetH less a 15th of LongitudeDeg");
    }

    private static double[] MonthRatios(MonthlyClimate climate, double[] daysAboveWhPerM2)
    {
        Within.RequireCount(climate.GlobalKWhPerM2Day.Count, 12, 12);
        Within.RequireCount(climate.SwingK.Count, 12, 12);
        foreach (var swingK in climate.SwingK)
        {
            Within.Require(swingK ?? 0, 0, 30, "K");
        }

        var ratios = new double[12];
        for (var month = 0; month < 12; month++)
        {
            var aboveKWhPerM2Day = DaysOf(month, daysAboveWhPerM2).ToArray().Average() / 1000;
            ratios[month] = climate.GlobalKWhPerM2Day[month] / aboveKWhPerM2Day;
            Within.Require(
                ratios[month],
                DailyClearness.LowestMeanRatio,
                DailyClearness.HighestMeanRatio,
                "of the extraterrestrial irradiation",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"the global irradiation of {MonthName(month)}, {climate.GlobalKWhPerM2Day[month]} kWh/m2 a day,"
                )
            );
        }

        return ratios;
    }

    private static double[] DayRatios(double[] monthRatios, double[] daysAboveWhPerM2, SplitMix64 random)
    {
        var days = new List<double>(daysAboveWhPerM2.Length);
        var dayBeforeRatio = monthRatios[^1];
        for (var month = 0; month < 12; month++)
        {
            days.AddRange(
                DailyClearness.Month(monthRatios[month], dayBeforeRatio, DaysOf(month, daysAboveWhPerM2), random)
            );
            dayBeforeRatio = days[^1];
        }

        return [.. days];
    }

    private static ImmutableArray<double> AirDegC(Place place, MonthlyClimate climate, double[] monthRatios)
    {
        var dayMeansDegC = AirTemperature.DailyMeansDegC(climate.AirDegC);
        return
        [
            .. Enumerable
                .Range(0, YearCalendar.HourCount)
                .Select(hour =>
                {
                    var day = YearCalendar.DayOf(hour);
                    var solarTimeH = SolarGeometry.SolarTimeH(
                        (hour % 24) + 0.5,
                        place,
                        SolarGeometry.EquationOfTimeMin(day + 1)
                    );
                    var month = YearCalendar.MonthOf(hour);
                    var swingK = climate.SwingK[month] ?? AirTemperature.DailySwingK(monthRatios[month]);
                    return dayMeansDegC[day] + (swingK * AirTemperature.DailyShapeShare(solarTimeH));
                }),
        ];
    }

    private static ReadOnlySpan<double> DaysOf(int month, double[] days) =>
        days.AsSpan(YearCalendar.FirstDays[month], YearCalendar.DaysInMonth[month]);

    private static string MonthName(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month + 1);
}
