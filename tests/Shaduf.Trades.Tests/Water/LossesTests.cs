using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class LossesTests
{
    [Fact]
    public void Production_less_its_loss_is_the_delivery() =>
        Gen.Select(Gen.Double[0, 1000], Gen.Double[0, 0.9])
            .Sample(
                (net, share) =>
                {
                    var production = Losses.ProductionM3(net, share);
                    Assert.Equal(net, production * (1 - share), 1e-9);
                }
            );
}
