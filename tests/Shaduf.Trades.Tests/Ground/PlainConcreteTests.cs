using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class PlainConcreteTests
{
    [Fact]
    public void Twice_as_deep_as_it_reaches_is_deep_enough_up_to_half_a_megapascal() =>
        Assert.True(PlainConcrete.PadDepthMm(500, 500, 12) < 1000);

    [Fact]
    public void Stronger_concrete_may_be_thinner()
    {
        Assert.True(PlainConcrete.PadDepthMm(500, 100, 25) < PlainConcrete.PadDepthMm(500, 100, 12));
        Assert.True(PlainConcrete.ShearKN(1000, 25) > PlainConcrete.ShearKN(1000, 12));
        Assert.Equal(0, PlainConcrete.PadDepthMm(0, 100, 12));
    }
}
