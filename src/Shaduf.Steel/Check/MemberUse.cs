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
    /// <summary>Partial factors of resistances.</summary>
    public SteelFactors Factors { get; init; } = SteelFactors.Recommended;

    /// <summary>Equivalent moments: a sway column and beams under spread loads; none is taken as gentler than this.</summary>
    /// <source>EN 1993-1-1:2005, table B.3</source>
    public static EquivalentMoments Moments { get; } = new(0.95, 0.95);

    // A compression below this share of the yield force does not buckle what bends (EN 1993-1-1:2005, 6.3.1.2(4)).
    private const double LeastCompressionShare = 0.001;

    // Uses nearer to each other than this are one, and the first found stands for it: rounding does not choose.
    private const double Alike = 1 + 1e-9;

    /// <summary>How far each member is used.</summary>
    /// <param name="cases">The solved frame.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="gustRatio">Gust over that for which the wind cases are kept.</param>
    /// <returns>One use for each member of the skeleton, in its order.</returns>
    /// <source>EN 1993-1-1:2005, 6.2 at five places of each span, 6.3.3 for each member as a whole</source>
    public IReadOnlyList<MemberUse> Uses(FrameCases cases, IReadOnlyList<Combination> combinations, double gustRatio) =>
        [.. EachUse(cases, combinations, gustRatio)];

    /// <summary>Whether all members hold; the first that does not ends the checks.</summary>
    /// <param name="cases">The solved frame.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="gustRatio">Gust over that for which the wind cases are kept.</param>
    /// <returns>True when they do.</returns>
    public bool Hold(FrameCases cases, IReadOnlyList<Combination> combinations, double gustRatio) =>
        EachUse(cases, combinations, gustRatio).All(use => use.Result.Holds);

    private IEnumerable<MemberUse> EachUse(FrameCases cases, IReadOnlyList<Combination> combinations, double gustRatio)
    {
        var factors = combinations.Select(each => each.EachFactor(gustRatio)).ToArray();
        for (var member = 0; member < cases.Frame.Skeleton.Members.Count; member++)
        {
            var section = Section(cases.Frame.Skeleton.Members[member]);
            MemberUse? worst = null;
            for (var c = 0; c < combinations.Count; c++)
            {
                if (combinations[c].Members?.Contains(member) != false)
                {
                    worst = Worse(worst ?? new(member, default, c, default, 0, null), cases, section, (c, factors[c]));
                }
            }

            yield return worst ?? throw new ArgumentException("a member without a combination");
        }
    }

    // What was worst before, or what this combination does where that is worse.
    private MemberUse Worse(
        MemberUse worst,
        FrameCases cases,
        MemberSection section,
        (int Index, double[] Factors) combination
    )
    {
        var (leastN, mostY, mostZ) = (0.0, 0.0, 0.0);
        foreach (var span in cases.Frame.SpansOf(worst.Member))
        {
            for (var place = 0; place < FrameCases.PlaceShares.Count; place++)
            {
                var forces = cases.At(span, place, combination.Factors);
                forces = forces with
                {
                    BendingYNMm = forces.BendingYNMm * SecondOrderFactor,
                    BendingZNMm = forces.BendingZNMm * SecondOrderFactor,
                };
                (leastN, mostY, mostZ) = (
                    Math.Min(leastN, forces.TensionN),
                    Math.Max(mostY, Math.Abs(forces.BendingYNMm)),
                    Math.Max(mostZ, Math.Abs(forces.BendingZNMm))
                );
                if (Worse(worst.Result, section, forces) is { } result)
                {
                    var atMm = cases.Frame.Spans[span].FromMm + forces.AtMm;
                    worst = new(worst.Member, result, combination.Index, forces, atMm, null);
                }
            }
        }

        if (-leastN < LeastCompressionShare * section.Frame.AreaMm2 * Grade.YieldNPerMm2 && section.IsTube)
        {
            return worst;
        }

        var (all, lengths) = (new MemberForces(0, leastN, 0, 0, 0, mostY, mostZ), Lengths(worst.Member));
        var buckling = MemberBuckling.Utilisation(section, Grade, all, lengths, Moments, Factors);
        return buckling.UtilisationShare > worst.Result.UtilisationShare * Alike
            ? new(worst.Member, buckling, combination.Index, all, 0, lengths)
            : worst;
    }

    // Beyond 1 a use has to be searched for: only where the forces over what was worst before do not hold either.
    private CheckResult? Worse(CheckResult before, MemberSection section, MemberForces forces)
    {
        var share = before.UtilisationShare * Alike;
        if (share > 1 && CrossSectionCheck.Utilisation(section, Grade, forces * (1 / share), Factors).Holds)
        {
            return null;
        }

        var result = CrossSectionCheck.Utilisation(section, Grade, forces, Factors);
        return result.UtilisationShare > share ? result : null;
    }
}
