namespace Shaduf.Steel;

/// <summary>A place of a frame with its forces under each load case.</summary>
/// <param name="Each">Forces under each case, in the order of the cases.</param>
public sealed record FramePlace(IReadOnlyList<MemberForces> Each)
{
    /// <summary>Forces under a combination.</summary>
    /// <param name="factors">Factor of each case.</param>
    /// <returns>The forces.</returns>
    public MemberForces Under(IReadOnlyList<double> factors)
    {
        var sum = new MemberForces(Each[0].AtMm, 0, 0, 0, 0, 0, 0);
        for (var i = 0; i < Each.Count; i++)
        {
            if (factors[i] is var factor && factor != 0)
            {
                sum = new(
                    sum.AtMm,
                    sum.TensionN + (factor * Each[i].TensionN),
                    sum.ShearYN + (factor * Each[i].ShearYN),
                    sum.ShearZN + (factor * Each[i].ShearZN),
                    sum.TorsionNMm + (factor * Each[i].TorsionNMm),
                    sum.BendingYNMm + (factor * Each[i].BendingYNMm),
                    sum.BendingZNMm + (factor * Each[i].BendingZNMm)
                );
            }
        }

        return sum;
    }
}
