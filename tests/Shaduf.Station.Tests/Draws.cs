using CsCheck;

namespace Shaduf.Station.Tests;

/// <summary>Samples for properties of a whole design: the same ones on every machine, so that a suite that was green stays green.</summary>
/// <remarks>A hunt for new ones is asked for with CsCheck_Iter above 100, and what it finds becomes a test of its own.</remarks>
internal static class Draws
{
    // What CsCheck draws where nothing else is asked for.
    private const int UsualIter = 100;

    /// <summary>Samples a property.</summary>
    /// <param name="gen">What is drawn.</param>
    /// <param name="assert">What holds for each.</param>
    /// <param name="count">How many are drawn each time.</param>
    /// <param name="huntShare">Share of a hunt's length that is drawn of these.</param>
    public static void Sampled<T>(this Gen<T> gen, Action<T> assert, int count, double huntShare)
    {
        if (Check.Iter > UsualIter)
        {
            gen.Sample(assert, iter: Math.Max(count, (long)(Check.Iter * huntShare)));
            return;
        }

        Parallel.For(1, count + 1, draw => assert(gen.Generate(new PCG((uint)draw, (ulong)draw), null, out _)));
    }
}
