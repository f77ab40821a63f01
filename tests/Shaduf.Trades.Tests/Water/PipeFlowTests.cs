using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class PipeFlowTests
{
    [Fact]
    public void Loses_the_head_it_was_given() =>
        Gen.Select(Gen.Double[0.01, 0.3], Gen.Double[1, 5000], Gen.Double[-4, 2])
            .Sample(
                (boreM, lengthM, logHead) =>
                {
                    var (run, headM) = (new PipeRun(boreM, 1e-5, lengthM, 2), Math.Pow(10, logHead));
                    var flow = PipeFlow.M3PerS(run, headM, 1e-6);
                    Near.Share(headM, DarcyWeisbach.Loss(run, flow, 1e-6).TotalM, 1e-10);
                }
            );

    [Fact]
    public void A_flow_beyond_its_range_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PipeFlow.M3PerS(new(2, 0, 1, 0), 1000, 1e-6));
}
