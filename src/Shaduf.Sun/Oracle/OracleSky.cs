using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Air, clear skies and the parting of light into beam and diffuse beside independent figures.</summary>
internal static class OracleSky
{
    private static readonly OracleTable Clear = OracleChecks.Table("clear_sky.csv");
    private static readonly OracleTable Up = OracleChecks.Table("clear_sky.csv", row => ZenithDeg(row) <= 90);
    private static readonly OracleTable Parted = OracleChecks.Table("decomposition.csv");
    private static readonly Margin AirRatio = new(1e-6, "");

    internal static IReadOnlyList<OracleCheck> All { get; } =
    [
        Up.Check("airmass_relative", AirRatio, row => AirMass.KastenYoungRatio(ZenithDeg(row))),
        Up.Check(
            "airmass_absolute",
            AirRatio,
            row => AirMass.KastenYoungRatio(ZenithDeg(row)) * row.Number("pressure_pa") / AirMass.SeaLevelPa
        ),
        Light(Clear, "haurwitz_ghi", row => ClearSky.HaurwitzWPerM2(ZenithDeg(row))),
        Light(Clear, "ineichen_ghi", row => Ineichen(row).GlobalWPerM2),
        Light(Clear, "ineichen_dni", row => Ineichen(row).DirectNormalWPerM2),
        Light(Clear, "ineichen_dhi", row => Ineichen(row).DiffuseWPerM2),
        Light(Clear, "solis_ghi", row => Solis(row).GlobalWPerM2),
        Light(Clear, "solis_dni", row => Solis(row).DirectNormalWPerM2),
        Light(Clear, "solis_dhi", row => Solis(row).DiffuseWPerM2),
        Parted.Check(
            "kt",
            new(1e-9, ""),
            row => Decomposition.ClearnessRatio(row.Number("ghi"), row.Number("zenith_deg"), NormalWPerM2(row))
        ),
        Light(Parted, "erbs_dni", row => Erbs(row).DirectNormalWPerM2),
        Light(Parted, "erbs_dhi", row => Erbs(row).DiffuseWPerM2),
        .. Split("orgill_hollands", Decomposition.OrgillHollandsHourlyDiffuseShare),
        .. Split("erbs_driesse", Decomposition.ErbsDriesseHourlyDiffuseShare),
        .. Split("boland60", Decomposition.BolandHourlyDiffuseShare),
        .. Split("boland15", Decomposition.BolandQuarterHourlyDiffuseShare),
        Light(
            Parted,
            "disc_dni",
            row =>
                Decomposition.DiscDirectNormalWPerM2(
                    row.Number("ghi"),
                    row.Number("zenith_deg"),
                    row.Number("disc_dni_extra_1370"),
                    AirMass.SeaLevelPa
                )
        ),
    ];

    private static OracleCheck Light(OracleTable table, string column, Func<CsvRow, double> obtain) =>
        table.Check(column, OracleChecks.Irradiance, obtain);

    private static double ZenithDeg(CsvRow row) => row.Number("apparent_zenith_deg");

    private static double NormalWPerM2(CsvRow row) => row.Number("dni_extra_1366_1");

    private static SkyMoment Ineichen(CsvRow row) =>
        ClearSky.IneichenPerez(
            ZenithDeg(row),
            row.Number("pressure_pa"),
            row.Number("altitude_m"),
            row.Number("linke_turbidity"),
            row.Number("dni_extra_w_m2")
        );

    private static SkyMoment Solis(CsvRow row) =>
        ClearSky.SimplifiedSolis(
            ZenithDeg(row),
            row.Number("pressure_pa"),
            row.Number("aod700"),
            row.Number("precipitable_water_cm") * 10,
            row.Number("dni_extra_w_m2")
        );

    private static SplitIrradiance Erbs(CsvRow row) =>
        Decomposition.ErbsSplit(row.Number("ghi"), row.Number("zenith_deg"), NormalWPerM2(row));

    private static IEnumerable<OracleCheck> Split(string rule, Func<double, double> diffuseShare)
    {
        var of = (CsvRow row) =>
            Decomposition.Split(row.Number("ghi"), row.Number("zenith_deg"), NormalWPerM2(row), diffuseShare);
        return
        [
            Light(Parted, $"{rule}_dni", row => of(row).DirectNormalWPerM2),
            Light(Parted, $"{rule}_dhi", row => of(row).DiffuseWPerM2),
        ];
    }
}
