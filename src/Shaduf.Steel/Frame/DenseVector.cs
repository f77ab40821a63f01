using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Shaduf.Steel;

/// <summary>
/// Sums over vectors, four figures at a time and in the same order on every machine. Compiled in full at once: a frame
/// is factored before a runtime that learns would come to it.
/// </summary>
internal static class DenseVector
{
    /// <summary>The sum of the products of two vectors of one length.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var fours = MemoryMarshal.Cast<double, Vector256<double>>(a);
        var others = MemoryMarshal.Cast<double, Vector256<double>>(b);
        var sums = Vector256<double>.Zero;
        for (var i = 0; i < fours.Length && i < others.Length; i++)
        {
            sums += fours[i] * others[i];
        }

        var sum = Vector256.Sum(sums);
        for (var i = 4 * fours.Length; i < a.Length && i < b.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    /// <summary>Adds a multiple of a vector to another of its length.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void AddTimes(Span<double> sum, ReadOnlySpan<double> each, double factor)
    {
        var fours = MemoryMarshal.Cast<double, Vector256<double>>(sum);
        var others = MemoryMarshal.Cast<double, Vector256<double>>(each);
        for (var i = 0; i < fours.Length && i < others.Length; i++)
        {
            fours[i] += others[i] * factor;
        }

        for (var i = 4 * fours.Length; i < sum.Length && i < each.Length; i++)
        {
            sum[i] += each[i] * factor;
        }
    }
}
