using CsCheck;
using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class NominalMixTests
{
    [Fact]
    public void Parts_share_the_dry_volume_in_their_ratio() =>
        Gen.Select(Gen.Double[0.5, 8], Gen.Double[1, 16], Gen.Double[1.4, 1.7], Gen.Double[1200, 1600])
            .Sample(
                (sand, stone, dryFactor, cementKgPerM3) =>
                {
                    var mix = new NominalMix("", "", sand, stone, 0.55);
                    var take = mix.PerM3(dryFactor, cementKgPerM3);
                    Assert.Equal(dryFactor, take.CementM3 + take.SandM3 + take.StoneM3, 1e-9);
                    Assert.Equal(sand, take.SandM3 / take.CementM3, 1e-9);
                    Assert.Equal(stone, take.StoneM3 / take.CementM3, 1e-9);
                    Assert.Equal(take.CementKg * 0.55, take.WaterLitres, 1e-9);
                    Assert.Equal(2 * take.SandM3, take.Times(2, wasteShare: 0).SandM3, 1e-9);
                    Assert.Equal(1.05 * take.BagCount, take.Times(1, wasteShare: 0.05).BagCount, 1e-9);
                }
            );

    // Six pits 0.6 x 0.6 x 0.9 m with plinths 0.35 x 0.35 x 0.25 m in 1:2:4: 14.2 bags, 0.983 m3 of sand, 1.966 m3 of stone.
    [Fact]
    public void Footings_of_a_rack_take_fifteen_bags()
    {
        var block = new FootingBlock(600, 600, 900, 350, 250);
        var take = NominalMix
            .Named("1:2:4")
            .PerM3(NominalMix.UsualDryVolumeFactor, NominalMix.UsualCementKgPerM3)
            .Times(6 * block.ConcreteM3, wasteShare: 0.05);
        Assert.Equal(14.2, take.BagCount, 0.05);
        Assert.Equal(0.983, take.SandM3, 0.001);
        Assert.Equal(1.966, take.StoneM3, 0.001);
    }

    [Fact]
    public void Table_grows_richer_from_row_to_row()
    {
        Assert.Equal(["M10", "M15", "M20", "M25"], NominalMix.Table.Select(mix => mix.Grade));
        var cement = NominalMix.Table.Select(mix => mix.PerM3(1.54, 1440).CementKg).ToList();
        Assert.Equal(cement.Order(), cement);
    }

    [Fact]
    public void A_mix_unknown_is_refused_with_those_that_are_known()
    {
        var trouble = Assert.Throws<ArgumentException>(() => NominalMix.Named("1:5:9"));
        Assert.Contains("1:2:4", trouble.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_nan()
    {
        var mix = NominalMix.Named("1:2:4");
        Assert.Throws<ArgumentOutOfRangeException>(() => mix.PerM3(double.NaN, 1440));
        Assert.Throws<ArgumentOutOfRangeException>(() => mix.PerM3(1.54, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => (mix with { SandPartsRatio = double.NaN }).PerM3(1.54, 1440));
        Assert.Throws<ArgumentOutOfRangeException>(() => mix.PerM3(1.54, 1440).Times(double.NaN, 0));
    }
}
