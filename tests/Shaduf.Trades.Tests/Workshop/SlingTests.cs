using Shaduf.Workshop;

namespace Shaduf.Trades.Tests.Workshop;

public sealed class SlingTests
{
    [Fact]
    public void Four_legs_count_as_two_and_flat_ones_are_refused()
    {
        Assert.Equal(Sling.LegKN(10, 2, 60), Sling.LegKN(10, 4, 60));
        Assert.Equal(10, Sling.LegKN(10, 1, 90), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => Sling.LegKN(10, 2, 29));
    }
}
