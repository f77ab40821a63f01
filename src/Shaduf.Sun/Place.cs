using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Where the site lies.</summary>
/// <param name="LatitudeDeg">Latitude [deg], north positive, -90 to 90.</param>
/// <param name="LongitudeDeg">Longitude [deg], east positive, -180 to 180.</param>
/// <param name="ElevationM">Height above sea level [m], -450 to 6000.</param>
/// <param name="UtcOffsetH">Local standard time less UTC [h], -12 to 14.</param>
public sealed record Place(double LatitudeDeg, double LongitudeDeg, double ElevationM, double UtcOffsetH)
{
    internal void Require()
    {
        Within.Require(LatitudeDeg, -90, 90, "deg");
        Within.Require(LongitudeDeg, -180, 180, "deg");
        Within.Require(ElevationM, -450, 6000, "m");
        Within.Require(UtcOffsetH, -12, 14, "h");
    }
}
