using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>Cell temperatures beside independent figures.</summary>
internal static class OracleCell
{
    private static readonly OracleTable Cells = OracleChecks.Table("cell_temperature.csv");
    private static readonly Margin Warmth = new(0.01, "K");

    private static readonly IReadOnlyDictionary<string, SandiaMount> Mounts = new Dictionary<string, SandiaMount>
    {
        ["open_rack_glass_glass"] = SandiaMount.RackGlassGlass,
        ["open_rack_glass_polymer"] = SandiaMount.RackGlassPolymer,
        ["close_mount_glass_glass"] = SandiaMount.RoofGlassGlass,
        ["insulated_back_glass_polymer"] = SandiaMount.InsulatedGlassPolymer,
    };

    internal static IReadOnlyList<OracleCheck> All { get; } =
    [
        Cells.Check(
            "ross_c",
            Warmth,
            row => CellTemperature.DegCByNoct(PlaneWPerM2(row), AirDegC(row), row.Number("noct_c"))
        ),
        Cells.Check(
            "faiman_c",
            Warmth,
            row =>
                CellTemperature.DegCByFaiman(
                    PlaneWPerM2(row),
                    AirDegC(row),
                    WindMPerS(row),
                    row.Number("faiman_u0"),
                    row.Number("faiman_u1")
                )
        ),
        Cells.Check(
            "noct_full_c",
            Warmth,
            row =>
                CellTemperature.DegCByNoctInWind(
                    PlaneWPerM2(row),
                    AirDegC(row),
                    WindMPerS(row),
                    new(row.Number("noct_c"), row.Number("efficiency"), row.Number("tau_alpha")),
                    new(row.Number("array_height_storeys") > 1, row.Number("standoff_in") * 25.4)
                )
        ),
        Cells.Check(
            "sandia_cell_c",
            Warmth,
            row =>
                CellTemperature.DegCBySandia(
                    PlaneWPerM2(row),
                    AirDegC(row),
                    WindMPerS(row),
                    Mounts[row["sandia_mount"]]
                )
        ),
    ];

    private static double PlaneWPerM2(CsvRow row) => row.Number("poa");

    private static double AirDegC(CsvRow row) => row.Number("temp_air_c");

    private static double WindMPerS(CsvRow row) => row.Number("wind_m_s");
}
