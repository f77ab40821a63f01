using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Sections of a stand's members as frame and checks see them.</summary>
/// <param name="shelf">The cards.</param>
/// <param name="isMeasured">Whether the walls were measured or certified; if not, they are taken 10 % thin.</param>
internal sealed class StandProfiles(CardShelf shelf, bool isMeasured)
{
    private readonly Dictionary<Parts.Section, MemberSection> known = [];

    /// <summary>The section of a member, thinned where the walls are not known.</summary>
    /// <param name="member">The member.</param>
    public MemberSection this[Member member]
    {
        get
        {
            var bar = member.Profile.Bar;
            if (!known.TryGetValue(bar, out var section))
            {
                section = RackProfiles.Single(bar, shelf);
                known[bar] = section = isMeasured ? section : section.Thinned();
            }

            return section;
        }
    }
}
