using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class CoolingFlowTests
{
    [Theory]
    [InlineData(0.096, 1.5, 0)]
    [InlineData(0.096, 3, 0.0762)]
    [InlineData(0.140, 3, 0.1524)]
    [InlineData(0.190, 30, 0.1524)]
    public void The_rule_goes_by_diameter_and_power(double motorM, double shaftKW, double leastMPerS) =>
        Assert.Equal(leastMPerS, CoolingFlow.LeastMPerS(motorM, shaftKW), 5e-10);

    [Fact]
    public void Flow_and_speed_answer_each_other() =>
        Gen.Select(Gen.Double[0.03, 0.2], Gen.Double[0.001, 0.3], Gen.Double[0.01, 3])
            .Sample(
                (motorM, ringM, mPerS) =>
                {
                    var flow = CoolingFlow.PastMotorM3PerS(motorM + ringM + 0.05, motorM, mPerS);
                    return Math.Abs(MotorCooling.VelocityMPerS(flow, motorM + ringM + 0.05, motorM) - mPerS)
                        < 1e-9 * mPerS;
                }
            );
}
