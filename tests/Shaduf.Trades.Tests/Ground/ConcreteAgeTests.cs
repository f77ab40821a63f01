using CsCheck;
using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class ConcreteAgeTests
{
    [Fact]
    public void Days_to_a_share_lead_back_to_it() =>
        Gen.Select(Gen.Double[0.3, 1], Gen.Double[0, 50])
            .Sample(
                (share, degC) =>
                {
                    var days = ConcreteAge.DaysToShare(share, 0.38, degC);
                    var at20 = days * ConcreteAge.WarmthFactor(degC);
                    Assert.Equal(share, Math.Exp(0.38 * (1 - Math.Sqrt(28 / at20))), 1e-9);
                }
            );

    [Fact]
    public void Twenty_degrees_are_the_measure_and_cold_is_slower()
    {
        Assert.Equal(1, ConcreteAge.WarmthFactor(20), 0.01);
        Assert.True(ConcreteAge.WarmthFactor(10) < 0.63);
        Assert.Equal(28, ConcreteAge.DaysToShare(1, 0.25, 20), 0.3);
    }
}
