using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class LightningTests
{
    private static readonly Gen<double> s_sphereM = Gen.OneOf(
        Gen.Const(20.0),
        Gen.Const(30.0),
        Gen.Const(45.0),
        Gen.Const(60.0)
    );

    private static readonly Gen<GroundPlace> s_place = Gen.Select(
        Gen.Double[-15, 15],
        Gen.Double[-15, 15],
        (x, y) => new GroundPlace(x, y)
    );

    [Fact]
    public void A_rod_of_the_needed_height_just_reaches() =>
        Gen.Select(s_sphereM, Gen.Double[0, 30], Gen.Double[0, 12])
            .Sample(
                (sphereM, asideM, atM) =>
                    RollingSphere.NeededHeightM(sphereM, asideM, atM) is not { } heightM
                    || Math.Abs(RollingSphere.ReachM(sphereM, heightM, Math.Min(atM, heightM)) - asideM) < 1e-6
            );

    [Fact]
    public void A_class_more_careful_needs_no_lower_rod() =>
        Gen.Select(Gen.Double[0, 15], Gen.Double[0, 8])
            .Sample(
                (asideM, atM) =>
                {
                    var needed = Enum.GetValues<LightningClass>()
                        .Select(each => RollingSphere.NeededHeightM(RollingSphere.RadiusM(each), asideM, atM) ?? 1e9)
                        .ToArray();
                    return needed.Zip(needed.Skip(1)).All(pair => pair.First >= pair.Second - 1e-9);
                }
            );

    /// <summary>Against the thing itself: spheres dropped at random, none through ground or rod, none reaches in.</summary>
    [Fact]
    public void No_sphere_touches_what_the_rods_protect() =>
        Gen.Select(s_sphereM, Gen.Double[2, 15], s_place.Array[1, 5], s_place, Gen.Double[0, 1], Gen.Int[0, 1 << 20])
            .Sample(
                (sphereM, rodM, rods, place, share, seed) =>
                {
                    var atM = share * ProtectedVolume.HeightM(sphereM, rodM, rods, place);
                    var random = new Random(seed);
                    return Enumerable
                        .Range(0, 300)
                        .All(_ =>
                        {
                            var angle = random.NextDouble() * Math.Tau;
                            var awayM = random.NextDouble() * sphereM;
                            var middle = new GroundPlace(
                                place.XM + (awayM * Math.Cos(angle)),
                                place.YM + (awayM * Math.Sin(angle))
                            );
                            var dropM = rods.Select(rod => LevelM(rod, rodM)).Append(sphereM).Max();
                            return AwayM(place, atM, dropM) >= sphereM - 1e-6;

                            double LevelM(GroundPlace thing, double heightM)
                            {
                                var flat = Flat(thing);
                                return flat >= sphereM ? 0 : heightM + Math.Sqrt((sphereM * sphereM) - (flat * flat));
                            }

                            double AwayM(GroundPlace thing, double heightM, double levelM) =>
                                double.Hypot(Flat(thing), levelM - heightM);

                            double Flat(GroundPlace thing) => double.Hypot(thing.XM - middle.XM, thing.YM - middle.YM);
                        });
                },
                iter: 300
            );

    [Fact]
    public void One_rod_protects_as_the_closed_form_says() =>
        Gen.Select(s_sphereM, Gen.Double[2, 15], Gen.Double[0.05, 0.95])
            .Sample(
                (sphereM, rodM, share) =>
                {
                    var atM = share * rodM;
                    var reachM = RollingSphere.ReachM(sphereM, rodM, atM);
                    var heightM = ProtectedVolume.HeightM(sphereM, rodM, [new(0, 0)], new(reachM, 0));
                    return heightM <= atM + 1e-9 && heightM >= atM - 0.03;
                },
                iter: 300
            );

    [Fact]
    public void A_rod_more_never_uncovers_anything() =>
        Gen.Select(s_sphereM, Gen.Double[2, 15], s_place.Array[1, 4], s_place, s_place)
            .Sample(
                (sphereM, rodM, rods, more, place) =>
                    ProtectedVolume.HeightM(sphereM, rodM, [.. rods, more], place)
                    >= ProtectedVolume.HeightM(sphereM, rodM, rods, place) - 0.01,
                iter: 1000
            );

    /// <summary>Once lost: a piece of the rim that runs over the turn's end.</summary>
    [Theory]
    [InlineData(20, 2, 1.855, 0, -0.175, 4)]
    [InlineData(20, 2, 0, 1.855, -4, -0.175)]
    [InlineData(20, 2, -1.855, 0, 0.175, -4)]
    [InlineData(20, 2, 0, -1.855, 4, 0.175)]
    public void A_fourth_rod_leaves_what_three_protect(
        double sphereM,
        double rodM,
        double thirdX,
        double thirdY,
        double fourthX,
        double fourthY
    )
    {
        var side = thirdX == 0 ? new GroundPlace(1, 0) : new(0, 1);
        GroundPlace[] three = [new(thirdX, thirdY), side, new(-side.XM, -side.YM)];
        var heightM = ProtectedVolume.HeightM(sphereM, rodM, three, new(0, 0));
        Assert.InRange(heightM, 1.95, 2);
        Assert.Equal(
            heightM,
            ProtectedVolume.HeightM(sphereM, rodM, [.. three, new(fourthX, fourthY)], new(0, 0)),
            0.002
        );
    }

    [Fact]
    public void A_point_above_the_tips_is_never_protected() =>
        Assert.False(ProtectedVolume.Holds(45, 6, [new(0, 0), new(1, 0)], new(0.5, 0), 6.01));

    [Fact]
    public void A_gap_in_the_middle_of_many_rods_is_seen()
    {
        GroundPlace[] ring = [.. Enumerable.Range(0, 12).Select(i => On(i * Math.Tau / 12))];
        Assert.True(ProtectedVolume.HeightM(20, 6, ring, On(0.1)) > 4);
        Assert.Equal(0, ProtectedVolume.HeightM(20, 6, ring, new(0, 0)), 0.01);

        static GroundPlace On(double angle) => new(25 * Math.Cos(angle), 25 * Math.Sin(angle));
    }

    [Fact]
    public void Strikes_follow_density_and_a_thing_without_size_is_not_struck() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[0, 100], Gen.Double[0, 60])
            .Sample(
                (lengthM, widthM, heightM) =>
                {
                    var areaM2 = StrikeFrequency.CollectionM2(lengthM, widthM, heightM);
                    return areaM2 >= lengthM * widthM
                        && Math.Abs(
                            StrikeFrequency.PerYear(20, areaM2, 1) - (2 * StrikeFrequency.PerYear(10, areaM2, 1))
                        )
                            < 1e-12 * (1 + areaM2)
                        && StrikeFrequency.CollectionM2(0, 0, 0) == 0;
                }
            );

    [Fact]
    public void More_thunder_more_flashes() =>
        Gen.Select(Gen.Double[0, 290], Gen.Double[0.1, 10])
            .Sample((days, more) => FlashDensity.LargestPerKm2Year(days + more) > FlashDensity.LargestPerKm2Year(days));
}
