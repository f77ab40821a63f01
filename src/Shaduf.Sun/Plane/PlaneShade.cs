using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>What the skyline and what stands near leave of the light on a plane.</summary>
/// <param name="BeamPastHorizonShare">Share of the beam over the skyline by hour, 8,760 values; empty for all of it.</param>
/// <param name="BeamPastNearShare">Share of that beam past what stands near by hour, 8,760 values; empty for all of it.</param>
/// <param name="SkyPastHorizonShare">Share of the sky's light over the skyline.</param>
/// <param name="SkyPastNearShare">Share of that light past what stands near.</param>
public sealed record PlaneShade(
    ImmutableArray<double> BeamPastHorizonShare,
    ImmutableArray<double> BeamPastNearShare,
    double SkyPastHorizonShare,
    double SkyPastNearShare
)
{
    // Instants in an hour at which the sun is looked at.
    private const int InstantCount = 5;

    /// <summary>Nothing in the way.</summary>
    public static PlaneShade None { get; } = new([], [], 1, 1);

    /// <summary>Follows the sun through the year, five instants an hour.</summary>
    /// <param name="sun">The sun over the site.</param>
    /// <param name="plane">The plane.</param>
    /// <param name="horizon">The skyline.</param>
    /// <param name="near">What stands near; null for nothing.</param>
    /// <returns>The shares kept.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The plane is outside its ranges.</exception>
    /// <source>Straight rays; refraction by <see cref="Refraction.NrelDeg"/> at 1010 hPa and 10 degC</source>
    public static PlaneShade Of(YearSun sun, PlaneFacing plane, Horizon horizon, NearShade? near)
    {
        if (horizon.IsFree && near is null)
        {
            return None;
        }

        var laid = plane.Laid();
        var pastHorizon = new double[YearCalendar.HourCount];
        var pastNear = new double[YearCalendar.HourCount];
        for (var hour = 0; hour < YearCalendar.HourCount; hour++)
        {
            (pastHorizon[hour], pastNear[hour]) = Hour(sun, laid, horizon, near, hour);
        }

        return new(
            ImmutableCollectionsMarshal.AsImmutableArray(pastHorizon),
            ImmutableCollectionsMarshal.AsImmutableArray(pastNear),
            horizon.SkyKeptShare(plane),
            near?.SkyKeptShare ?? 1
        );
    }

    // Instants weigh as much as the beam on the plane does then; with none, nothing is lost.
    private static (double PastHorizon, double PastNear) Hour(
        YearSun sun,
        LaidPlane plane,
        Horizon horizon,
        NearShade? near,
        int hour
    )
    {
        var (all, over, past) = (0.0, 0.0, 0.0);
        for (var i = 0; i < InstantCount; i++)
        {
            var direction = sun.DirectionAt(hour + ((i + 0.5) / InstantCount));
            var weight = plane.Cosine(direction);
            if (direction.UpShare <= 0 || weight <= 0)
            {
                continue;
            }

            var angles = direction.Angles;
            all += weight;
            var elevationDeg = 90 - angles.ZenithDeg;
            if (elevationDeg + Refraction.NrelDeg(elevationDeg, 1010, 10) >= horizon.ElevationDeg(angles.AzimuthDeg))
            {
                over += weight;
                past += weight * (near?.BeamKeptShare(angles) ?? 1);
            }
        }

        return (all > 0 ? over / all : 1, over > 0 ? past / over : 1);
    }
}
