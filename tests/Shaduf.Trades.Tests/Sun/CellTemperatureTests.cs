using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class CellTemperatureTests
{
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
