using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class TranspositionTests
{
    [Fact]
    public void No_model_leaves_the_numbers_over_the_whole_domain() =>
        Gen.Select(
                Gen.Select(Gen.Double[0, 1440], Gen.Double[0, 1], Gen.Double[0, 2000], Gen.Double[0, 2000]),
                Gen.Select(Gen.OneOf(Gen.Double[0, 180], Gen.Const(90.0), Gen.Const(0.0)), Gen.Double[0, 360]),
                Gen.Select(Gen.OneOf(Gen.Double[0, 90], Gen.Const(90.0)), Gen.Double[0, 360]),
                Gen.Double[0, 1]
            )
            .Sample(
                (light, angles, facing, albedoShare) =>
                {
                    var (normal, directShare, diffuse, global) = light;
                    var sky = new SkyMoment(global, normal * directShare, diffuse, normal);
                    var (sun, plane) = (
                        new SunAngles(angles.Item1, angles.Item2),
                        new PlaneFacing(facing.Item1, facing.Item2)
                    );
                    return new[]
                    {
                        Transposition.Isotropic(sky, sun, plane, albedoShare),
                        Transposition.HayDavies(sky, sun, plane, albedoShare),
                        Transposition.Reindl(sky, sun, plane, albedoShare),
                        Transposition.Perez(sky, sun, plane, albedoShare, PerezSet.AllSites1990),
                        Transposition.Perez(sky, sun, plane, albedoShare, PerezSet.France1988),
                    }.All(light =>
                        double.IsFinite(light.TotalWPerM2) && light is { BeamWPerM2: >= 0, SkyWPerM2: >= 0 }
                    );
                },
                iter: 20_000
            );

    [Fact]
    public void A_level_plane_gets_the_global_irradiance() =>
        Gen.Select(Gen.Double[0, 1000], Gen.Double[0, 400], Gen.Double[0, 89], Gen.Double[0, 360])
            .Sample(
                (directWPerM2, diffuseWPerM2, zenithDeg, azimuthDeg) =>
                {
                    var globalWPerM2 = (directWPerM2 * Math.Cos(zenithDeg * Math.PI / 180)) + diffuseWPerM2;
                    var onPlane = Transposition.HayDavies(
                        new(globalWPerM2, directWPerM2, diffuseWPerM2, 1361),
                        new(zenithDeg, azimuthDeg),
                        new(0, 0),
                        0.2
                    );
                    return Math.Abs(onPlane.TotalWPerM2 - globalWPerM2) < 1e-3;
                }
            );

    [Fact]
    public void Without_beam_the_two_skies_are_one()
    {
        var sky = new SkyMoment(300, 0, 300, 1361);
        var (sun, plane) = (new SunAngles(40, 100), new PlaneFacing(30, 0));
        Assert.Equal(Transposition.Isotropic(sky, sun, plane, 0.2), Transposition.HayDavies(sky, sun, plane, 0.2));
    }

    [Fact]
    public void A_sun_below_the_horizon_gives_no_beam()
    {
        var onPlane = Transposition.HayDavies(new(5, 20, 5, 1361), new(90.5, 90), new(90, 90), 0.2);
        Assert.Equal(new PlaneIrradiance(0, 2.5, 0.5), Rounded(onPlane));
    }

    [Fact]
    public void Refuses_more_beam_than_leaves_the_sun() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Transposition.HayDavies(new(1000, 1400, 100, 1361), new(30, 90), new(20, 0), 0.2)
        );

    private static PlaneIrradiance Rounded(PlaneIrradiance value) =>
        new(Math.Round(value.BeamWPerM2, 9), Math.Round(value.SkyWPerM2, 9), Math.Round(value.GroundWPerM2, 9));
}
