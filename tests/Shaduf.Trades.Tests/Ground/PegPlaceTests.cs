using CsCheck;
using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class PegPlaceTests
{
    [Fact]
    public void The_tapes_of_a_point_lead_back_to_it()
    {
        Gen.Select(Gen.Double[1, 50], Gen.Double[-40, 90], Gen.Double[0.5, 40])
            .Sample(
                (baseM, alongM, offM) =>
                {
                    var (fromA, fromB) = PegPlace.TapesM(baseM, alongM, offM);
                    var (along, off) = PegPlace.Of(baseM, fromA, fromB);
                    Assert.Equal(alongM, along, 1e-6);
                    Assert.Equal(offM, off, 1e-5);
                    Assert.InRange(PegPlace.CrossingDeg(baseM, alongM, offM), 0, 90);
                }
            );
    }

    [Fact]
    public void Tapes_cross_square_over_the_middle_at_half_the_base_and_flat_far_away()
    {
        Assert.Equal(90, PegPlace.CrossingDeg(10, 5, 5), 1e-9);
        Assert.True(PegPlace.CrossingDeg(10, 5, 100) < 6);
        Assert.True(PegPlace.CrossingDeg(10, 5, 0.1) < 3);
    }

    [Fact]
    public void Tapes_that_do_not_meet_are_refused()
    {
        Assert.Throws<ArgumentException>(() => PegPlace.Of(10, 4, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => PegPlace.Of(double.NaN, 4, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => PegPlace.CrossingDeg(0, 4, 5));
    }
}
