using Shaduf.Power;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A point that is to be protected.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="HeightM">Its height above ground [m].</param>
public sealed record GuardPoint(string Name, GroundPlace Place, double HeightM);

/// <summary>
/// The racks on the ground, one behind the other: x along the row from its left end as seen from the low edge, y away
/// from the low edge of the first rack, which is the one nearest to the equator's side when the modules face it.
/// </summary>
/// <param name="LengthM">Along the row [m].</param>
/// <param name="RackM">One rack across, level [m].</param>
/// <param name="PitchM">From rack to rack [m].</param>
/// <param name="RackCount">Racks.</param>
/// <param name="LowM">Upper side of the low edge above ground [m].</param>
/// <param name="TopM">Top edge above ground [m].</param>
public sealed record GuardField(double LengthM, double RackM, double PitchM, int RackCount, double LowM, double TopM)
{
    /// <summary>
    /// From a top edge to the poles behind it [m]: room to walk, and at noon no shade on the rack when the sun stands on
    /// the wrong side between the tropics; common practice, no source.
    /// </summary>
    public const double BehindM = 1.5;

    // The edges are looked at in these parts of their length: between two rods their middle is worse off than their ends.
    private static readonly double[] LookedAt = [0, 0.25, 0.5, 0.75, 1];

    /// <summary>The field of a station's racks.</summary>
    /// <param name="rack">The racks.</param>
    /// <returns>The field.</returns>
    public static GuardField Of(Rack rack)
    {
        var rad = rack.Setting.TiltDeg * Math.PI / 180;
        var slopeM = rack.Size.DepthMm / 1000;

        // Three times the rise of the plane keeps the sun at 18 deg of elevation free of shade.
        var wayM = Math.Max(2, 3 * slopeM * Math.Sin(rad));
        return new(
            rack.Size.LengthMm / 1000,
            slopeM * Math.Cos(rad),
            (slopeM * Math.Cos(rad)) + wayM,
            rack.Grid.RackCount,
            rack.Setting.OnSlope(0, 0, rack.Size.DeckMm).ZMm / 1000,
            rack.Setting.OnSlope(0, rack.Size.DepthMm, rack.Size.DeckMm).ZMm / 1000
        );
    }

    /// <summary>All racks across, with the ways between them [m].</summary>
    public double DepthM => ((RackCount - 1) * PitchM) + RackM;

    /// <summary>Places for poles behind the top edges, evenly along the row.</summary>
    /// <param name="count">Poles in a line.</param>
    /// <param name="everyRack">Behind every rack, or only behind the last one.</param>
    /// <returns>The places.</returns>
    public IReadOnlyList<GroundPlace> Behind(int count, bool everyRack) =>
        [
            .. from rack in everyRack ? Enumerable.Range(0, RackCount) : [RackCount - 1]
            from i in Enumerable.Range(0, count)
            select new GroundPlace((i + 0.5) / count * LengthM, (rack * PitchM) + RackM + BehindM),
        ];

    /// <summary>Corners and edges of all racks.</summary>
    public IReadOnlyList<GuardPoint> Edges =>
        [
            .. from rack in Enumerable.Range(0, RackCount)
            from top in new[] { false, true }
            from share in LookedAt
            select new GuardPoint(
                Invariant($"rack {rack + 1}, {(top ? "top" : "low")} edge, {EndOf(share)}"),
                new(share * LengthM, (rack * PitchM) + (top ? RackM : 0)),
                top ? TopM : LowM
            ),
        ];

    /// <summary>Height of a rack's plane at a place [m]; null where no rack is.</summary>
    /// <param name="place">The place.</param>
    /// <returns>Height [m].</returns>
    public double? PlaneM(GroundPlace place)
    {
        var acrossM = place.YM % PitchM;
        return place.XM >= 0 && place.XM <= LengthM && place.YM >= 0 && place.YM <= DepthM && acrossM <= RackM
            ? LowM + (acrossM * RiseRatio)
            : null;
    }

    /// <summary>Whether a rack stands between a lamp and a point.</summary>
    /// <param name="lamp">The lamp.</param>
    /// <param name="place">The point's place.</param>
    /// <param name="atM">The point's height [m].</param>
    /// <returns>True when the point lies in shade.</returns>
    public bool Hides(GuardPoint lamp, GroundPlace place, double atM)
    {
        for (var rack = 0; rack < RackCount; rack++)
        {
            // Heights above the rack's plane, drawn out beyond its edges, at both ends of the ray.
            var nearM = rack * PitchM;
            var lampM = lamp.HeightM - LowM - ((lamp.Place.YM - nearM) * RiseRatio);
            var pointM = atM - LowM - ((place.YM - nearM) * RiseRatio);
            var isOnPlane = Math.Abs(pointM) < 1e-9;
            if (isOnPlane ? lampM > 0 : lampM * pointM >= 0)
            {
                continue;
            }

            var share = isOnPlane ? 1 : lampM / (lampM - pointM);
            var acrossM = lamp.Place.YM + (share * (place.YM - lamp.Place.YM)) - nearM;
            var alongM = lamp.Place.XM + (share * (place.XM - lamp.Place.XM));
            if (acrossM >= 0 && acrossM <= RackM && alongM >= 0 && alongM <= LengthM)
            {
                return true;
            }
        }

        return false;
    }

    private double RiseRatio => (TopM - LowM) / RackM;

    private static string EndOf(double share) =>
        share switch
        {
            0 => "left end",
            1 => "right end",
            0.5 => "middle",
            _ => "quarter",
        };
}
