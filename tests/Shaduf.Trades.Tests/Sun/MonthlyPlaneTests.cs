using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class MonthlyPlaneTests
{
    [Theory]
    [InlineData(43)]
    [InlineData(-43)]
    [InlineData(0)]
    public void A_level_plane_is_the_ground(double latitudeDeg)
    {
        Assert.Equal(1, MonthlyPlane.BeamRatio(latitudeDeg, 10, 0), 1e-12);
        Assert.Equal(20, MonthlyPlane.MJPerM2(20, 0.4, 1, 0, 0.2), 1e-12);
    }

    [Fact]
    public void North_and_south_are_mirrors() =>
        Assert.Equal(MonthlyPlane.BeamRatio(30, -15, 25), MonthlyPlane.BeamRatio(-30, 15, 25), 1e-12);
}
