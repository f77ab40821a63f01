using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>Dug ground: in the bank, loose, and filled back.</summary>
public static class Spoil
{
    /// <summary>Volume of dug ground in the heap.</summary>
    /// <param name="bankM3">Volume as it lay [m3], 0 to 100000.</param>
    /// <param name="swellShare">Growth from bank to loose, 0 to 1: sand 0.05 to 0.15, loam and clay 0.20 to 0.40, rock 0.40 to 0.80.</param>
    /// <returns>Loose volume [m3].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Definition of swell in earthwork practice</source>
    public static double LooseM3(double bankM3, double swellShare)
    {
        Within.Require(bankM3, 0, 100_000, "m3");
        Within.Require(swellShare, 0, 1, "");
        return bankM3 * (1 + swellShare);
    }

    /// <summary>Bank ground that a rammed fill takes.</summary>
    /// <param name="fillM3">Space to fill [m3], 0 to 100000.</param>
    /// <param name="bankToFillFactor">Rammed volume of one bank volume, 0.6 to 1: sand about 0.9, loam 0.85, clay 0.8.</param>
    /// <returns>Bank volume [m3].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Definition of shrinkage in earthwork practice</source>
    public static double BackfillBankM3(double fillM3, double bankToFillFactor)
    {
        Within.Require(fillM3, 0, 100_000, "m3");
        Within.Require(bankToFillFactor, 0.6, 1, "");
        return fillM3 / bankToFillFactor;
    }

    /// <summary>Loose ground left to cart away when part of what was dug is filled back.</summary>
    /// <param name="dugBankM3">Volume dug, as it lay [m3], 0 to 100000.</param>
    /// <param name="backfillBankM3">Part of it that is filled back, as it lay [m3], 0 to 100000, no more than was dug.</param>
    /// <param name="swellShare">Growth from bank to loose, 0 to 1.</param>
    /// <returns>Loose volume [m3].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN; more is filled than was dug.</exception>
    /// <source>Balance of volumes</source>
    public static double SurplusLooseM3(double dugBankM3, double backfillBankM3, double swellShare)
    {
        Within.Require(dugBankM3, 0, 100_000, "m3");
        Within.Require(backfillBankM3, 0, dugBankM3, "m3");
        return LooseM3(dugBankM3 - backfillBankM3, swellShare);
    }
}
