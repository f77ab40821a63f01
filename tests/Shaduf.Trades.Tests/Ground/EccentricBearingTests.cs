using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class EccentricBearingTests
{
    [Fact]
    public void Both_ways_of_reckoning_agree_in_the_middle() =>
        Assert.Equal(EccentricBearing.LinearKPa(50, 0, 1, 2), EccentricBearing.MeyerhofKPa(50, 0, 0, 1, 2), 1e-12);

    [Fact]
    public void Trapezium_and_triangle_meet_at_a_sixth() =>
        Assert.Equal(
            EccentricBearing.LinearKPa(50, 1.2 / 6, 1.2, 1),
            EccentricBearing.LinearKPa(50, (1.2 / 6) + 1e-9, 1.2, 1),
            1e-5
        );

    [Fact]
    public void A_load_at_the_edge_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => EccentricBearing.LinearKPa(50, 0.6, 1.2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => EccentricBearing.MeyerhofKPa(50, 0, 0.5, 1.2, 1));
    }
}
