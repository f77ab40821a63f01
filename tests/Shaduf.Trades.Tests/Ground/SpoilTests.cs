using CsCheck;
using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class SpoilTests
{
    [Fact]
    public void What_is_dug_is_filled_back_or_carted() =>
        Gen.Select(Gen.Double[0.1, 500], Gen.Double[0, 1], Gen.Double[0, 0.8])
            .Sample(
                (dugM3, keptShare, swellShare) =>
                {
                    var keptM3 = dugM3 * keptShare;
                    var cartedM3 = Spoil.SurplusLooseM3(dugM3, keptM3, swellShare);
                    Assert.Equal(Spoil.LooseM3(dugM3, swellShare), cartedM3 + Spoil.LooseM3(keptM3, swellShare), 1e-9);
                }
            );

    [Fact]
    public void Cannot_fill_back_more_than_was_dug() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Spoil.SurplusLooseM3(1, 1.1, 0.25));

    [Fact]
    public void Refuses_nan()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Spoil.LooseM3(double.NaN, 0.25));
        Assert.Throws<ArgumentOutOfRangeException>(() => Spoil.LooseM3(1, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Spoil.BackfillBankM3(1, double.NaN));
    }
}
