namespace Shaduf.Ground;

/// <summary>The cubic that depths of piers lead to: x³ = a x + b with a and b not negative.</summary>
internal static class DepressedCubic
{
    /// <summary>Its one root that is not negative, in closed form (Cardano, Viète).</summary>
    /// <param name="a">Factor of x, at least 0.</param>
    /// <param name="b">What stands alone, at least 0.</param>
    /// <returns>The root.</returns>
    /// <source>Cardano 1545; Viète's cosine where there are three roots</source>
    public static double PositiveRoot(double a, double b)
    {
        var (third, half) = (a / 3, b / 2);
        var square = (half * half) - (third * third * third);
        if (square < 0)
        {
            return 2 * Math.Sqrt(third) * Math.Cos(Math.Acos(half / (third * Math.Sqrt(third))) / 3);
        }

        // The product of both terms is a third of a: so neither is a difference of near figures.
        var large = Math.Cbrt(half + Math.Sqrt(square));
        return large == 0 ? 0 : large + (third / large);
    }
}
