namespace Shaduf.Steel;

/// <summary>Eigenvalues of a symmetric matrix that has figures on and beside its diagonal only.</summary>
internal static class Tridiagonal
{
    /// <summary>The largest eigenvalue, by halving between Gershgorin's bounds.</summary>
    /// <param name="diagonal">The diagonal, at least one figure.</param>
    /// <param name="beside">The figures beside it, one less.</param>
    /// <source>Sturm's count: Parlett, The Symmetric Eigenvalue Problem, section 3.3.</source>
    internal static double Largest(List<double> diagonal, List<double> beside)
    {
        double Beside(int i) => i >= 0 && i < diagonal.Count - 1 ? Math.Abs(beside[i]) : 0;
        var radius = Enumerable.Range(0, diagonal.Count).Select(i => Beside(i - 1) + Beside(i)).ToList();
        var low = diagonal.Zip(radius, (d, r) => d - r).Min();
        var high = diagonal.Zip(radius, (d, r) => d + r).Max();
        while (high - low > 1e-13 * Math.Max(Math.Abs(low), Math.Abs(high)))
        {
            var middle = (low + high) / 2;
            if (middle == low || middle == high)
            {
                break;
            }

            (low, high) = IsAboveAll(middle, diagonal, beside) ? (low, middle) : (middle, high);
        }

        return high;
    }

    private static bool IsAboveAll(double figure, List<double> diagonal, List<double> beside)
    {
        var pivot = figure - diagonal[0];
        for (var i = 1; i < diagonal.Count && pivot > 0; i++)
        {
            pivot = figure - diagonal[i] - (beside[i - 1] * beside[i - 1] / pivot);
        }

        return pivot > 0;
    }
}
