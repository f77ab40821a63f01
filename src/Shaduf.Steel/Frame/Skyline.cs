namespace Shaduf.Steel;

/// <summary>
/// A symmetric matrix of which each column is kept from its first figure that is not zero down to the diagonal, and its
/// factors L·D·Lᵀ in the same room.
/// </summary>
internal sealed class Skyline
{
    private readonly int[] top;
    private readonly int[] start;
    private readonly double[] figures;

    /// <summary>An empty matrix.</summary>
    /// <param name="top">Row of the first figure of each column, 0 to the column.</param>
    internal Skyline(int[] top)
    {
        this.top = top;
        start = new int[top.Length];
        var count = 0;
        for (var column = 0; column < top.Length; column++)
        {
            start[column] = count;
            count += column - top[column] + 1;
        }

        figures = new double[count];
    }

    private Skyline(Skyline other)
    {
        (top, start, figures) = (other.top, other.start, (double[])other.figures.Clone());
    }

    internal int Count => top.Length;

    internal double Diagonal(int column) => figures[start[column] + column - top[column]];

    internal void Add(int row, int column, double figure) => figures[start[column] + row - top[column]] += figure;

    /// <summary>This matrix and a multiple of another of the same shape.</summary>
    internal Skyline Plus(Skyline other, double factor)
    {
        var sum = new Skyline(this);
        for (var i = 0; i < figures.Length; i++)
        {
            sum.figures[i] += factor * other.figures[i];
        }

        return sum;
    }

    /// <summary>Product with a vector.</summary>
    internal void Times(ReadOnlySpan<double> vector, Span<double> product)
    {
        product.Clear();
        for (var column = 0; column < Count; column++)
        {
            var at = top[column];
            var above = Above(column);
            var sum = Diagonal(column) * vector[column];
            for (var i = 0; i < above.Length; i++)
            {
                product[at + i] += above[i] * vector[column];
                sum += above[i] * vector[at + i];
            }

            product[column] += sum;
        }
    }

    /// <summary>A copy in its factors L·D·Lᵀ (Crout, column by column).</summary>
    /// <source>Bathe, Finite Element Procedures, section 8.2: active column solution (from memory).</source>
    internal Skyline Factored()
    {
        var factors = new Skyline(this);
        for (var column = 0; column < Count; column++)
        {
            factors.Reduce(column);
        }

        return factors;
    }

    /// <summary>Number of pivots of a factored matrix below zero: so many eigenvalues are below zero (Sylvester).</summary>
    internal int NegativeCount => Enumerable.Range(0, Count).Count(column => Diagonal(column) < 0);

    /// <summary>Solves with a factored matrix, in place.</summary>
    internal void Solve(Span<double> vector)
    {
        for (var column = 0; column < Count; column++)
        {
            vector[column] -= Dot(Above(column), vector.Slice(top[column], column - top[column]));
        }

        for (var column = 0; column < Count; column++)
        {
            vector[column] /= Diagonal(column);
        }

        for (var column = Count - 1; column > 0; column--)
        {
            var at = top[column];
            var above = Above(column);
            for (var i = 0; i < above.Length; i++)
            {
                vector[at + i] -= above[i] * vector[column];
            }
        }
    }

    private Span<double> Above(int column) => figures.AsSpan(start[column], column - top[column]);

    private void Reduce(int column)
    {
        var above = Above(column);
        for (var row = top[column] + 1; row < column; row++)
        {
            var from = Math.Max(top[row], top[column]);
            above[row - top[column]] -= Dot(
                Above(row)[(from - top[row])..],
                above.Slice(from - top[column], row - from)
            );
        }

        var pivot = Diagonal(column);
        for (var i = 0; i < above.Length; i++)
        {
            var share = above[i] / Diagonal(top[column] + i);
            pivot -= share * above[i];
            above[i] = share;
        }

        figures[start[column] + column - top[column]] = pivot;
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
