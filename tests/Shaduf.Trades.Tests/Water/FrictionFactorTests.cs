using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class FrictionFactorTests
{
    [Fact]
    public void Satisfies_its_own_equation_to_rounding() =>
        Gen.Select(Gen.Double[Math.Log(4000), Math.Log(1e9)], Gen.Double[0, 0.1])
            .Sample(
                (logReynolds, roughness) =>
                {
                    var reynolds = Math.Exp(logReynolds);
                    var x = 1 / Math.Sqrt(FrictionFactor.Colebrook(reynolds, roughness));
                    var residual = x + (2 * Math.Log10((roughness / 3.7) + (2.51 * x / reynolds)));
                    Assert.True(Math.Abs(residual) < 1e-13);
                }
            );

    [Theory]
    [InlineData(2000)]
    [InlineData(4000)]
    public void Has_no_jump_at_the_ends_of_the_transition(double reynolds) =>
        Near.Share(FrictionFactor.At(reynolds - 1e-6, 0.001), FrictionFactor.At(reynolds + 1e-6, 0.001), 1e-8);

    [Theory]
    [InlineData(double.NaN, 0)]
    [InlineData(3999, 0)]
    [InlineData(1e5, double.NaN)]
    [InlineData(1e5, 0.11)]
    public void Refuses_what_it_does_not_cover(double reynolds, double roughness) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FrictionFactor.Colebrook(reynolds, roughness));

    // The roughness is refused in laminar flow too, where it does not count.
    [Theory]
    [InlineData(double.NaN, 0.001)]
    [InlineData(0, 0.001)]
    [InlineData(1.1e9, 0.001)]
    [InlineData(1000, double.NaN)]
    [InlineData(1000, -0.001)]
    [InlineData(1000, 0.11)]
    [InlineData(3000, double.NaN)]
    public void At_any_flow_refuses_what_no_flow_has(double reynolds, double roughness) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FrictionFactor.At(reynolds, roughness));
}
