using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class ArrayLossesTests
{
    [Fact]
    public void Every_share_counts()
    {
        var whole = new ArrayLosses(1, 1, 1, 1, 1, 1);
        Assert.Equal(1, whole.KeptShare);
        ArrayLosses[] halves =
        [
            whole with
            {
                SoilingShare = 0.5,
            },
            whole with
            {
                MismatchShare = 0.5,
            },
            whole with
            {
                LightInducedShare = 0.5,
            },
            whole with
            {
                WiringShare = 0.5,
            },
            whole with
            {
                TrackingShare = 0.5,
            },
            whole with
            {
                AgeShare = 0.5,
            },
        ];
        Assert.All(halves, half => Assert.Equal(0.5, half.KeptShare));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(97)]
    [InlineData(-0.1)]
    public void A_share_outside_0_to_1_is_refused(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ArrayLosses(share, 1, 1, 1, 1, 1).KeptShare);

    [Fact]
    public void Age_begins_after_the_first_year()
    {
        Assert.Equal(1, ArrayLosses.KeptAtAgeShare(1, 0.005));
        Assert.Equal(0.995 * 0.995, ArrayLosses.KeptAtAgeShare(3, 0.005), 12);
    }
}
