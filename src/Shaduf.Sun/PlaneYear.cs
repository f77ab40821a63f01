using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>A year of irradiance on a fixed plane.</summary>
public static class PlaneYear
{
    /// <summary>Irradiance of every hour on a plane with a free horizon, by <see cref="Transposition.HayDavies"/>.</summary>
    /// <param name="year">The weather.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="albedoShare">Share that the ground throws back, 0 to 1.</param>
    /// <returns>Irradiance on the plane [W/m2], 8,760 values.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <source>Hay, Davies 1980, in Duffie, Beckman, Solar Engineering of Thermal Processes, section 2.16</source>
    public static ImmutableArray<double> HayDaviesWPerM2(WeatherYear year, PlaneFacing plane, double albedoShare)
    {
        Within.RequireCount(year.GlobalWPerM2.Length, YearCalendar.HourCount, YearCalendar.HourCount);
        var laid = plane.Laid();
        var planeWPerM2 = new double[YearCalendar.HourCount];
        for (var hour = 0; hour < planeWPerM2.Length; hour++)
        {
            var sky = new SkyMoment(
                year.GlobalWPerM2[hour],
                year.DirectNormalWPerM2[hour],
                year.DiffuseWPerM2[hour],
                year.ExtraterrestrialNormalWPerM2[hour]
            );
            if (sky is { GlobalWPerM2: 0, DirectNormalWPerM2: 0, DiffuseWPerM2: 0 })
            {
                continue;
            }

            var sun = new SunAngles(year.SunZenithDeg[hour], year.SunAzimuthDeg[hour]);
            planeWPerM2[hour] = Transposition.HayDaviesLaid(sky, sun, laid, albedoShare).TotalWPerM2;
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(planeWPerM2);
    }
}
