namespace Shaduf.Steel;

/// <summary>The largest of each force inside members that are alike, whatever acts; each by itself, not all at once.</summary>
/// <param name="Name">Name of the members.</param>
/// <param name="TensionN">Largest axial pull [N]; 0 where none is pulled.</param>
/// <param name="CompressionN">Largest axial push, by size [N]; 0 where none is pressed.</param>
/// <param name="ShearN">Largest shear, both directions together [N].</param>
/// <param name="TorsionNMm">Largest torque, by size [N·mm].</param>
/// <param name="BendingYNMm">Largest moment about y, by size [N·mm].</param>
/// <param name="BendingZNMm">Largest moment about z, by size [N·mm].</param>
public sealed record ForceEnvelope(
    string Name,
    double TensionN,
    double CompressionN,
    double ShearN,
    double TorsionNMm,
    double BendingYNMm,
    double BendingZNMm
)
{
    /// <summary>The largest forces of a frame under some combinations, at five places of each span.</summary>
    /// <param name="cases">The solved frame.</param>
    /// <param name="combinations">The combinations.</param>
    /// <param name="gustRatio">Gust over that for which the wind cases are kept.</param>
    /// <param name="secondOrderFactor">Factor on the moments for the second order, at least 1.</param>
    /// <param name="name">What makes members alike.</param>
    /// <returns>One envelope for each name, in the order of the skeleton.</returns>
    public static IReadOnlyList<ForceEnvelope> All(
        FrameCases cases,
        IReadOnlyList<Combination> combinations,
        double gustRatio,
        double secondOrderFactor,
        Func<Member, string> name
    )
    {
        var factors = combinations.Select(each => each.EachFactor(gustRatio)).ToList();
        return
        [
            .. from member in Enumerable.Range(0, cases.Frame.Skeleton.Members.Count)
            group member by name(cases.Frame.Skeleton.Members[member]) into alike
            select (
                from member in alike
                from combination in Enumerable.Range(0, combinations.Count)
                where combinations[combination].Members?.Contains(member) != false
                from span in cases.Frame.SpansOf(member)
                from place in Enumerable.Range(0, FrameCases.PlaceShares.Count)
                select cases.At(span, place, factors[combination])
            ).Aggregate(
                new ForceEnvelope(alike.Key, 0, 0, 0, 0, 0, 0),
                (most, forces) => most.With(forces, secondOrderFactor)
            ),
        ];
    }

    /// <summary>The larger of each force of two envelopes of the same members.</summary>
    /// <param name="other">The other envelope.</param>
    /// <returns>The envelope of both.</returns>
    public ForceEnvelope Or(ForceEnvelope other) =>
        new(
            Name,
            Math.Max(TensionN, other.TensionN),
            Math.Max(CompressionN, other.CompressionN),
            Math.Max(ShearN, other.ShearN),
            Math.Max(TorsionNMm, other.TorsionNMm),
            Math.Max(BendingYNMm, other.BendingYNMm),
            Math.Max(BendingZNMm, other.BendingZNMm)
        );

    private ForceEnvelope With(MemberForces forces, double secondOrderFactor) =>
        Or(
            new(
                Name,
                Math.Max(0, forces.TensionN),
                Math.Max(0, -forces.TensionN),
                double.Hypot(forces.ShearYN, forces.ShearZN),
                Math.Abs(forces.TorsionNMm),
                Math.Abs(forces.BendingYNMm) * secondOrderFactor,
                Math.Abs(forces.BendingZNMm) * secondOrderFactor
            )
        );
}
