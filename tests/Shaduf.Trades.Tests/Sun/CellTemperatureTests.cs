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
        }
    }

    [Theory]
    [InlineData(double.NaN, 20, 45)]
    [InlineData(800, double.NaN, 45)]
    [InlineData(800, 20, 5)]
    public void Refuses_what_cannot_be(double planeWPerM2, double airDegC, double noctDegC) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CellTemperature.DegCByNoct(planeWPerM2, airDegC, noctDegC));
}
