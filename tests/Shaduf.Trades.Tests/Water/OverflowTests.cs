using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class OverflowTests
{
    // By hand: 1.7 x pi x 0.1 x 0.001 = 0.000534 at 1 cm; 0.6 x 0.007854 x sqrt(2 x 9.80665 x 0.5) = 0.014757 at 50 cm.
    [Fact]
    public void A_thin_sheet_runs_over_the_lip_and_deep_water_into_the_mouth()
    {
        Assert.Equal(0.000534, Overflow.FlowM3PerS(0.1, 0.01), 1e-6);
        Assert.Equal(0.014757, Overflow.FlowM3PerS(0.1, 0.5), 1e-6);
    }

    [Fact]
    public void More_water_and_more_pipe_carry_more()
    {
        for (var i = 1; i < 40; i++)
        {
            Assert.True(Overflow.FlowM3PerS(0.05, i * 0.02) > Overflow.FlowM3PerS(0.05, (i - 1) * 0.02));
            Assert.True(Overflow.FlowM3PerS(0.02 * (i + 1), 0.1) > Overflow.FlowM3PerS(0.02 * i, 0.1));
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => Overflow.FlowM3PerS(0.1, double.NaN));
    }
}
