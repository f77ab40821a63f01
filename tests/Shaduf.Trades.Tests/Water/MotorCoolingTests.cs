using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class MotorCoolingTests
{
    [Fact]
    public void A_motor_wider_than_its_casing_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MotorCooling.VelocityMPerS(0.001, 0.1, 0.1));
}
