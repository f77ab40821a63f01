using CsCheck;
using Shaduf.Workshop;

namespace Shaduf.Trades.Tests.Workshop;

public sealed class LiftingPoleTests
{
    // Load, guy and pole at the head: forces along both directions cancel.
    [Fact]
    public void Forces_at_the_head_of_a_pole_cancel() =>
        Gen.Select(Gen.Double[0.1, 50], Gen.Double[0, 30], Gen.Double[20, 40])
            .Sample(
                (weight, lean, guy) =>
                {
                    var (pull, pole) = (LiftingPole.GuyKN(weight, lean, guy), LiftingPole.PoleKN(weight, lean, guy));
                    var (d, g) = (lean * Math.PI / 180, guy * Math.PI / 180);
                    Assert.Equal(0, (pole * Math.Sin(d)) - (pull * Math.Cos(g)), 1e-9 * weight);
                    Assert.Equal(weight, (pole * Math.Cos(d)) - (pull * Math.Sin(g)), 1e-9 * weight);
                }
            );

    [Fact]
    public void A_flat_pole_with_a_steep_guy_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LiftingPole.GuyKN(6, 30, 45));

    [Fact]
    public void Three_legs_carry_the_load() =>
        Assert.Equal(5, 3 * LiftingPole.TripodLegKN(5, 20) * Math.Cos(20 * Math.PI / 180), 1e-9);
}
