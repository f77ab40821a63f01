using CsCheck;
using Shaduf.Money;

namespace Shaduf.Trades.Tests.Money;

public sealed class PaymentTests
{
    private static readonly PaymentStage[] s_stages =
    [
        new("order", "order", 0.4),
        new("goods", "goods", 0.3),
        new("water", "prove", 0.2),
        new("handover", "hand-over", 0.1),
    ];

    // 10,000.01 by 40, 30, 20, 10 %: 4000.00, 3000.00, 2000.00, and 1000.01 that is left; 5 % of each kept back.
    [Fact]
    public void The_last_stage_takes_what_rounding_leaves()
    {
        var plan = PaymentPlan.Of(10_000.01m, s_stages, 0.05, 2);
        Assert.Equal([4000.00m, 3000.00m, 2000.00m, 1000.01m], plan.Payments.Select(each => each.Earned));
        Assert.Equal([200m, 150m, 100m, 50m], plan.Payments.Select(each => each.Retained));
        Assert.Equal((250m, 250m), (plan.AtCompletion, plan.AtEnd));
    }

    [Fact]
    public void All_payments_add_up_to_the_price() =>
        Gen.Select(Gen.Int[0, 1_000_000_000], Gen.Double[0, 0.2], Gen.Int[0, 4])
            .Sample(
                (cents, retention, digits) =>
                {
                    var total = Math.Round(cents / 100m, digits);
                    var plan = PaymentPlan.Of(total, s_stages, retention, digits);
                    Assert.Equal(total, plan.Payments.Sum(each => each.Due) + plan.AtCompletion + plan.AtEnd);
                    Assert.All(plan.Payments, each => Assert.InRange(each.Due, 0, total));
                }
            );

    [Fact]
    public void A_loan_paid_in_full_leaves_nothing_and_costs_no_less_than_it_is() =>
        Gen.Select(Gen.Double[0, 0.05], Gen.Int[1, 360])
            .Sample(
                (rate, count) =>
                {
                    Assert.True(Instalment.PaidShare(rate, count) * count >= 1 - 1e-9);
                    Assert.Equal(0, Instalment.OwedShare(rate, count, count));
                    Assert.Equal(1, Instalment.OwedShare(rate, count, 0), 1e-9);
                }
            );

    [Fact]
    public void Refuses_what_cannot_be()
    {
        Assert.Throws<ArgumentException>(() => PaymentPlan.Of(1, s_stages[..2], 0.05, 2));
        Assert.Throws<ArgumentException>(() => PaymentPlan.Of(-1, s_stages, 0.05, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => PaymentPlan.Of(1, s_stages, double.NaN, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Instalment.PaidShare(double.NaN, 12));
        Assert.Throws<ArgumentOutOfRangeException>(() => Instalment.OwedShare(0.01, 12, -1));
    }
}
