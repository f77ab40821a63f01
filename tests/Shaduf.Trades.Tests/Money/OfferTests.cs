using CsCheck;
using Shaduf.Money;

namespace Shaduf.Trades.Tests.Money;

public sealed class OfferTests
{
    // 11,500 direct: 5 % 575.00; 8 % of 12,075.00 is 966.00; 10 % of 13,041.00 is 1,304.10; 16 % of 14,345.10 is 2,295.22 (2,295.216).
    [Fact]
    public void Each_share_stands_on_the_running_total()
    {
        var offer = Offer.From(Direct(11_500m), new(0.05, 0.08, 0.10, 0.16));
        Assert.Equal(575.00m, offer.Contingency);
        Assert.Equal(966.00m, offer.Overhead);
        Assert.Equal(1_304.10m, offer.Profit);
        Assert.Equal(2_295.22m, offer.Tax);
        Assert.Equal(16_640.32m, offer.Total);
    }

    [Fact]
    public void Total_is_the_sum_of_its_lines() =>
        Gen.Select(Gen.Int[0, 100_000_000], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 1])
            .Sample(
                (cents, a, b, c) =>
                {
                    var offer = Offer.From(Direct(cents / 100m), new(a, b, c, a));
                    Assert.Equal(
                        offer.Direct + offer.Contingency + offer.Overhead + offer.Profit + offer.Tax,
                        offer.Total
                    );
                    Assert.Equal(Math.Round(offer.Total, 2), offer.Total);
                }
            );

    [Fact]
    public void An_offer_on_an_incomplete_bill_says_so()
    {
        var offer = Offer.From(Direct(100m) with { Unpriced = ["pump"] }, new(0, 0, 0, 0));
        Assert.False(offer.Complete);
        Assert.Equal(["pump"], offer.Unpriced);
    }

    [Fact]
    public void Margin_and_mark_up_are_each_others_inverse() =>
        Gen.Double[0, 0.85].Sample(margin => Assert.Equal(margin, MarkUp.MarginShare(MarkUp.Share(margin)), 1e-12));

    [Fact]
    public void Refuses_nan()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Offer.From(Direct(1m), new(double.NaN, 0, 0, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Offer.From(Direct(1m), new(0, double.NaN, 0, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Offer.From(Direct(1m), new(0, 0, double.NaN, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Offer.From(Direct(1m), new(0, 0, 0, double.NaN)));
        Assert.Throws<ArgumentOutOfRangeException>(() => MarkUp.Share(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => MarkUp.MarginShare(double.NaN));
    }

    private static Bill Direct(decimal direct) => new("XTS", 2, [], [], direct);
}
