using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class SwayImperfectionTests
{
    [Fact]
    public void The_lean_is_a_two_hundredth_at_most_and_less_for_height_and_number() =>
        Gen.Select(Gen.Double[0.5, 40], Gen.Int[1, 50])
            .Sample(
                (height, columns) =>
                {
                    var lean = SwayImperfection.LeanRad(height, columns);
                    Assert.InRange(lean, 2.0 / 3 / Math.Sqrt(2) / 200, 1 / 200.0);
                    Assert.True(SwayImperfection.LeanRad(height * 1.2, columns) <= lean);
                    Assert.True(SwayImperfection.LeanRad(height, columns + 1) < lean);
                }
            );

    [Fact]
    public void Sway_moments_grow_only_in_a_soft_frame()
    {
        Assert.Equal(1, SwayImperfection.AmplifyingFactor(10));
        Assert.Equal(1.5, SwayImperfection.AmplifyingFactor(3), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => SwayImperfection.AmplifyingFactor(2.9));
    }
}
