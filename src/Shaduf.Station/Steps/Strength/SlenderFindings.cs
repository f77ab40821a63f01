using Shaduf.Steel;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Finding on how slender columns, legs and braces are.</summary>
internal static class SlenderFindings
{
    /// <summary>The finding.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="members">Members of the skeleton.</param>
    /// <param name="uses">How slender they are.</param>
    /// <param name="advice">What would hold; begins with a full stop.</param>
    public static Finding Of(string id, IReadOnlyList<Member> members, IReadOnlyList<SlenderUse> uses, string advice)
    {
        var worst = uses.MaxBy(use => use.UseShare)!;
        var member = members[worst.Member];
        return Finding.AtMost(
            id,
            worst.SlendernessRatio,
            worst.LimitRatio,
            "",
            Invariant(
                $"{member.Role} {member.Mark} is the most slender for what it does: it would buckle over {worst.LengthMm / 1000:0.00} m, {worst.SlendernessRatio:0} times the {worst.GyrationMm:0.0} mm of its radius of gyration; columns and legs may have {SlendernessLimit.LimitRatio(MemberDuty.Column):0}, struts and braces {SlendernessLimit.LimitRatio(MemberDuty.Brace):0}"
            ) + (worst.UseShare <= 1 ? "" : advice),
            "judgement, no source, as older codes; EN 1993-1-1:2005, 6.3.1"
        );
    }
}
