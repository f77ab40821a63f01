namespace Shaduf.Steel;

/// <summary>The factor on the loads at which a frame buckles.</summary>
internal static class CriticalLoad
{
    private const double Tolerance = 1e-9;
    private const int MostSteps = 80;
    private const double HighestFactor = 1e9;

    /// <summary>
    /// Smallest factor α above 0 with det(K + α·K_G) = 0. Lanczos' method finds 1/α as the largest eigenvalue of
    /// −K⁻¹·K_G, never one beyond it; the signs of the pivots then prove that none is smaller than 1/α, and halving
    /// between proved bounds takes over where they do not.
    /// </summary>
    /// <returns>The factor; null when nothing buckles below 1e9 times the loads.</returns>
    /// <source>Parlett, The Symmetric Eigenvalue Problem, chapters 3 (Sylvester's count) and 13 (Lanczos).</source>
    internal static double? Factor(Skyline stiffness, Skyline factors, Skyline geometric)
    {
        var largest = Lanczos(factors, geometric);
        bool IsBelow(double factor) => stiffness.Plus(geometric, factor).Factored().NegativeCount == 0;
        if (largest > 1 / HighestFactor)
        {
            var found = 1 / largest;
            if (IsBelow(found * (1 - 1e-5)))
            {
                return found;
            }
        }

        return Halved(IsBelow);
    }

    private static double? Halved(Func<double, bool> isBelow)
    {
        var (low, high) = (0.0, 1e-6);
        while (isBelow(high))
        {
            if (high > HighestFactor)
            {
                return null;
            }

            (low, high) = (high, high * 4);
        }

        while (high - low > 1e-9 * high)
        {
            var middle = (low + high) / 2;
            (low, high) = isBelow(middle) ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    // Largest eigenvalue of -K⁻¹·K_G in the inner product of K, with full orthogonalisation.
    private static double Lanczos(Skyline factors, Skyline geometric)
    {
        var n = factors.Count;
        var vectors = new List<double[]>();
        var images = new List<double[]>(); // K times each vector
        var (diagonal, beside) = (new List<double>(), new List<double>());
        var image = Enumerable.Range(0, n).Select(i => 1 + Math.Sin((i + 1) * 1.6180339887)).ToArray();
        var vector = (double[])image.Clone();
        factors.Solve(vector);
        var best = double.NegativeInfinity;
        for (var step = 0; step < Math.Min(MostSteps, n); step++)
        {
            var size = Math.Sqrt(Math.Max(0, DenseVector.Dot(vector, image)));
            if (step > 0)
            {
                // Nothing new: all that the start reaches is found.
                if (!(size > 1e-13 * diagonal.Max(Math.Abs)))
                {
                    break;
                }

                beside.Add(size);
            }

            vectors.Add(Times(vector, 1 / size));
            images.Add(Times(image, 1 / size));
            image = new double[n];
            geometric.Times(vectors[^1], image);
            image = Times(image, -1);
            vector = (double[])image.Clone();
            factors.Solve(vector);
            diagonal.Add(DenseVector.Dot(vectors[^1], image));
            Orthogonalise(vector, image, vectors, images);
            var next = Tridiagonal.Largest(diagonal, beside);
            if (step > 2 && Math.Abs(next - best) <= Tolerance * Math.Abs(next))
            {
                return next;
            }

            best = next;
        }

        return best;
    }

    private static void Orthogonalise(double[] vector, double[] image, List<double[]> vectors, List<double[]> images)
    {
        for (var k = 0; k < vectors.Count; k++)
        {
            var share = DenseVector.Dot(vector, images[k]);
            DenseVector.AddTimes(vector, vectors[k], -share);
            DenseVector.AddTimes(image, images[k], -share);
        }
    }

    private static double[] Times(double[] vector, double factor)
    {
        var product = new double[vector.Length];
        DenseVector.AddTimes(product, vector, factor);
        return product;
    }
}
