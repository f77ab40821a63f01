using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class OperatingPointTests
{
    [Fact]
    public void Operating_point_lies_on_both_curves_or_the_pump_falls_short() =>
        Gen.Select(MadeUp.AnyPump, MadeUp.AnyLift, Gen.Double[0.2, 1.2])
            .Sample(
                (curve, lift, speed) =>
                {
                    var point = OperatingPoint.Solve(curve, lift, speed);
                    Assert.Equal(lift.HeadM(point.FlowM3PerS), point.HeadM);
                    if (point.FlowM3PerS > 0)
                    {
                        Assert.Equal(curve.HeadM(point.FlowM3PerS, speed), point.HeadM, 1e-8);
                        Assert.InRange(point.Rounds, 0, 40);
                        Assert.True(speed > OperatingPoint.LeastSpeedRatio(curve, lift));
                    }
                    else
                    {
                        Assert.True(point.ResidualM <= 1e-9);
                        Assert.True(speed <= OperatingPoint.LeastSpeedRatio(curve, lift) * (1 + 1e-9));
                    }
                }
            );
}
