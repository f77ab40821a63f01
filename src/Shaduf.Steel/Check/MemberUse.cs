namespace Shaduf.Steel;

/// <summary>How far a member is used: its worst place under its worst combination.</summary>
/// <param name="Member">Index of the member in the skeleton.</param>
/// <param name="Result">The worst condition.</param>
/// <param name="Combination">Index of the combination.</param>
/// <param name="Forces">The forces that were checked; with buckling, the largest along the member.</param>
/// <param name="AtMm">Place from the start of the member [mm].</param>
/// <param name="Lengths">Buckling lengths where buckling governs; null where a cross-section does.</param>
public sealed record MemberUse(
    int Member,
    CheckResult Result,
    int Combination,
    MemberForces Forces,
    double AtMm,
    BucklingLengths? Lengths
);

/// <summary>Sections, steel and buckling lengths with which the members of a frame are checked.</summary>
/// <param name="Section">Section of a member.</param>
/// <param name="Grade">The steel.</param>
/// <param name="Lengths">Buckling lengths of a member, by its index in the skeleton.</param>
/// <param name="SecondOrderFactor">Factor on the moments for the second order, at least 1.</param>
public sealed record MemberRules(
    Func<Member, MemberSection> Section,
    SteelGrade Grade,
    Func<int, BucklingLengths> Lengths,
    double SecondOrderFactor = 1
)
{
    /// <summary>Equivalent moments: a sway column and beams under spread loads; none is taken as gentler than this.</summary>
    /// <source>EN 1993-1-1:2005, table B.3</source>
    public static EquivalentMoments Moments { get; } = new(0.95, 0.95);

    // A compression below this share of the yield force does not buckle what bends (EN 1993-1-1:2005, 6.3.1.2(4)).
    private const double LeastCompressionShare = 0.001;

    /// <summary>How far each member is used.</summary>
    /// <param name="cases">The solved frame.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="gustRatio">Gust over that for which the wind cases are kept.</param>
    /// <returns>One use for each member of the skeleton, in its order.</returns>
    /// <source>EN 1993-1-1:2005, 6.2 at five places of each span, 6.3.3 for each member as a whole</source>
    public IReadOnlyList<MemberUse> Uses(FrameCases cases, IReadOnlyList<Combination> combinations, double gustRatio)
    {
        var members = cases.Frame.Skeleton.Members;
        var worst = new MemberUse?[members.Count];
        var sections = members.Select(Section).ToList();
        var spansOf = members.Select((_, i) => cases.Frame.SpansOf(i).ToArray()).ToList();
        for (var c = 0; c < combinations.Count; c++)
        {
            var factors = combinations[c].EachFactor(gustRatio);
            for (var member = 0; member < members.Count; member++)
            {
                if (combinations[c].Members?.Contains(member) == false)
                {
                    continue;
                }

                var use = Use(cases, member, spansOf[member], sections[member], factors);
                if (worst[member] is not { } before || use.Result.UtilisationShare > before.Result.UtilisationShare)
                {
                    worst[member] = use with { Combination = c };
                }
            }
        }

        return [.. worst.Select(use => use ?? throw new ArgumentException("a member without a combination"))];
    }

    private MemberUse Use(FrameCases cases, int member, int[] spans, MemberSection section, double[] factors)
    {
        var worst = new MemberUse(member, new(0, ""), 0, new(0, 0, 0, 0, 0, 0, 0), 0, null);
        var (leastN, mostY, mostZ) = (0.0, 0.0, 0.0);
        foreach (var span in spans)
        {
            for (var place = 0; place < FrameCases.PlaceShares.Count; place++)
            {
                var forces = cases.At(span, place, factors);
                forces = forces with
                {
                    BendingYNMm = forces.BendingYNMm * SecondOrderFactor,
                    BendingZNMm = forces.BendingZNMm * SecondOrderFactor,
                };
                var result = CrossSectionCheck.Utilisation(section, Grade, forces);
                if (result.UtilisationShare > worst.Result.UtilisationShare)
                {
                    worst = worst with
                    {
                        Result = result,
                        Forces = forces,
                        AtMm = cases.Frame.Spans[span].FromMm + forces.AtMm,
                    };
                }

                leastN = Math.Min(leastN, forces.TensionN);
                mostY = Math.Max(mostY, Math.Abs(forces.BendingYNMm));
                mostZ = Math.Max(mostZ, Math.Abs(forces.BendingZNMm));
            }
        }

        if (-leastN < LeastCompressionShare * section.Frame.AreaMm2 * Grade.YieldNPerMm2 && section.IsTube)
        {
            return worst;
        }

        var all = new MemberForces(0, leastN, 0, 0, 0, mostY, mostZ);
        var lengths = Lengths(member);
        var buckling = MemberBuckling.Utilisation(section, Grade, all, lengths, Moments);
        return buckling.UtilisationShare > worst.Result.UtilisationShare
            ? worst with
            {
                Result = buckling,
                Forces = all,
                AtMm = 0,
                Lengths = lengths,
            }
            : worst;
    }
}
