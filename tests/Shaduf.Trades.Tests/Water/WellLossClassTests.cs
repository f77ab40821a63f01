using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class WellLossClassTests
{
    [Theory]
    [InlineData(0, WaltonClass.Sound)]
    [InlineData(1900, WaltonClass.Sound)]
    [InlineData(1902, WaltonClass.MildlyWorn)]
    [InlineData(3802, WaltonClass.Clogged)]
    [InlineData(15_206, WaltonClass.PastRestoring)]
    public void Walton_classes_part_at_their_limits(double wellLoss, WaltonClass expected) =>
        Assert.Equal(expected, WellLossClass.Walton(wellLoss));
}
