using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class WaterStateTests
{
    [Fact]
    public void Water_state_is_the_table_at_its_rows_and_between_its_neighbours_elsewhere()
    {
        Assert.Equal(new WaterState(997.05, 0.8927e-6, 3170, 2.215e9), WaterState.At(25));
        Gen.Double[5, 60]
            .Sample(degC =>
            {
                var water = WaterState.At(degC);
                Assert.InRange(water.DensityKgPerM3, 983.21 - 1e-9, 999.97 + 1e-9);
                Assert.InRange(water.KinematicViscosityM2PerS * 1e6, 0.474 - 1e-9, 1.5182 + 1e-9);
                Assert.InRange(water.VapourPressurePa, 873 - 1e-6, 19_946 + 1e-6);
                Assert.InRange(water.BulkModulusPa, 2.034e9 - 1, 2.272e9 + 1);
            });
    }

    [Theory]
    [InlineData(4.9)]
    [InlineData(60.1)]
    [InlineData(double.NaN)]
    public void Water_state_refuses_temperatures_off_its_table(double degC) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterState.At(degC));
}
