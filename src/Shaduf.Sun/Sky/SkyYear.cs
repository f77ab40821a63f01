using System.Collections.Immutable;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>One hour with light, ready for any plane.</summary>
/// <param name="Hour">Hour of the year.</param>
/// <param name="Sun">Where the sun stands.</param>
/// <param name="SunWPerM2">Beam and the glow around the sun, normal to it.</param>
/// <param name="EvenWPerM2">Diffuse light from all over the sky, on the horizontal.</param>
/// <param name="RimWPerM2">Light along the horizon, on an upright plane; below zero where it is darker there.</param>
/// <param name="GlobalWPerM2">Global irradiance on the horizontal.</param>
internal readonly record struct SkyHour(
    int Hour,
    SunDirection Sun,
    double SunWPerM2,
    double EvenWPerM2,
    double RimWPerM2,
    double GlobalWPerM2
);

/// <summary>
/// A weather year ready for any plane: what of the light of each hour comes from the sun, from all over the sky and along
/// the horizon, by the sky of Perez and others. Worked out once; the planes that are tried cost little then.
/// </summary>
public sealed class SkyYear
{
    private SkyYear(SkyHour[] hours, ImmutableArray<double> globalWPerM2)
    {
        Hours = hours;
        GlobalWPerM2 = globalWPerM2;
    }

    /// <summary>Global irradiance on the horizontal, 8,760 values [W/m2].</summary>
    public ImmutableArray<double> GlobalWPerM2 { get; }

    internal ReadOnlyMemory<SkyHour> Hours { get; }

    /// <summary>Prepares a year.</summary>
    /// <param name="year">The weather.</param>
    /// <param name="set">The coefficients.</param>
    /// <returns>The year, its hours without light left out.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The year is not whole, or a figure is outside its range.</exception>
    /// <source>Perez, Ineichen, Seals, Michalsky, Stewart, Solar Energy 44, 1990</source>
    public static SkyYear Of(WeatherYear year, PerezSet set)
    {
        Within.RequireCount(year.GlobalWPerM2.Length, YearCalendar.HourCount, YearCalendar.HourCount);
        var hours = new SkyHour[LitCount(year)];
        var count = 0;
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            if (IsLit(year, hour))
            {
                var moment = new SkyMoment(
                    year.GlobalWPerM2[hour],
                    year.DirectNormalWPerM2[hour],
                    year.DiffuseWPerM2[hour],
                    year.ExtraterrestrialNormalWPerM2[hour]
                );
                hours[count++] = Ready(hour, moment, new(year.SunZenithDeg[hour], year.SunAzimuthDeg[hour]), set);
            }
        }

        return new(hours, year.GlobalWPerM2);
    }

    private static int LitCount(WeatherYear year)
    {
        var count = 0;
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            count += IsLit(year, hour) ? 1 : 0;
        }

        return count;
    }

    // Not 'above zero': a figure that is NaN must go on to be refused.
    private static bool IsLit(WeatherYear year, int hour) =>
        !(year.GlobalWPerM2[hour] == 0 && year.DirectNormalWPerM2[hour] == 0 && year.DiffuseWPerM2[hour] == 0);

    private static SkyHour Ready(int hour, SkyMoment moment, SunAngles angles, PerezSet set)
    {
        moment.Require();
        var sun = SunDirection.Of(angles);
        if (sun.UpShare <= 0)
        {
            return new(hour, sun, 0, moment.DiffuseWPerM2, 0, moment.GlobalWPerM2);
        }

        var glow = set.Glow(moment, angles.ZenithDeg);
        var aroundWPerM2 = moment.DiffuseWPerM2 * glow.AroundSunShare / Math.Max(PerezSet.LowestCosine, sun.UpShare);
        return new(
            hour,
            sun,
            moment.DirectNormalWPerM2 + aroundWPerM2,
            moment.DiffuseWPerM2 * (1 - glow.AroundSunShare),
            moment.DiffuseWPerM2 * glow.HorizonShare,
            moment.GlobalWPerM2
        );
    }
}
