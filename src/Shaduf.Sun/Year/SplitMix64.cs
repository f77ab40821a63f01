namespace Shaduf.Sun;

/// <summary>
/// Random numbers that are the same for a seed on every machine and in every version: SplitMix64 (Steele, Lea, Flood,
/// OOPSLA 2014).
/// </summary>
/// <param name="seed">Any number.</param>
internal sealed class SplitMix64(ulong seed)
{
    private ulong state = seed;

    /// <summary>The next 64 random bits.</summary>
    internal ulong Next()
    {
        state += 0x9E3779B97F4A7C15;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>A number from 0 up to but not 1, every one of 2^53 steps as likely.</summary>
    internal double NextShare() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A number of mean 0 and standard deviation 1 from the bell curve (Box, Muller 1958).</summary>
    internal double NextNormal() => Math.Sqrt(-2 * Math.Log(1 - NextShare())) * Math.Cos(2 * Math.PI * NextShare());
}
