using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class TippingTests
{
    // The lever of weight and lift is the same half width: wider helps only while the weight is more than the lift.
    [Fact]
    public void Width_does_not_help_where_the_lift_outweighs()
    {
        double Left(double widthM) => Tipping.HeldKNm(20, widthM) - Tipping.TurningKNm(5, 2, 0.5, 13, widthM);
        Assert.True(Left(3) < Left(1));
    }
}
