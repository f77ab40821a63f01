using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>How slender the columns, struts and braces of a rack are.</summary>
internal static class RackSlender
{
    /// <summary>The columns, then the struts and braces.</summary>
    /// <param name="strength">The checked rack.</param>
    /// <param name="hardest">The combination that presses its feet hardest; null where none presses.</param>
    /// <returns>One use for each.</returns>
    /// <source>columns by the frame's own buckling load where that is shorter than a cantilever's length: EN 1993-1-1:2005, 5.2.2(7)</source>
    public static IReadOnlyList<SlenderUse> Of(RackStrength strength, Combination? hardest)
    {
        var skeleton = strength.Rack.Skeleton;
        var columns = skeleton.Feet.Select(foot => foot.Member).Distinct().ToList();
        var share = Share(strength, columns, hardest);
        return
        [
            .. columns.Select(member => new SlenderUse(
                member,
                MemberDuty.Column,
                share * strength.Rules.Lengths(member).AboutYMm,
                Section(strength, member).LeastGyrationMm
            )),
            .. Enumerable
                .Range(0, skeleton.Members.Count)
                .Where(member => RackSupport.IsBrace(skeleton.Members[member].Role))
                .Select(member => new SlenderUse(
                    member,
                    MemberDuty.Brace,
                    strength.Rules.Lengths(member).AboutYMm,
                    Section(strength, member).LeastGyrationMm
                )),
        ];
    }

    private static MemberSection Section(RackStrength strength, int member) =>
        strength.Rules.Section(strength.Rack.Skeleton.Members[member]);

    // The hardest pressed column buckles at no less than the frame does: what its cantilever's length shrinks to, and that
    // of its fellows with it.
    private static double Share(RackStrength strength, IReadOnlyList<int> columns, Combination? hardest)
    {
        if (hardest is null || strength.CriticalFactor is not { } critical)
        {
            return 1;
        }

        var factors = hardest.EachFactor(strength.Wind.PeakKNPerM2);
        var (member, pressedN) = columns
            .Select(column =>
                (Column: column, N: -strength.Cases.At(strength.Cases.Frame.SpansOf(column)[0], 0, factors).TensionN)
            )
            .MaxBy(each => each.N);
        return pressedN * critical < 1
            ? 1
            : Math.Min(
                1,
                SlendernessLimit.BucklingMm(
                    Section(strength, member).LeastInertiaMm4,
                    Math.Min(1e9, pressedN * critical)
                ) / strength.Rules.Lengths(member).AboutYMm
            );
    }
}
