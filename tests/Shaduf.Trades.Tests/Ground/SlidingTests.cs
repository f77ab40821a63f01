using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class SlidingTests
{
    [Fact]
    public void Clay_holds_by_its_area_until_half_of_the_force_is_less()
    {
        var clay = SoilClass.Of(5);
        Assert.Equal(6.2, Sliding.PresumedKN(100, 1, clay), 1e-12);
        Assert.Equal(2, Sliding.PresumedKN(4, 1, clay), 1e-12);
        Assert.Equal(40, Sliding.UndrainedKN(1000, 1, 40), 1e-12);
        Assert.Equal(4, Sliding.UndrainedKN(10, 1, 40), 1e-12);
    }

    [Fact]
    public void Every_class_holds_something_and_nothing_holds_without_a_force()
    {
        Assert.All(SoilClass.Table, soil => Assert.True(Sliding.PresumedKN(10, 1, soil) > 0));
        Assert.All(SoilClass.Table, soil => Assert.Equal(0, Sliding.PresumedKN(0, 1, soil)));
        Assert.Equal(0, Sliding.DrainedKN(0, 30));
    }
}
