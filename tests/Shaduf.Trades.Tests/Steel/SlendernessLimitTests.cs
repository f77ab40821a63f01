using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class SlendernessLimitTests
{
    [Theory]
    [InlineData(MemberDuty.Column, 180)]
    [InlineData(MemberDuty.Brace, 250)]
    [InlineData(MemberDuty.Tie, 350)]
    public void Each_duty_has_its_limit(MemberDuty duty, double ratio)
    {
        Assert.Equal(ratio, SlendernessLimit.LimitRatio(duty));
        Assert.Equal(1, new SlenderUse(0, duty, ratio * 15, 15).UseShare, 1e-12);
    }

    /// <summary>SHS 100x100x4 of 4 m: 293.21 kN pinned, 73.30 kN as a cantilever, whose buckling length is twice its own.</summary>
    [Theory]
    [InlineData(293.21e3, 4000)]
    [InlineData(73.30e3, 8000)]
    public void The_buckling_length_gives_Eulers_load_back(double criticalN, double lengthMm) =>
        Assert.Equal(lengthMm, SlendernessLimit.BucklingMm(226.35e4, criticalN), lengthMm * 1e-3);

    [Fact]
    public void A_larger_force_at_buckling_stands_for_a_shorter_bar() =>
        Gen.Select(Gen.Double[1e3, 1e8], Gen.Double[1e2, 1e7], Gen.Double[1.1, 10])
            .Sample(
                (inertia, force, more) =>
                    Math.Abs(
                        (
                            SlendernessLimit.BucklingMm(inertia, force)
                            / SlendernessLimit.BucklingMm(inertia, force * more)
                        ) - Math.Sqrt(more)
                    ) < 1e-9
            );

    [Fact]
    public void Refuses_nan() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SlendernessLimit.BucklingMm(double.NaN, 1e3));
}
