using Shaduf.Working;

namespace Shaduf.Money;

/// <summary>A stage of the works at which the client pays.</summary>
/// <param name="Name">What has happened by then, in plain words.</param>
/// <param name="Event">Key of that stage.</param>
/// <param name="Share">Share of the price, 0 to 1.</param>
public sealed record PaymentStage(string Name, string Event, double Share);

/// <summary>What is paid at one stage.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Earned">Its share of the price.</param>
/// <param name="Retained">What the client keeps back of it.</param>
/// <param name="Due">What is paid.</param>
public sealed record StagePayment(PaymentStage Stage, decimal Earned, decimal Retained, decimal Due);

/// <summary>How a price is paid by stages, with a part kept back until the station has stood its time.</summary>
/// <param name="Payments">What is paid at each stage.</param>
/// <param name="AtCompletion">First half of what was kept back, paid when the station is handed over.</param>
/// <param name="AtEnd">The rest of it, paid when the time for defects is over.</param>
public sealed record PaymentPlan(IReadOnlyList<StagePayment> Payments, decimal AtCompletion, decimal AtEnd)
{
    /// <summary>Splits a price by stages; each is rounded to the minor unit, and the last takes what is left.</summary>
    /// <param name="total">The price, not negative.</param>
    /// <param name="stages">The stages in order; their shares add up to 1.</param>
    /// <param name="retentionShare">Share kept back of each payment, 0 to 0.2.</param>
    /// <param name="minorDigits">Decimals of the currency, 0 to 4.</param>
    /// <returns>The plan; all its payments add up to the price.</returns>
    /// <exception cref="ArgumentException">A negative price, no stage, or shares that do not add up to 1.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside its range, or NaN.</exception>
    /// <source>retention from each certificate, half released at completion and half at the end of the defects period; common practice, no source</source>
    public static PaymentPlan Of(
        decimal total,
        IReadOnlyList<PaymentStage> stages,
        double retentionShare,
        int minorDigits
    )
    {
        Within.Require(retentionShare, 0, 0.2, "");
        Within.RequireCount(minorDigits, 0, 4);
        foreach (var stage in stages)
        {
            Within.Require(stage.Share, 0, 1, "");
        }

        if (total < 0 || stages.Count == 0 || Math.Abs(stages.Sum(stage => stage.Share) - 1) > 1e-9)
        {
            throw new ArgumentException("The shares of the stages do not add up to the whole price.", nameof(stages));
        }

        decimal Rounded(decimal amount) => Math.Round(amount, minorDigits, MidpointRounding.AwayFromZero);
        var left = total;
        var payments = new List<StagePayment>();
        foreach (var (i, stage) in stages.Index())
        {
            var earned = i + 1 == stages.Count ? left : Math.Min(left, Rounded(total * (decimal)stage.Share));
            left -= earned;
            var retained = Rounded(earned * (decimal)retentionShare);
            payments.Add(new(stage, earned, retained, earned - retained));
        }

        var kept = payments.Sum(payment => payment.Retained);
        var first = Rounded(kept / 2);
        return new(payments, first, kept - first);
    }
}
