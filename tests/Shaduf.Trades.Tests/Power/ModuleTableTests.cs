using System.Collections.Immutable;
using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class ModuleTableTests
{
    private static readonly DeSotoModule Module = DeSotoFit.Of(Samples.Module).Module;
    private static readonly ModuleTable Table = ModuleTable.Build(Module);

    [Fact]
    public void Misses_the_solved_power_by_less_than_a_ten_thousandth_of_the_rated_power_at_that_light() =>
        Gen.Select(DeSotoFitTests.Usual, Gen.Double[0, Math.Log(2000)], Gen.Double[-60, 180])
            .Sample(
                (sheet, logOfLight, cellDegC) =>
                {
                    var irradianceWPerM2 = Math.Min(2000, Math.Exp(logOfLight));
                    Misses(sheet, irradianceWPerM2, cellDegC, 1e-4 * sheet.RatedW * irradianceWPerM2 / 1000);
                },
                iter: 300
            );

    [Fact]
    public void Misses_it_by_less_than_a_part_in_fifty_thousand_where_the_year_is() =>
        Gen.Select(DeSotoFitTests.Usual, Gen.Double[Math.Log(10), Math.Log(1500)], Gen.Double[-40, 100])
            .Sample(
                (sheet, logOfLight, cellDegC) =>
                {
                    var irradianceWPerM2 = Math.Exp(logOfLight);
                    var powerW = DeSoto.MaximumPowerW(DeSotoFit.Of(sheet).Module, irradianceWPerM2, cellDegC);
                    Misses(sheet, irradianceWPerM2, cellDegC, 2e-5 * powerW);
                },
                iter: 300
            );

    private static void Misses(ModuleSheet sheet, double irradianceWPerM2, double cellDegC, double mostW)
    {
        var module = DeSotoFit.Of(sheet).Module;
        var solvedW = DeSoto.MaximumPowerW(module, irradianceWPerM2, cellDegC);
        var readW = ModuleTable.Build(module).PowerW(irradianceWPerM2, cellDegC);
        Assert.True(
            Math.Abs(readW - solvedW) <= mostW,
            $"{irradianceWPerM2} W/m2, {cellDegC} degC: solved {solvedW}, read {readW} W, {(readW / solvedW) - 1:E1}"
        );
    }

    [Theory]
    [InlineData(0, 20)]
    [InlineData(0.999, 20)]
    public void Below_a_watt_a_square_metre_nothing_comes(double irradianceWPerM2, double cellDegC) =>
        Assert.Equal(0, Table.PowerW(irradianceWPerM2, cellDegC));

    [Theory]
    [InlineData(1, -60)]
    [InlineData(1, 180)]
    [InlineData(2000, -60)]
    [InlineData(2000, 180)]
    public void The_corners_are_the_solved_ones(double irradianceWPerM2, double cellDegC)
    {
        var solvedW = DeSoto.MaximumPowerW(Module, irradianceWPerM2, cellDegC);
        Assert.Equal(solvedW, Table.PowerW(irradianceWPerM2, cellDegC), 1e-9 * solvedW);
    }

    [Theory]
    [InlineData(double.NaN, 20)]
    [InlineData(800, double.NaN)]
    [InlineData(-1, 20)]
    [InlineData(2001, 20)]
    [InlineData(800, 181)]
    public void Refuses_what_is_outside(double irradianceWPerM2, double cellDegC) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Table.PowerW(irradianceWPerM2, cellDegC));

    [Fact]
    public void A_year_is_its_hours()
    {
        ImmutableArray<double> light = [0, 400, 1000];
        ImmutableArray<double> cell = [10, 30, 60];
        Assert.Equal(light.Zip(cell, Table.PowerW), Table.YearW(light, cell));
    }

    [Fact]
    public void Series_of_unequal_length_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Table.YearW([0, 1], [20]));
        Assert.Throws<ArgumentException>(() => Table.YearW(default, default));
    }
}
