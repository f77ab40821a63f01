namespace Shaduf.Steel;

/// <summary>Actions that are looked at together, each with its partial and combination factor.</summary>
/// <param name="Name">Its name, as on the calculation sheet: <c>1.35 G + 1.5 W</c>.</param>
/// <param name="StillFactors">Factor of each load case that the wind does not change.</param>
/// <param name="WindFactors">Factor of each load case that grows with the gust, which is kept for a gust of one unit.</param>
public sealed record Combination(string Name, IReadOnlyList<double> StillFactors, IReadOnlyList<double> WindFactors)
{
    /// <summary>The members that it is meant for; null: all of them.</summary>
    public IReadOnlySet<int>? Members { get; init; }

    /// <summary>Whether it is one of those that press the frame down as a whole, and so may make it buckle.</summary>
    public bool IsPressing { get; init; }

    /// <summary>Factor of each load case in a gust.</summary>
    /// <param name="gustRatio">Gust over that for which the wind cases are kept, at least 0.</param>
    /// <returns>The factors.</returns>
    public double[] EachFactor(double gustRatio)
    {
        var factors = new double[StillFactors.Count];
        for (var i = 0; i < factors.Length; i++)
        {
            factors[i] = StillFactors[i] + (gustRatio * WindFactors[i]);
        }

        return factors;
    }
}
