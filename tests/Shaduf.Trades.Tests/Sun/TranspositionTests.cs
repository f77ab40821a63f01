using CsCheck;
using Shaduf.Sun;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Sun;

public sealed class TranspositionTests
{
    [Fact]
    public void Agrees_with_the_oracle()
    {
        foreach (var row in Oracle.Rows("transposition.csv"))
        {
            var (sky, sun, plane) = (Sky(row), Sun(row), Plane(row));
            Assert.Equal(row.Number("aoi_deg"), Transposition.IncidenceDeg(sun, plane), 1e-6);
            var hayDavies = Transposition.HayDavies(sky, sun, plane, row.Number("albedo"));
            Oracle.AssertIrradiance(row, "beam", hayDavies.BeamWPerM2);
            Oracle.AssertIrradiance(row, "ground", hayDavies.GroundWPerM2);
            Oracle.AssertIrradiance(row, "haydavies_sky", hayDavies.SkyWPerM2);
            Oracle.AssertIrradiance(row, "total_haydavies", hayDavies.TotalWPerM2);
            var isotropic = Transposition.Isotropic(sky, sun, plane, row.Number("albedo"));
            Oracle.AssertIrradiance(row, "isotropic_sky", isotropic.SkyWPerM2);
            Oracle.AssertIrradiance(row, "total_isotropic", isotropic.TotalWPerM2);
        }
    }

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

    private static SkyMoment Sky(CsvRow row) =>
        new(row.Number("ghi"), row.Number("dni"), row.Number("dhi"), row.Number("dni_extra_1366_1"));

    private static SunAngles Sun(CsvRow row) => new(row.Number("zenith_deg"), row.Number("azimuth_deg"));

    private static PlaneFacing Plane(CsvRow row) => new(row.Number("tilt_deg"), row.Number("surface_azimuth_deg"));
}
