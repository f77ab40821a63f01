using System.Runtime.CompilerServices;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>A spot on the site, from a point of its choice.</summary>
/// <param name="EastM">To the east [m].</param>
/// <param name="NorthM">To true north [m].</param>
/// <param name="UpM">Above the ground there [m].</param>
public readonly record struct Spot(double EastM, double NorthM, double UpM)
{
    /// <summary>The way from one spot to another.</summary>
    /// <param name="to">Where it ends.</param>
    /// <param name="from">Where it starts.</param>
    /// <returns>The way [m].</returns>
    public static Spot operator -(Spot to, Spot from) =>
        new(to.EastM - from.EastM, to.NorthM - from.NorthM, to.UpM - from.UpM);

    /// <summary>A spot reached by a way.</summary>
    /// <param name="from">Where it starts.</param>
    /// <param name="way">The way.</param>
    /// <returns>The spot [m].</returns>
    public static Spot operator +(Spot from, Spot way) =>
        new(from.EastM + way.EastM, from.NorthM + way.NorthM, from.UpM + way.UpM);

    /// <summary>A way made longer or shorter.</summary>
    /// <param name="way">The way.</param>
    /// <param name="factor">By how much.</param>
    /// <returns>The way [m].</returns>
    public static Spot operator *(Spot way, double factor) =>
        new(way.EastM * factor, way.NorthM * factor, way.UpM * factor);
}

/// <summary>Something flat that stands in the light: a parallelogram.</summary>
/// <param name="Corner">One corner.</param>
/// <param name="Along">From it along one side [m].</param>
/// <param name="Upwards">From it along the other side [m].</param>
/// <param name="PassedShare">Share of the light that comes through: 0 for a wall, near 1 for thin mesh.</param>
public sealed record Screen(Spot Corner, Spot Along, Spot Upwards, double PassedShare)
{
    /// <summary>Something upright and as wide from all sides, seen from the spot that it shades.</summary>
    /// <param name="foot">Its middle on the ground.</param>
    /// <param name="from">The spot.</param>
    /// <param name="widthM">Its width [m].</param>
    /// <param name="bottomM">Height of its lower end [m].</param>
    /// <param name="topM">Height of its top [m].</param>
    /// <returns>The screen, square to the line of sight.</returns>
    public static Screen Facing(Spot foot, Spot from, double widthM, double bottomM, double topM)
    {
        var (east, north) = (foot.EastM - from.EastM, foot.NorthM - from.NorthM);
        var awayM = Math.Sqrt((east * east) + (north * north));
        Within.Require(awayM, 1e-6, 1e5, "m", "the distance of what stands near");
        var side = new Spot(-north / awayM, east / awayM, 0);
        return new(
            foot + (side * (-widthM / 2)) + new Spot(0, 0, bottomM - foot.UpM),
            side * widthM,
            new(0, 0, topM - bottomM),
            0
        );
    }

    /// <summary>Whether it stands between a spot and the sun.</summary>
    /// <param name="spot">The spot.</param>
    /// <param name="sun">The way to the sun.</param>
    /// <returns>True when it does.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public bool Hides(Spot spot, SunDirection sun)
    {
        // Corner + r Along + s Upwards = spot + t sun, by Cramer's rule.
        var (px, py, pz) = (
            (sun.NorthShare * Upwards.UpM) - (sun.UpShare * Upwards.NorthM),
            (sun.UpShare * Upwards.EastM) - (sun.EastShare * Upwards.UpM),
            (sun.EastShare * Upwards.NorthM) - (sun.NorthShare * Upwards.EastM)
        );
        var determinant = (Along.EastM * px) + (Along.NorthM * py) + (Along.UpM * pz);
        if (Math.Abs(determinant) < 1e-12)
        {
            return false;
        }

        var (x, y, z) = (spot.EastM - Corner.EastM, spot.NorthM - Corner.NorthM, spot.UpM - Corner.UpM);
        var r = ((x * px) + (y * py) + (z * pz)) / determinant;
        if (r is < 0 or > 1)
        {
            return false;
        }

        var (qx, qy, qz) = (
            (y * Along.UpM) - (z * Along.NorthM),
            (z * Along.EastM) - (x * Along.UpM),
            (x * Along.NorthM) - (y * Along.EastM)
        );
        var s = ((sun.EastShare * qx) + (sun.NorthShare * qy) + (sun.UpShare * qz)) / determinant;
        var t = ((Upwards.EastM * qx) + (Upwards.NorthM * qy) + (Upwards.UpM * qz)) / determinant;
        return s is >= 0 and <= 1 && t > 1e-9;
    }
}

