using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class ModuleHoldingTests
{
    [Fact]
    public void Edges_carry_what_the_module_catches() =>
        Gen.Select(Gen.Double[0, 3000], Gen.Double[300, 1500], Gen.Double[500, 2500])
            .Sample(
                (pressure, width, length) =>
                    Near.Share(
                        pressure * width * length * 1e-6,
                        2 * ModuleHolding.EdgeNPerMm(pressure, width) * length,
                        1e-9
                    )
            );

    [Fact]
    public void A_module_at_its_test_load_over_the_factor_is_used_to_the_full()
    {
        Assert.Equal(1, ModuleHolding.Module(1600, 2400).UtilisationShare, 1e-12);
        Assert.False(ModuleHolding.Module(1700, 2400).Holds);
    }

    [Fact]
    public void A_thicker_lip_bears_more_by_the_square()
    {
        var grade = SteelGrade.Unmarked;
        Near.Share(
            4 * ModuleHolding.Lip(grade, 2, 36, 8).UtilisationShare,
            ModuleHolding.Lip(grade, 2, 36, 4).UtilisationShare,
            1e-12
        );
        Assert.Equal(0.1, ModuleHolding.BearingNPerMm2(2, 20), 1e-12);
    }

    [Fact]
    public void Clamps_share_and_hold_within_their_card()
    {
        var force = ModuleHolding.ClampN(1000, 2, 4, 1);
        Assert.Equal(500, force);
        Assert.Equal(0.5, ModuleHolding.Clamp(force, 1000).UtilisationShare);
        Assert.Throws<ArgumentOutOfRangeException>(() => ModuleHolding.ClampN(1000, 2, 1, 1));
    }
}
