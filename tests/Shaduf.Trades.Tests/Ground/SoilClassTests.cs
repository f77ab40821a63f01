using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class SoilClassTests
{
    [Fact]
    public void Each_class_is_weaker_than_the_one_before()
    {
        Assert.Equal([1, 2, 3, 4, 5], SoilClass.Table.Select(each => each.Number));
        Assert.All(
            SoilClass.Table.Zip(SoilClass.Table.Skip(1)),
            pair =>
            {
                Assert.True(pair.Second.BearingKPa < pair.First.BearingKPa);
                Assert.True(pair.Second.LateralKNPerM3 < pair.First.LateralKNPerM3);
            }
        );
    }

    [Fact]
    public void There_is_no_class_six() => Assert.Throws<ArgumentOutOfRangeException>(() => SoilClass.Of(6));
}
