using Shaduf.Shape;

namespace Shaduf.Station;

/// <summary>The ground under a rack, a plane through the origin.</summary>
/// <param name="AlongShare">Fall along the row, to the right as seen from the low edge; below 0 where it rises.</param>
/// <param name="BackShare">Fall from the low edge to the high edge; below 0 where it rises.</param>
public readonly record struct RackGround(double AlongShare, double BackShare)
{
    /// <summary>Level of the ground under a point [mm].</summary>
    /// <param name="xMm">Along the row [mm].</param>
    /// <param name="yMm">Away from the low edge [mm].</param>
    public double ZMm(double xMm, double yMm) => (-AlongShare * xMm) - (BackShare * yMm);
}

/// <summary>Tilt, heights and clearances of a rack.</summary>
/// <param name="TiltDeg">Tilt [deg].</param>
/// <param name="LowEdgeMm">Height of the low edge above the ground at its left end, the origin of heights [mm].</param>
/// <param name="RowClearanceMm">Free length along each row [mm].</param>
/// <param name="EmbedMm">Depth of the column's foot below ground [mm].</param>
/// <param name="LeastJointMm">Lowest place of a strut on the column above ground [mm].</param>
public sealed record RackSetting(
    double TiltDeg,
    double LowEdgeMm,
    double RowClearanceMm,
    double EmbedMm,
    double LeastJointMm
)
{
    /// <summary>The ground.</summary>
    public RackGround Ground { get; init; }

    /// <summary>A point of the rack by its place on the plane.</summary>
    /// <param name="xMm">Along the row [mm].</param>
    /// <param name="slopeMm">Up the slope from the low edge [mm].</param>
    /// <param name="offMm">Square off the upper side of the cross tubes, upwards [mm].</param>
    /// <returns>The point.</returns>
    public Point OnSlope(double xMm, double slopeMm, double offMm)
    {
        var (sin, cos) = Math.SinCos(TiltDeg * Math.PI / 180);
        return new(xMm, (slopeMm * cos) - (offMm * sin), LowEdgeMm + (slopeMm * sin) + (offMm * cos));
    }

    /// <summary>Direction up the slope, length 1.</summary>
    public Point UpSlope => OnSlope(0, 1, 0) - OnSlope(0, 0, 0);

    /// <summary>Direction off the plane, upwards, length 1.</summary>
    public Point OffPlane => OnSlope(0, 0, 1) - OnSlope(0, 0, 0);

    /// <summary>How far up the slope a point lies [mm].</summary>
    /// <param name="at">The point.</param>
    public double SlopeMm(Point at) => UpSlope.DotMm2(at - OnSlope(0, 0, 0));

    /// <summary>How far a point lies above the ground under it [mm].</summary>
    /// <param name="at">The point.</param>
    public double AboveGroundMm(Point at) => at.ZMm - Ground.ZMm(at.XMm, at.YMm);

    /// <summary>The setting with the plane so high that no corner of it is nearer to the ground than asked for.</summary>
    /// <param name="clearMm">Least height above the ground [mm].</param>
    /// <param name="lengthMm">Length along the row [mm].</param>
    /// <param name="depthMm">Depth up the slope [mm].</param>
    /// <returns>The setting.</returns>
    public RackSetting ClearOfGround(double clearMm, double lengthMm, double depthMm)
    {
        var lowest = new[]
        {
            OnSlope(0, 0, 0),
            OnSlope(lengthMm, 0, 0),
            OnSlope(0, depthMm, 0),
            OnSlope(lengthMm, depthMm, 0),
        }.Min(AboveGroundMm);
        return this with { LowEdgeMm = LowEdgeMm + clearMm - lowest };
    }
}
