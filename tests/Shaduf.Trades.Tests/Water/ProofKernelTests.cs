using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class ProofKernelTests
{
    [Fact]
    public void A_drum_and_a_watch_give_flow_and_its_doubt() =>
        Gen.Select(Gen.Double[20, 1000], Gen.Double[10, 1000])
            .Sample(
                (litres, seconds) =>
                {
                    Assert.Equal(litres * 3.6, FilledVessel.FlowM3PerH(litres, seconds) * seconds, 1e-6);
                    Assert.True(
                        FilledVessel.UncertainShare(litres, 2, seconds, 0.5)
                            >= Math.Max(2 / litres, 0.5 / seconds) - 1e-12
                    );
                }
            );

    [Fact]
    public void Twice_the_water_takes_twice_the_chlorine() =>
        Gen.Double[1, 1e6]
            .Sample(litres =>
                Assert.Equal(
                    2 * ChlorineDose.ProductG(litres, 50, 0.65),
                    ChlorineDose.ProductG(2 * litres, 50, 0.65),
                    1e-6 * litres
                )
            );

    [Fact]
    public void Refuses_what_cannot_be()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FilledVessel.FlowM3PerH(200, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => FilledVessel.UncertainShare(200, double.NaN, 100, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChlorineDose.ColumnL(150, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChlorineDose.ProductG(100, double.NaN, 0.65));
        Assert.Throws<InvalidOperationException>(() => PumpGrade.Of("9Z"));
    }
}
