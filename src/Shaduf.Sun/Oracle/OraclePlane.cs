using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Light on a plane and through its glass beside independent figures.</summary>
internal static class OraclePlane
{
    private static readonly OracleTable Planes = OracleChecks.Table("transposition.csv");
    private static readonly OracleTable Glasses = OracleChecks.Table("iam.csv");

    internal static IReadOnlyList<OracleCheck> All { get; } =
    [
        Planes.Check("aoi_deg", new(1e-6, "deg"), row => Transposition.IncidenceDeg(Sun(row), Plane(row))),
        Light("beam", row => HayDavies(row).BeamWPerM2),
        Light("ground", row => HayDavies(row).GroundWPerM2),
        Light("haydavies_sky", row => HayDavies(row).SkyWPerM2),
        Light("total_haydavies", row => HayDavies(row).TotalWPerM2),
        Light("isotropic_sky", row => Isotropic(row).SkyWPerM2),
        Light("total_isotropic", row => Isotropic(row).TotalWPerM2),
        Light("reindl_sky", row => Reindl(row).SkyWPerM2),
        Light("total_reindl", row => Reindl(row).TotalWPerM2),
        Light("perez1990_sky", row => Perez(row, PerezSet.AllSites1990).SkyWPerM2),
        Light("total_perez1990", row => Perez(row, PerezSet.AllSites1990).TotalWPerM2),
        Light("perez_allsitescomposite1988_sky", row => Perez(row, PerezSet.AllSites1988).SkyWPerM2),
        Light("perez_sandiacomposite1988_sky", row => Perez(row, PerezSet.Sandia1988).SkyWPerM2),
        Light("perez_usacomposite1988_sky", row => Perez(row, PerezSet.Usa1988).SkyWPerM2),
        Light("perez_france1988_sky", row => Perez(row, PerezSet.France1988).SkyWPerM2),
        Passed("ashrae_b005", deg => IncidenceModifier.AshraeShare(deg, 0.05)),
        Passed("ashrae_b004", deg => IncidenceModifier.AshraeShare(deg, 0.04)),
        Passed("physical_n1526_k4_l0002", deg => IncidenceModifier.PhysicalShare(deg, Glass.Usual)),
        Passed(
            "physical_ar129_n1526_k4_l0002",
            deg => IncidenceModifier.PhysicalShare(deg, Glass.Usual with { CoatingIndex = 1.29 })
        ),
        Passed("physical_n15_k4_l0004", deg => IncidenceModifier.PhysicalShare(deg, new(1.5, 4, 0.004))),
        Passed("martin_ruiz_ar016", deg => IncidenceModifier.MartinRuizShare(deg, 0.16)),
    ];

    private static OracleCheck Light(string column, Func<CsvRow, double> obtain) =>
        Planes.Check(column, OracleChecks.Irradiance, obtain);

    private static OracleCheck Passed(string column, Func<double, double> shareAtDeg) =>
        Glasses.Check(column, new(1e-9, ""), row => shareAtDeg(row.Number("aoi_deg")));

    private static SkyMoment Sky(CsvRow row) =>
        new(row.Number("ghi"), row.Number("dni"), row.Number("dhi"), row.Number("dni_extra_1366_1"));

    private static SunAngles Sun(CsvRow row) => new(row.Number("zenith_deg"), row.Number("azimuth_deg"));

    private static PlaneFacing Plane(CsvRow row) => new(row.Number("tilt_deg"), row.Number("surface_azimuth_deg"));

    private static double AlbedoShare(CsvRow row) => row.Number("albedo");

    private static PlaneIrradiance HayDavies(CsvRow row) =>
        Transposition.HayDavies(Sky(row), Sun(row), Plane(row), AlbedoShare(row));

    private static PlaneIrradiance Isotropic(CsvRow row) =>
        Transposition.Isotropic(Sky(row), Sun(row), Plane(row), AlbedoShare(row));

    private static PlaneIrradiance Reindl(CsvRow row) =>
        Transposition.Reindl(Sky(row), Sun(row), Plane(row), AlbedoShare(row));

    private static PlaneIrradiance Perez(CsvRow row, PerezSet set) =>
        Transposition.Perez(Sky(row), Sun(row), Plane(row), AlbedoShare(row), set);
}
