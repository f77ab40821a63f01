using System.Runtime.CompilerServices;

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

    /// <summary>Adds a small symmetric matrix.</summary>
    /// <param name="rows">Row of each of its directions here; -1 for those that are held.</param>
    /// <param name="small">Its figures, row by row.</param>
    internal void Add(ReadOnlySpan<int> rows, ReadOnlySpan<double> small)
    {
        for (var i = 0; i < rows.Length; i++)
        {
            for (var j = 0; j < rows.Length; j++)
            {
                if (rows[i] >= 0 && rows[i] <= rows[j])
                {
                    figures[start[rows[j]] + rows[i] - top[rows[j]]] += small[(i * rows.Length) + j];
                }
            }
        }
    }

    /// <summary>This matrix and a multiple of another of the same shape.</summary>
    internal Skyline Plus(Skyline other, double factor)
    {
        var sum = new Skyline(this);
        DenseVector.AddTimes(sum.figures, other.figures, factor);
        return sum;
    }

    /// <summary>Product with a vector.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Times(ReadOnlySpan<double> vector, Span<double> product)
    {
        product.Clear();
        for (var column = 0; column < Count; column++)
        {
            var at = top[column];
            var above = Above(column);
            product[column] +=
                (Diagonal(column) * vector[column]) + DenseVector.Dot(above, vector.Slice(at, above.Length));
            DenseVector.AddTimes(product.Slice(at, above.Length), above, vector[column]);
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
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Solve(Span<double> vector)
    {
        for (var column = 0; column < Count; column++)
        {
            vector[column] -= DenseVector.Dot(Above(column), vector.Slice(top[column], column - top[column]));
        }

        for (var column = 0; column < Count; column++)
        {
            vector[column] /= Diagonal(column);
        }

        for (var column = Count - 1; column > 0; column--)
        {
            var above = Above(column);
            DenseVector.AddTimes(vector.Slice(top[column], above.Length), above, -vector[column]);
        }
    }

    private Span<double> Above(int column) => figures.AsSpan(start[column], column - top[column]);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Reduce(int column)
    {
        var above = Above(column);
        for (var row = top[column] + 1; row < column; row++)
        {
            var from = Math.Max(top[row], top[column]);
            above[row - top[column]] -= DenseVector.Dot(
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
}
