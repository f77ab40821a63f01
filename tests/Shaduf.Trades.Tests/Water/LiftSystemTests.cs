using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class LiftSystemTests
{
    [Fact]
    public void Breakdown_adds_up_to_the_head() =>
        Gen.Select(MadeUp.AnyLift, Gen.Double[0, 0.01])
            .Sample((lift, flow) => Assert.Equal(lift.HeadM(flow), lift.Breakdown(flow).TotalM, 1e-9));
}
