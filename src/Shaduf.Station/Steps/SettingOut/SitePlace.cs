using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>A point of the site, east and north of the middle of the front rack's low edge.</summary>
/// <param name="EastM">To the east [m].</param>
/// <param name="NorthM">To the north [m].</param>
public readonly record struct SitePlace(double EastM, double NorthM)
{
    /// <summary>A point by compass and tape.</summary>
    /// <param name="bearingDeg">Direction, clockwise from true north [deg].</param>
    /// <param name="distanceM">Distance [m].</param>
    public static SitePlace By(double bearingDeg, double distanceM)
    {
        var (sin, cos) = Math.SinCos(bearingDeg * Math.PI / 180);
        return new(distanceM * sin, distanceM * cos);
    }
}

/// <summary>How the racks lie on the site.</summary>
/// <param name="AzimuthDeg">Direction to which the modules look, clockwise from true north [deg].</param>
/// <param name="LengthM">A rack along its row [m].</param>
public sealed record RackBearing(double AzimuthDeg, double LengthM)
{
    /// <summary>Bearing of the row, from its left to its right end as seen from the low edge [deg], 0 to 360.</summary>
    public double RowDeg => (AzimuthDeg + 270) % 360;

    /// <summary>A place of the racks' field on the site.</summary>
    /// <param name="place">x along the row from its left end, y from the low edge of the first rack [m].</param>
    /// <returns>The point.</returns>
    public SitePlace At(GroundPlace place)
    {
        var (sin, cos) = Math.SinCos(AzimuthDeg * Math.PI / 180);
        var along = place.XM - (LengthM / 2);
        return new((-cos * along) - (sin * place.YM), (sin * along) - (cos * place.YM));
    }

    /// <summary>A point of the site in the racks' field.</summary>
    /// <param name="place">The point.</param>
    /// <returns>x along the row from its left end, y from the low edge of the first rack [m].</returns>
    public GroundPlace InField(SitePlace place)
    {
        var (sin, cos) = Math.SinCos(AzimuthDeg * Math.PI / 180);
        return new(
            (LengthM / 2) - (cos * place.EastM) + (sin * place.NorthM),
            -(sin * place.EastM) - (cos * place.NorthM)
        );
    }
}
