using Shaduf.Workshop;

namespace Shaduf.Trades.Tests.Workshop;

public sealed class GuyRopeTests
{
    [Fact]
    public void A_rope_holds_as_much_moment_as_the_wind_makes()
    {
        var pullKN = GuyRope.PullKN(2, 1.9, 1.7, 40);
        var alongKN = Math.Sqrt((pullKN * pullKN) - Math.Pow(GuyRope.UpKN(pullKN, 40), 2));
        Assert.Equal(2 * 1.9, alongKN * 1.7, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => GuyRope.PullKN(2, 1.9, 1.7, 75));
    }
}
