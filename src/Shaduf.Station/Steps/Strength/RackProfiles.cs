using Shaduf.Parts;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Sections of a rack's members as frame and checks see them.</summary>
/// <param name="rack">The rack's sections.</param>
/// <param name="shelf">The cards.</param>
/// <param name="isMeasured">Whether the walls were measured or certified; if not, they are taken 10 % thin.</param>
internal sealed class RackProfiles(RackSections rack, CardShelf shelf, bool isMeasured)
{
    private readonly Dictionary<Profile, MemberSection> known = [];

    /// <summary>The section of a member.</summary>
    /// <param name="member">The member.</param>
    /// <returns>Its section, thinned where the walls are not known.</returns>
    public MemberSection this[Member member]
    {
        get
        {
            if (!known.TryGetValue(member.Profile, out var section))
            {
                section = Of(member.Profile);
                known[member.Profile] = section = isMeasured ? section : section.Thinned();
            }

            return section;
        }
    }

    /// <summary>Whether a profile is a channel for sliding in.</summary>
    public static bool IsChannel(Profile profile) => profile.MakeUp != MakeUp.Single;

    /// <summary>Bars in a profile.</summary>
    public static int BarCount(Profile profile) =>
        profile.MakeUp switch
        {
            MakeUp.Channel => 2,
            MakeUp.DoubleChannel => 4,
            _ => 1,
        };

    /// <summary>Outside height of a profile [mm].</summary>
    public static double HeightMm(Profile profile) =>
        IsChannel(profile) ? profile.InsideDepthMm + (2 * profile.Bar.WallMm) : profile.Bar.SideMm;

    /// <summary>The section of a single bar.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="shelf">The cards, for the root radius of an angle.</param>
    public static MemberSection Single(Section bar, CardShelf shelf) =>
        bar.Outline switch
        {
            Outline.EqualAngle => MemberSection.OfAngle(
                bar.SideMm,
                bar.WallMm,
                shelf.Find<SectionCard>(bar.Name)?.RootRadiusMm ?? 0
            ),
            Outline.RoundTube => MemberSection.OfRound(bar.SideMm, bar.WallMm),
            _ => MemberSection.OfSquare(bar.SideMm, bar.WallMm),
        };

    private MemberSection Of(Profile profile)
    {
        var rootMm = shelf.Find<SectionCard>(profile.Bar.Name)?.RootRadiusMm ?? 0;
        return profile.MakeUp switch
        {
            MakeUp.Channel => MemberSection.OfChannel(rack.Channel!, rootMm),
            MakeUp.DoubleChannel => MemberSection.OfDoubleChannel(rack.Channel!, rootMm),
            _ => Single(profile.Bar, shelf),
        };
    }
}
