using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class StrainerCoverTests
{
    // At rest the mouth's own diameter; faster water asks for more, in proportion to the flow.
    [Fact]
    public void The_cover_grows_in_proportion_to_the_flow()
    {
        Assert.Equal(0.1, StrainerCover.LeastM(0, 0.1), 12);
        var (once, twice) = (StrainerCover.LeastM(0.004, 0.1) - 0.1, StrainerCover.LeastM(0.008, 0.1) - 0.1);
        Assert.Equal(2 * once, twice, 12);
        Assert.Throws<ArgumentOutOfRangeException>(() => StrainerCover.LeastM(double.NaN, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => StrainerCover.LeastM(0.01, 0.01));
    }
}
