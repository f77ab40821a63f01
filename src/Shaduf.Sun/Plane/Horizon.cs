using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>A point of the skyline.</summary>
/// <param name="AzimuthDeg">Direction, clockwise from true north [deg], 0 to 360.</param>
/// <param name="ElevationDeg">Height of the skyline there [deg], 0 to 80.</param>
public readonly record struct HorizonPoint(double AzimuthDeg, double ElevationDeg);

/// <summary>The skyline of hills, houses and trees around a site, straight between its points.</summary>
public sealed class Horizon
{
    private readonly HorizonPoint[] points;

    /// <summary>A skyline.</summary>
    /// <param name="points">Its points in any order, each direction once; one point is the same height all round.</param>
    /// <exception cref="ArgumentOutOfRangeException">A point is outside its ranges, or a direction is given twice.</exception>
    public Horizon(IReadOnlyList<HorizonPoint> points)
    {
        foreach (var point in points)
        {
            Within.Require(point.AzimuthDeg, 0, 360, "deg");
            Within.Require(point.ElevationDeg, 0, 80, "deg");
        }

        this.points = [.. points.OrderBy(point => point.AzimuthDeg % 360)];
        for (var i = 1; i < this.points.Length; i++)
        {
            var gapDeg = (this.points[i].AzimuthDeg % 360) - (this.points[i - 1].AzimuthDeg % 360);
            Within.Require(gapDeg, 1e-9, 360, "deg", "the turn between two points of the skyline");
        }
    }

    /// <summary>A free horizon.</summary>
    public static Horizon Free { get; } = new([]);

    /// <summary>Whether nothing stands above the level.</summary>
    public bool IsFree => points.All(point => point.ElevationDeg == 0);

    /// <summary>Height of the skyline in a direction.</summary>
    /// <param name="azimuthDeg">Direction, clockwise from true north [deg], 0 to 360.</param>
    /// <returns>Elevation [deg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The direction is outside its range.</exception>
    public double ElevationDeg(double azimuthDeg)
    {
        Within.Require(azimuthDeg, 0, 360, "deg");
        if (points.Length < 2)
        {
            return points.Length == 0 ? 0 : points[0].ElevationDeg;
        }

        var at = Array.FindLastIndex(points, point => point.AzimuthDeg % 360 <= azimuthDeg % 360);
        var (left, right) = (points[at < 0 ? ^1 : at], points[(at + 1) % points.Length]);
        var gapDeg = Angle.Turn(right.AzimuthDeg - left.AzimuthDeg);
        var pastDeg = Angle.Turn(azimuthDeg - left.AzimuthDeg);
        return left.ElevationDeg + ((right.ElevationDeg - left.ElevationDeg) * pastDeg / gapDeg);
    }

    /// <summary>Share of an evenly bright sky's light on a plane that comes in above the skyline.</summary>
    /// <param name="plane">The plane.</param>
    /// <returns>Share, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The plane is outside its ranges.</exception>
    public double SkyKeptShare(PlaneFacing plane)
    {
        plane.Require();
        if (IsFree)
        {
            return 1;
        }

        var (above, all) = (0.0, 0.0);
        for (var azimuthDeg = 0.5; azimuthDeg < 360; azimuthDeg++)
        {
            var towards = Angle.Tan(Math.Min(plane.TiltDeg, 89.999)) * Angle.Cos(azimuthDeg - plane.AzimuthDeg);

            // Below this elevation the sky lies behind the plane.
            var lowestRad = towards < 0 ? Math.Atan(-towards) : 0;
            var skylineRad = Math.Max(lowestRad, Angle.ToRad(ElevationDeg(azimuthDeg)));
            all += Strip(towards, Math.PI / 2) - Strip(towards, lowestRad);
            above += Strip(towards, Math.PI / 2) - Strip(towards, skylineRad);
        }

        return above / all;
    }

    // Integral over elevation of cos(incidence) x cos(elevation), divided by the cosine of the slope.
    private static double Strip(double towards, double elevationRad)
    {
        var (sine, cosine) = Math.SinCos(elevationRad);
        return (sine * sine / 2) + (towards * (elevationRad + (sine * cosine)) / 2);
    }
}
