using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class SideFrictionTests
{
    [Fact]
    public void Topsoil_holds_nothing()
    {
        Assert.Equal(0, SideFriction.PullKN(0.3, 2.4, 30, 17));
        Assert.Equal(0, SideFriction.PullKN(0.1, 2.4, 30, 17));
        Assert.Equal(0, SideFriction.PullKN(1, 2.4, 0, 17));
        Assert.True(SideFriction.PullKN(1.2, 2.4, 30, 17) > SideFriction.PullKN(1, 2.4, 30, 17));
    }
}
