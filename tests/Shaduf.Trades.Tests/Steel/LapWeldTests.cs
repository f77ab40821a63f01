using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class LapWeldTests
{
    private static readonly SlideInChannel Shape = SlideInChannel.Of(40, 4, 35, 2);

    [Fact]
    public void A_holder_shares_its_shear_between_its_channels()
    {
        var (one, two) = (MemberSection.OfChannel(Shape, 6), MemberSection.OfDoubleChannel(Shape, 6));
        Near.Share(LapWeld.FlowNPerMm(one, 0, 1000) / 2, LapWeld.FlowNPerMm(two, 0, 1000), 1e-12);
        Assert.Throws<ArgumentException>(() => LapWeld.BackFlowNPerMm(one, 1000));
        Assert.Throws<ArgumentException>(() => LapWeld.FlowNPerMm(MemberSection.OfSquare(60, 3), 0, 1000));
    }

    [Fact]
    public void Interrupted_runs_carry_the_whole_flow() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[30, 100], Gen.Double[0, 300])
            .Sample(
                (flow, run, gap) =>
                    Near.Share(flow * (run + gap), LapWeld.InterruptedNPerMm(flow, run, run + gap) * run, 1e-12)
            );

    [Fact]
    public void Runs_do_not_overlap() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LapWeld.InterruptedNPerMm(10, 50, 40));
}
