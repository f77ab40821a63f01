using System.Collections.Immutable;
using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class ModulePowerTests
{
    private static readonly Gen<double> Irradiance = Gen.Double[0, 1500];
    private static readonly Gen<double> Cell = Gen.Double[-60, 120];

    [Fact]
    public void Falls_with_temperature_and_is_a_power() =>
        Gen.Select(Irradiance, Cell, Cell, Gen.Double[-0.006, 0])
            .Sample(
                (irradiance, one, other, perK) =>
                {
                    var module = Samples.Module with { Coefficients = new(perK, -0.0027, 0.00048) };
                    var cold = ModulePower.AtCellW(module, irradiance, Math.Min(one, other));
                    var hot = ModulePower.AtCellW(module, irradiance, Math.Max(one, other));
                    return hot >= 0 && hot <= cold && double.IsFinite(cold);
                }
            );

    [Fact]
    public void Refuses_what_is_no_number()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ModulePower.AtCellW(Samples.Module, double.NaN, 25));
        Assert.Throws<ArgumentOutOfRangeException>(() => ModulePower.AtCellW(Samples.Module, 800, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            ModulePower.AtCellW(Samples.Module with { RatedW = double.NaN }, 800, 25)
        );
    }

    [Fact]
    public void A_year_is_its_hours()
    {
        ImmutableArray<double> plane = [0, 400, 1000];
        ImmutableArray<double> cell = [10, 30, 60];
        Assert.Equal(
            plane.Zip(cell, (irradiance, degC) => ModulePower.AtCellW(Samples.Module, irradiance, degC)),
            ModulePower.YearW(Samples.Module, plane, cell)
        );
    }

    [Fact]
    public void Series_of_unequal_length_are_refused()
    {
        Assert.Throws<ArgumentException>(() => ModulePower.YearW(Samples.Module, [0, 1], [20]));
        Assert.Throws<ArgumentException>(() => ModulePower.YearW(Samples.Module, default, default));
    }
}
