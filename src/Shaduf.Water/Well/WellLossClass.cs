using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>State of a well as its non-linear loss tells it.</summary>
public enum WaltonClass
{
    /// <summary>Properly designed and developed.</summary>
    Sound,

    /// <summary>Mildly deteriorated.</summary>
    MildlyWorn,

    /// <summary>Severely clogged.</summary>
    Clogged,

    /// <summary>Hard to restore.</summary>
    PastRestoring,
}

/// <summary>Judgement of a well by its loss coefficient C.</summary>
public static class WellLossClass
{
    private const double MPerFt = 0.3048;

    /// <summary>Limits between the classes, from sound to past restoring [s2/m5].</summary>
    /// <source>Walton 1962, Illinois State Water Survey Bulletin 49: 5, 10 and 40 s2/ft5 (5 and 10 looked up, 40 from memory)</source>
    public static IReadOnlyList<double> LimitsS2PerM5 { get; } =
    [.. new double[] { 5, 10, 40 }.Select(limit => limit / Math.Pow(MPerFt, 5))];

    /// <summary>The class of a well-loss coefficient.</summary>
    /// <param name="wellS2PerM5">Well-loss coefficient C [s2/m5], 0 to 1e12.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The argument is outside its range, or NaN.</exception>
    /// <source>Walton 1962, Illinois State Water Survey Bulletin 49</source>
    public static WaltonClass Walton(double wellS2PerM5)
    {
        Within.Require(wellS2PerM5, 0, 1e12, "s2/m5");
        return (WaltonClass)LimitsS2PerM5.Count(limit => wellS2PerM5 >= limit);
    }
}
