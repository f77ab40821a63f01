using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class PitSideTests
{
    [Fact]
    public void A_side_without_run_is_upright_and_more_run_is_flatter()
    {
        Assert.Equal(90, PitSide.SlopeDeg(0), 1e-12);
        Assert.True(PitSide.SlopeDeg(1.5) < PitSide.SlopeDeg(1));
    }
}