/// <summary>
/// What stands near, as the array sees it: for each direction of the sky the share of the beam that comes through, and
/// the share of the sky's even light. The cells behind one bypass diode give what the darkest of them gives.
/// </summary>
public sealed class NearShade
{
    // The sky in steps of 3 deg.
    private const int StepDeg = 3;
    private const int AzimuthCount = 360 / StepDeg;
    private const int ElevationCount = (90 / StepDeg) + 1;

    private readonly double[] keptShares = new double[AzimuthCount * ElevationCount];

    /// <summary>Looks at the sky from the cells.</summary>
    /// <param name="plane">How they lie.</param>
    /// <param name="groups">Spots of the cells, those behind one bypass diode together.</param>
    /// <param name="screens">What stands near.</param>
    /// <exception cref="ArgumentOutOfRangeException">The plane is outside its ranges, or there is no cell.</exception>
    /// <source>
    /// Straight rays; the darkest cell of a bypass group counts for the group: common practice, no source
    /// </source>
    public NearShade(PlaneFacing plane, IReadOnlyList<IReadOnlyList<Spot>> groups, IReadOnlyList<Screen> screens)
    {
        Within.RequireCount(groups.Count, 1, int.MaxValue);
        var laid = plane.Laid();
        Spot[][] cells = [.. groups.Select(group => group.ToArray())];
        Screen[] things = [.. screens];
        var (kept, all) = (0.0, 0.0);
        for (var i = 0; i < keptShares.Length; i++)
        {
            var sun = Direction(i / ElevationCount * StepDeg, i % ElevationCount * StepDeg);
            var cosine = laid.Cosine(sun);
            var (beamShare, skyShare) = cosine > 0 ? Seen(sun, cells, things) : (1, 1);
            keptShares[i] = beamShare;
            var strip = i % ElevationCount == 0 ? 0.5 : 1;
            var weight = strip * Math.Max(0, cosine) * Math.Sqrt(1 - (sun.UpShare * sun.UpShare));
            (kept, all) = (kept + (weight * skyShare), all + weight);
        }

        SkyKeptShare = kept / all;
    }

    /// <summary>Share of an evenly bright sky's light on the plane that comes through.</summary>
    public double SkyKeptShare { get; }

    /// <summary>Share of the beam that counts from a direction.</summary>
    /// <param name="sun">Where the sun stands.</param>
    /// <returns>Share, 0 to 1; between the directions looked at, the straight line.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    public double BeamKeptShare(SunAngles sun)
    {
        Within.Require(sun.ZenithDeg, 0, 180, "deg");
        Within.Require(sun.AzimuthDeg, 0, 360, "deg");
        var (azimuth, elevation) = (sun.AzimuthDeg / StepDeg, Math.Max(0, 90 - sun.ZenithDeg) / StepDeg);
        var (left, low) = ((int)azimuth, Math.Min((int)elevation, ElevationCount - 2));
        var (right, up) = (azimuth - left, elevation - low);
        return ((1 - right) * At(left, low, up)) + (right * At(left + 1, low, up));
    }

    private double At(int azimuth, int low, double up)
    {
        var at = (azimuth % AzimuthCount * ElevationCount) + low;
        return ((1 - up) * keptShares[at]) + (up * keptShares[at + 1]);
    }

    // Straight up every direction is the same one.
    private static SunDirection Direction(double azimuthDeg, double elevationDeg) =>
        SunDirection.Of(new(90 - elevationDeg, azimuthDeg));

    private static (double Beam, double Sky) Seen(SunDirection sun, Spot[][] groups, Screen[] screens)
    {
        var (beam, sky, spots) = (0.0, 0.0, 0);
        foreach (var group in groups)
        {
            var darkest = 1.0;
            foreach (var spot in group)
            {
                var passed = 1.0;
                foreach (var screen in screens)
                {
                    passed *= screen.Hides(spot, sun) ? screen.PassedShare : 1;
                }

                darkest = Math.Min(darkest, passed);
                sky += passed;
                spots++;
            }

            beam += darkest;
        }

        return (beam / groups.Length, sky / spots);
    }
}
