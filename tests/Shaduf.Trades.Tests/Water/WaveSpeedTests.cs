using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class WaveSpeedTests
{
    [Fact]
    public void Anchoring_stiffens_the_pipe()
    {
        Assert.Equal(0.775, WaveSpeed.AnchoredUpstreamFactor(0.45), 1e-12);
        Assert.Equal(0.7975, WaveSpeed.AnchoredThroughoutFactor(0.45), 1e-12);
    }
}
