using Shaduf.Parts;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>
/// How the removable side of a frame is held: under the frame two pieces of angle stand back to back, one welded to what the
/// side meets and one to the side, with two bolts through both, so that nothing stands in the way of the modules.
/// </summary>
public static class RemovableSide
{
    /// <summary>Role of the lugs.</summary>
    public const string LugRole = "lug of the removable side";

    /// <summary>Their mark.</summary>
    public const string LugMark = "S2";

    /// <summary>Length of a lug [mm]: past the end of the side's flat leg, which is cut back, and 60 mm along it; common practice, no source.</summary>
    /// <param name="channel">The channel.</param>
    public static double LugMm(SlideInChannel channel) =>
        10 * Math.Ceiling((channel.WebMm + channel.CutBackMm + 60) / 10);

    /// <summary>Distance of its bolts [mm].</summary>
    public const double SpacingMm = 30;

    /// <summary>Diameter of a bolt [mm].</summary>
    public const double BoltMm = 10;

    /// <summary>Diameter of a hole [mm] (EN 1090-2: 1 mm wider up to M14; from memory).</summary>
    public const double HoleMm = BoltMm + 1;

    /// <summary>Name of its joints.</summary>
    internal const string JointName = "removable side";

    /// <summary>Name of the welds of the lugs.</summary>
    public const string WeldName = "lugs to the removable side and what it meets";

    private const int JointBolts = 2;

    /// <summary>From the heel of a lug to the middle of its holes [mm].</summary>
    /// <param name="angle">The angle that it is cut from.</param>
    public static double GaugeMm(Section angle) => Math.Round(angle.SideMm * 0.6);

    /// <summary>The lugs, two at each joint: first the one on what the side meets.</summary>
    internal static IEnumerable<Part> Lugs(
        RackSteel steel,
        (Section Angle, SlideInChannel Channel) size,
        (double LengthMm, double DepthMm) plane
    )
    {
        var (setting, angle, leg, lugMm) = (steel.Setting, size.Angle, size.Angle.SideMm, LugMm(size.Channel));
        foreach (var joint in steel.Skeleton.Joints.Where(joint => joint.Name == JointName))
        {
            var middle = Math.Max(lugMm / 2, Math.Min(plane.DepthMm - (lugMm / 2), setting.SlopeMm(joint.AtFirst)));
            foreach (var side in new[] { -1, 1 })
            {
                var x = plane.LengthMm - leg + (side * leg / 2);
                yield return Part.Straight(
                    LugMark,
                    LugRole,
                    angle,
                    setting.OnSlope(x, middle - (lugMm / 2), -leg / 2),
                    setting.OnSlope(x, middle + (lugMm / 2), -leg / 2)
                ) with
                {
                    Work = Invariant(
                        $"2 holes {HoleMm:0} in one leg, {SpacingMm:0} apart, {GaugeMm(angle):0} from the heel"
                    ),
                };
            }
        }
    }

    /// <summary>The welds of the lugs: two runs of 40 mm on each.</summary>
    internal static Seam LugWelds(int joints) => new(WeldName, RackSteel.WeldLegMm, 40, 2 * 2 * joints);

    /// <summary>The bolts.</summary>
    internal static Fixing Bolts(RackSteel steel)
    {
        var joints = steel.Skeleton.Joints.Count(joint => joint.Name == JointName);
        return new(
            Invariant($"bolt M{BoltMm:0} x 30 galvanised, with nut and two washers"),
            Invariant($"two at each of {joints} joints of the removable side F3, through its lugs {LugMark}"),
            JointBolts * joints
        );
    }
}
