using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class CellTemperatureTests
{
    [Fact]
    public void Agrees_with_the_oracle()
    {
        foreach (var row in Oracle.Rows("cell_temperature.csv"))
        {
            var (planeWPerM2, airDegC) = (row.Number("poa"), row.Number("temp_air_c"));
            Assert.Equal(
                row.Number("ross_c"),
                CellTemperature.DegCByNoct(planeWPerM2, airDegC, row.Number("noct_c")),
                0.01
            );
            var faimanDegC = CellTemperature.DegCByFaiman(
                planeWPerM2,
                airDegC,
                row.Number("wind_m_s"),
                row.Number("faiman_u0"),
                row.Number("faiman_u1")
            );
            Assert.Equal(row.Number("faiman_c"), faimanDegC, 0.01);
            var inWindDegC = CellTemperature.DegCByNoctInWind(
                planeWPerM2,
                airDegC,
                row.Number("wind_m_s"),
                new(row.Number("noct_c"), row.Number("efficiency"), row.Number("tau_alpha")),
                new(row.Number("array_height_storeys") > 1, row.Number("standoff_in") * 25.4)
            );
            Assert.Equal(row.Number("noct_full_c"), inWindDegC, 0.01);
            var sandiaDegC = CellTemperature.DegCBySandia(
                planeWPerM2,
                airDegC,
                row.Number("wind_m_s"),
                Mounts[row["sandia_mount"]]
            );
            Assert.Equal(row.Number("sandia_cell_c"), sandiaDegC, 0.01);
        }
    }

    private static readonly Dictionary<string, SandiaMount> Mounts = new()
    {
        ["open_rack_glass_glass"] = SandiaMount.RackGlassGlass,
        ["open_rack_glass_polymer"] = SandiaMount.RackGlassPolymer,
        ["close_mount_glass_glass"] = SandiaMount.RoofGlassGlass,
        ["insulated_back_glass_polymer"] = SandiaMount.InsulatedGlassPolymer,
    };

    [Theory]
    [InlineData(41)]
    [InlineData(45)]
    [InlineData(48)]
    public void The_year_agrees_with_the_card_at_its_own_conditions(double noctDegC)
    {
        var lossWPerM2K = CellTemperature.StillAirLossWPerM2K(noctDegC);
        Assert.Equal(
            noctDegC,
            CellTemperature.DegCByFaiman(800, 20, 1, lossWPerM2K, CellTemperature.WindLossWSPerM3K),
            1e-9
        );
    }

    [Fact]
    public void Mountings_that_are_not_in_the_table_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CellTemperature.DegCBySandia(800, 20, 1, (SandiaMount)9));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            CellTemperature.DegCByNoctInWind(800, 20, 1, new(45, 0.2, double.NaN), new(false, 100))
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            CellTemperature.DegCByNoctInWind(800, 20, 1, new(45, 0.2, 0.9), new(false, double.NaN))
        );
    }

    [Theory]
    [InlineData(double.NaN, 20, 45)]
    [InlineData(800, double.NaN, 45)]
    [InlineData(800, 20, 5)]
    public void Refuses_what_cannot_be(double planeWPerM2, double airDegC, double noctDegC) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CellTemperature.DegCByNoct(planeWPerM2, airDegC, noctDegC));
}
