using Shaduf.Parts;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Welds and bolts of a stand.</summary>
internal static class StandWelds
{
    // Laid stitches of the deck plate on the joists: 50 mm in each 300 mm; common practice, no source.
    private const double StitchMm = 50;
    private const double StitchPitchMm = 300;

    /// <summary>The bolts.</summary>
    /// <param name="steel">The stand's steel.</param>
    public static Fixing Bolts(RackSteel steel)
    {
        var crossings = steel.Skeleton.Joints.Count(joint => joint.Name == StandFrame.CrossingName);
        return new(
            "bolt M10 x 30 galvanised, with nut and two washers, where diagonals cross",
            Invariant($"one at each of {crossings} crossings, with a packer as thick as the gusset"),
            crossings
        );
    }

    /// <summary>The welds.</summary>
    /// <param name="steel">The stand's steel.</param>
    /// <param name="plan">Its lines.</param>
    /// <param name="access">Guard rail and ladder.</param>
    /// <param name="made">Gussets, and the crew whose truck carries it.</param>
    public static IEnumerable<Seam> Of(
        RackSteel steel,
        StandPlan plan,
        StandAccess access,
        (int Gussets, CrewBrief Crew) made
    )
    {
        foreach (var seam in steel.JointSeams)
        {
            yield return seam with
            {
                IsOnSite = true,
            };
        }

        var leg = 4 * plan.Sections.Leg.SideMm;
        yield return new(StandFrame.LapName, 5, StandFrame.LapMm, 2 * made.Gussets) { IsOnSite = true };
        yield return new(StandFrame.GussetName, 5, StandPlates.Gusset.SideMm, 2 * made.Gussets);
        yield return new(StandFrame.BaseName, 6, leg, plan.LegCount) { IsAllRound = true };
        yield return new(StandFrame.CapName, 6, leg, plan.LegCount) { IsAllRound = true };
        var (width, depth) = (plan.WidthMm.RightMm - plan.WidthMm.LeftMm, plan.DepthMm.BackMm - plan.DepthMm.FrontMm);
        int Stitches(double mm) => (int)Math.Ceiling(mm / StitchPitchMm);
        yield return new(StandFrame.DeckName, 4, StitchMm, Stitches(plan.JoistXMm.Count * depth)) { IsOnSite = true };
        yield return new(StandFrame.ToeName, 4, StitchMm, Stitches(2 * (width + depth))) { IsOnSite = true };
        foreach (var seam in access.Seams(plan.Sections.Rail.SideMm))
        {
            yield return seam;
        }

        foreach (var alike in steel.Parts.Where(part => part.SplicesMm.Count > 0).GroupBy(part => part.Mark))
        {
            var section = alike.First().Section;
            var roundMm = section.SideMm * (section.Outline == Outline.EqualAngle ? 2 : 4);
            yield return new($"splice of {alike.Key}", section.WallMm, roundMm, alike.Sum(part => part.SplicesMm.Count))
            {
                IsOnSite = made.Crew.IsTooLong(alike.First()),
            };
        }
    }
}
