using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class EarthquakeTests
{
    private static readonly Gen<GroundType> Grounds = Gen.Int[0, GroundType.All.Count - 1]
        .Select(i => GroundType.All[i]);

    [Fact]
    public void Both_spectra_have_no_step() =>
        Gen.Select(Grounds, Gen.Double[1, 4])
            .Sample(
                (ground, factor) =>
                {
                    foreach (var corner in new[] { ground.RiseS, ground.PlateauS, ground.DriftS })
                    {
                        foreach (
                            var spectrum in new Func<double, double>[]
                            {
                                period => Spectrum.DesignRatio(0.2, ground, period, factor),
                                period => Spectrum.ElasticRatio(0.2, ground, period, 5),
                            }
                        )
                        {
                            Assert.Equal(spectrum(corner * (1 - 1e-9)), spectrum(corner * (1 + 1e-9)), 1e-6);
                        }
                    }
                }
            );

    [Fact]
    public void Nothing_is_shaken_harder_than_on_the_plateau_nor_less_than_the_floor() =>
        Gen.Select(Grounds, Gen.Double[0, 10], Gen.Double[1.5, 4])
            .Sample(
                (ground, period, factor) =>
                {
                    var quake = new Quake(0.15, ground, factor);
                    var shaken = Spectrum.DesignRatio(0.15, ground, period, factor);
                    var start = 0.15 * ground.SoilFactor * 2 / 3;
                    Assert.True(shaken <= Math.Max(quake.PlateauRatio, start) + 1e-12);
                    Assert.True(period <= ground.PlateauS || shaken >= 0.03 - 1e-12);
                }
            );

    [Fact]
    public void There_is_no_sixth_ground() => Assert.Throws<ArgumentException>(() => GroundType.Of("F", 1));

    [Fact]
    public void Water_is_shared_out_whole_and_a_deeper_tank_sloshes_less() =>
        Gen.Select(Gen.Double[0.3, 5], Gen.Double[0.2, 6])
            .Sample(
                (radius, depth) =>
                {
                    var tank = TankSloshing.OfRound(radius, depth);
                    Assert.InRange(tank.SloshingShare, 0.01, 0.84);
                    Assert.Equal(1, tank.SloshingShare + tank.RigidShare, 1e-12);
                    Assert.True(TankSloshing.OfRound(radius, depth * 1.1).SloshingShare < tank.SloshingShare);
                    Assert.True(tank.SloshingHeightRatio >= tank.WallSloshingHeightRatio);
                }
            );

    // A square and a round tank of the same width are near each other.
    [Fact]
    public void A_square_tank_is_like_a_round_one() =>
        Gen.Select(Gen.Double[0.5, 4], Gen.Double[0.5, 2])
            .Sample(
                (side, share) =>
                {
                    var (square, round) = (
                        TankSloshing.OfRectangular(side, side * share),
                        TankSloshing.OfRound(side / 2, side * share)
                    );
                    Assert.InRange(square.SloshingShare / round.SloshingShare, 0.9, 1.25);
                    Assert.InRange(square.SloshingS / round.SloshingS, 0.95, 1.15);
                }
            );

    [Fact]
    public void All_water_rigid_is_a_safe_first_answer()
    {
        // The worked stand: 19.95 kN and 140.9 kNm, against 19.48 and 138.4 with the water that sloshes.
        var quake = new Quake(0.18, GroundType.Of("C", 1), Quake.PlainFactor);
        var massKg = 5080.2 + 816.9;
        var shearKN = quake.PlateauRatio * 9.80665 * massKg / 1000;
        Assert.Equal(19.95, shearKN, 0.06);
        Assert.Equal(140.9, quake.PlateauRatio * 9.80665 * ((5080.2 * 7.2) + (816.9 * 6.2)) / 1000, 0.42);
    }

    [Fact]
    public void A_stiffer_stand_has_a_shorter_period_and_is_apart_from_its_wave()
    {
        var water = TankSloshing.OfRound(0.9, 2);
        var stand = new ElevatedTank(5080.2, 816.9, 6527, 6.2, 2, water);
        Assert.True(stand.IsApart);
        Assert.False((stand with { StiffnessNPerMm = 10 }).IsApart);
        Assert.Equal(stand.RigidS / 2, (stand with { StiffnessNPerMm = 4 * 6527 }).RigidS, 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            (stand with { StiffnessNPerMm = double.NaN }).Under(new(0.1, GroundType.Of("A", 1), 1.5), true)
        );
    }

    // SI-A18: theta of the worked stand.
    [Fact]
    public void The_worked_stand_hardly_leans() =>
        Assert.Equal(0.0023, ElevatedTank.DriftRatio(60.75, 19.48e3 / 6527, 1.5, 19.48, 6), 0.00005);
}
