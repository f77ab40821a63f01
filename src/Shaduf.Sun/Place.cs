namespace Shaduf.Sun;

/// <summary>Where the site lies.</summary>
/// <param name="LatitudeDeg">Latitude [deg], north positive, -90 to 90.</param>
/// <param name="LongitudeDeg">Longitude [deg], east positive, -180 to 180.</param>
/// <param name="ElevationM">Height above sea level [m], -450 to 6000.</param>
/// <param name="UtcOffsetH">Local standard time less UTC [h], -12 to 14.</param>
public sealed record Place(double LatitudeDeg, double LongitudeDeg, double ElevationM, double UtcOffsetH);
