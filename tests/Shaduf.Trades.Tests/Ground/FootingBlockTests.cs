using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class FootingBlockTests
{
    [Fact]
    public void Plinth_stands_above_the_ground_and_is_not_dug()
    {
        var block = new FootingBlock(600, 600, 900, 350, 250);
        Assert.Equal(0.324, block.BlockM3, 1e-12);
        Assert.Equal(0.030625, block.PlinthM3, 1e-12);
        Assert.Equal(0.354625, block.ConcreteM3, 1e-12);
        Assert.Equal(0.324, block.ExcavationM3, 1e-12);
        Assert.Equal(block.BlockM3, (block with { PlinthSideMm = 0, PlinthHeightMm = 0 }).ConcreteM3);
    }

    [Fact]
    public void A_change_of_depth_reaches_the_volume() =>
        Assert.Equal(0.36, (new FootingBlock(600, 600, 900, 350, 250) with { DepthMm = 1000 }).ExcavationM3, 1e-12);

    [Fact]
    public void Refuses_a_plinth_wider_than_its_block_and_nan()
    {
        var block = new FootingBlock(600, 600, 900, 350, 250);
        Assert.Throws<ArgumentOutOfRangeException>(() => (block with { PlinthSideMm = 700 }).ConcreteM3);
        Assert.Throws<ArgumentOutOfRangeException>(() => (block with { DepthMm = double.NaN }).ExcavationM3);
    }
}
