using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>A place where two bars of a member are welded end to end.</summary>
/// <param name="Member">Index of the member in the skeleton.</param>
/// <param name="AtMm">Distance from its start [mm].</param>
public readonly record struct SplicePlace(int Member, double AtMm);

/// <summary>How far the butt weld of a splice is used, by the member's forces at its place.</summary>
/// <param name="Place">The place.</param>
/// <param name="Combination">Index of the worst combination.</param>
/// <param name="Forces">The member's forces there.</param>
/// <param name="ThroatMm">Throat that carries them [mm].</param>
/// <param name="WallMm">Wall as it is taken, which a butt weld through it has as its throat [mm].</param>
/// <param name="MomentShare">Largest moment at the place over the largest of the whole member, over all combinations.</param>
public sealed record SpliceUse(
    SplicePlace Place,
    int Combination,
    MemberForces Forces,
    double ThroatMm,
    double WallMm,
    double MomentShare
)
{
    private const string Clause = "EN 1993-1-8:2005, 4.7 with the strength of 4.5.3.3";

    /// <summary>Throat needed over the wall, which is the throat there is.</summary>
    public double UseShare => ThroatMm / WallMm;

    /// <summary>The splices of a frame.</summary>
    /// <param name="cases">The solved frame.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="gustRatio">Gust over that for which the wind cases are kept.</param>
    /// <param name="rules">Sections and steel.</param>
    /// <param name="places">The splices.</param>
    /// <returns>One use for each place, in their order.</returns>
    /// <source>
    /// EN 1993-1-8:2005, 4.7: a butt weld through the wall; it is given the strength of a fillet of that throat, the safe
    /// side for a weld made from one side without a bar behind it
    /// </source>
    public static IReadOnlyList<SpliceUse> All(
        FrameCases cases,
        IReadOnlyList<Combination> combinations,
        double gustRatio,
        MemberRules rules,
        IReadOnlyList<SplicePlace> places
    )
    {
        var factors = combinations.Select(each => each.EachFactor(gustRatio)).ToList();
        var most = new Dictionary<int, double>();
        return [.. places.Select(Of)];

        SpliceUse Of(SplicePlace place)
        {
            var section = rules.Section(cases.Frame.Skeleton.Members[place.Member]);
            var (span, atMm) = cases.Frame.Place(place.Member, place.AtMm);
            var (at, group) = (cases.PlaceAt(span, atMm), WeldGroup.Butt(section));
            var acting = Acting(combinations, place.Member)
                .Select(i => (Index: i, Forces: Raised(at.Under(factors[i]), rules.SecondOrderFactor)))
                .ToList();
            var worst = acting.MaxBy(each => group.ForceNPerMm(each.Forces));
            if (!most.TryGetValue(place.Member, out var highest))
            {
                most[place.Member] = highest = Highest(cases, combinations, factors, place.Member);
            }

            var here = acting.Max(each => Moment(each.Forces)) / rules.SecondOrderFactor;
            return new(
                place,
                worst.Index,
                worst.Forces,
                group.ForceNPerMm(worst.Forces) / FilletWeld.StrengthNPerMm2(rules.Grade, rules.Factors),
                section.WallMm,
                highest > 0 ? Math.Min(1, here / highest) : 0
            );
        }
    }

    /// <summary>The working.</summary>
    /// <param name="section">The member's section.</param>
    /// <param name="grade">Its steel.</param>
    /// <param name="factors">Partial factors; null: the recommended ones.</param>
    /// <returns>The lines.</returns>
    public IReadOnlyList<Line> Lines(MemberSection section, SteelGrade grade, SteelFactors? factors = null) =>
        [
            .. WeldGroup.Butt(section).ForceLines(Forces),
            new(
                "a",
                "F_w,Ed/(f_u/(√3 β_w γ_M2))",
                Invariant(
                    $"{WeldGroup.Butt(section).ForceNPerMm(Forces):0.0}/{FilletWeld.StrengthNPerMm2(grade, factors):0.0}"
                ),
                ThroatMm,
                "mm",
                "steel/fillet-weld",
                Clause
            ),
            new("share", "a/t", Invariant($"{ThroatMm:0.00}/{WallMm:0.00}"), UseShare, "", "steel/fillet-weld", Clause),
        ];

    private static IEnumerable<int> Acting(IReadOnlyList<Combination> combinations, int member) =>
        Enumerable.Range(0, combinations.Count).Where(i => combinations[i].Members?.Contains(member) != false);

    private static double Highest(
        FrameCases cases,
        IReadOnlyList<Combination> combinations,
        List<double[]> factors,
        int member
    ) =>
        (
            from span in cases.Frame.SpansOf(member)
            from place in Enumerable.Range(0, FrameCases.PlaceShares.Count)
            from i in Acting(combinations, member)
            select Moment(cases.At(span, place, factors[i]))
        ).Max();

    private static double Moment(MemberForces forces) => double.Hypot(forces.BendingYNMm, forces.BendingZNMm);

    private static MemberForces Raised(MemberForces forces, double factor) =>
        forces with
        {
            BendingYNMm = forces.BendingYNMm * factor,
            BendingZNMm = forces.BendingZNMm * factor,
        };
}
