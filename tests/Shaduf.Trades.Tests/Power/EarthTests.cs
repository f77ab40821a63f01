using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class EarthTests
{
    [Fact]
    public void More_rods_help_but_less_than_in_proportion() =>
        Gen.Select(Gen.Double[5, 5000], Gen.Double[1, 6], Gen.Double[1, 4], Gen.Int[1, 12])
            .Sample(
                (soilOhmM, lengthM, apart, count) =>
                {
                    double Ohm(int rods) => RodGroup.InLineOhm(soilOhmM, lengthM, 0.016, rods, apart * lengthM);
                    var one = EarthRod.ResistanceOhm(soilOhmM, lengthM, 0.016);
                    return Ohm(count + 1) < Ohm(count) && Ohm(count) >= one / count * (1 - 1e-12);
                }
            );

    [Fact]
    public void Far_apart_rods_do_not_share_the_soil() =>
        Assert.Equal(
            EarthRod.ResistanceOhm(100, 3, 0.016) / 4,
            RodGroup.ResistanceOhm(100, 3, 0.016, [new(0, 0), new(1e6, 0), new(0, 1e6), new(1e6, 1e6)]),
            0.001
        );

    [Fact]
    public void Three_rods_in_a_triangle_have_the_factor_two()
    {
        var (one, a) = (EarthRod.ResistanceOhm(100, 3, 0.016), 100 / (2 * Math.PI * 6));
        var triangle = RodGroup.ResistanceOhm(100, 3, 0.016, [new(0, 0), new(6, 0), new(3, 3 * Math.Sqrt(3))]);
        Assert.Equal((one + (2 * a)) / 3, triangle, 5e-10);
    }

    [Fact]
    public void Rods_nearer_than_their_length_are_refused() =>
        Assert.Throws<ArgumentException>(() => RodGroup.ResistanceOhm(100, 3, 0.016, [new(0, 0), new(2.9, 0)]));

    [Fact]
    public void Longer_wire_and_larger_ring_resist_less() =>
        Gen.Select(Gen.Double[5, 5000], Gen.Double[5, 200], Gen.Double[0.1, 20])
            .Sample(
                (soilOhmM, sizeM, more) =>
                    BuriedWire.StraightOhm(soilOhmM, sizeM + more, 0.008, 0.7)
                        < BuriedWire.StraightOhm(soilOhmM, sizeM, 0.008, 0.7)
                    && BuriedWire.RingOhm(soilOhmM, sizeM + more, 0.008, 0.7)
                        < BuriedWire.RingOhm(soilOhmM, sizeM, 0.008, 0.7)
            );

    [Fact]
    public void A_rod_driven_into_known_soil_reads_that_soil() =>
        Gen.Select(Gen.Double[5, 20_000], Gen.Double[0.5, 3])
            .Sample(
                (soilOhmM, lengthM) =>
                {
                    var read = SoilTest.DrivenRodOhmM(lengthM, 0.016, EarthRod.ResistanceOhm(soilOhmM, lengthM, 0.016));
                    return Math.Abs(read - soilOhmM) < 1e-9 * soilOhmM;
                }
            );

    [Theory]
    [InlineData(LightningClass.I, 400, 5)]
    [InlineData(LightningClass.I, 2000, 50)]
    [InlineData(LightningClass.II, 700, 5)]
    [InlineData(LightningClass.IV, 5000, 5)]
    public void Dry_soil_asks_longer_electrodes_of_the_careful_classes(
        LightningClass protection,
        double soilOhmM,
        double lengthM
    ) => Assert.Equal(lengthM, ElectrodeLength.LeastM(protection, soilOhmM), 5e-10);

    [Fact]
    public void Bond_sizes_are_positive_and_each_has_its_source() =>
        Assert.All(
            BondSize.Table,
            row =>
            {
                Assert.True(row.CopperMm2 > 0 && row.SteelMm2 >= row.CopperMm2 && row.AluminiumMm2 is null or > 0);
                Assert.NotEmpty(row.Source);
            }
        );
}
