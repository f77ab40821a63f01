using Shaduf.Working;

namespace Shaduf.Money;

/// <summary>A loan paid back in equal instalments at the end of each period, for one unit of money lent.</summary>
public static class Instalment
{
    /// <summary>What is paid at the end of each period.</summary>
    /// <param name="interestShare">Interest of one period, 0 to 1.</param>
    /// <param name="periodCount">Number of instalments, 1 to 1200.</param>
    /// <returns>Share of the loan, interest in it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>A/P = i/(1 - (1 + i)^-n); 1/n without interest; compound interest</source>
    public static double PaidShare(double interestShare, int periodCount)
    {
        Within.Require(interestShare, 0, 1, "");
        Within.RequireCount(periodCount, 1, 1200);
        return 1 / WorthFactor(interestShare, periodCount);
    }

    /// <summary>What is still owed after some instalments: what the others are worth.</summary>
    /// <param name="interestShare">Interest of one period, 0 to 1.</param>
    /// <param name="periodCount">Number of instalments, 1 to 1200.</param>
    /// <param name="paidCount">Instalments paid, 0 to 1200.</param>
    /// <returns>Share of the loan; 0 once all are paid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <source>(1 - (1 + i)^-(n - j))/(1 - (1 + i)^-n); compound interest</source>
    public static double OwedShare(double interestShare, int periodCount, int paidCount)
    {
        var each = PaidShare(interestShare, periodCount);
        Within.RequireCount(paidCount, 0, 1200);
        return each * WorthFactor(interestShare, Math.Max(0, periodCount - paidCount));
    }

    // Worth today of one unit of money at the end of each period; summed, for the closed form loses digits at low interest.
    private static double WorthFactor(double interestShare, int periodCount)
    {
        var (sum, worth) = (0.0, 1.0);
        for (var period = 0; period < periodCount; period++)
        {
            worth /= 1 + interestShare;
            sum += worth;
        }

        return sum;
    }
}
