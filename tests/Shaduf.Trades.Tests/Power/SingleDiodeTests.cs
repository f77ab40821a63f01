using CsCheck;
using Shaduf.Power;
using Shaduf.Trades.Tests.Sun;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Power;

public sealed class SingleDiodeTests
{
    private static readonly Gen<DiodeState> Diode = Gen.Select(
        Gen.Double[-6, 1.5],
        Gen.Double[-18, -3],
        Gen.Double[0, 3],
        Gen.Double[-6, 0],
        Gen.Double[0.3, 3],
        (light, saturation, series, shunt, ideality) =>
            new DiodeState(
                Math.Pow(10, light),
                Math.Pow(10, saturation),
                series,
                shunt < -5 ? 0 : Math.Pow(10, shunt),
                ideality
            )
    );

    [Fact]
    public void Agrees_with_the_oracle()
    {
        var rows = Oracle.Rows("single_diode.csv");
        Assert.Equal(18, rows.Count);
        foreach (var row in rows)
        {
            var module = new DeSotoModule(
                new(
                    row.Number("i_l_ref_a"),
                    row.Number("i_o_ref_a"),
                    row.Number("r_s_ohm"),
                    1 / row.Number("r_sh_ref_ohm"),
                    row.Number("a_ref_v")
                ),
                row.Number("alpha_sc_a_per_k")
            );
            var diode = DeSoto.At(module, row.Number("irradiance_w_m2"), row.Number("cell_temp_c"));
            var point = SingleDiode.MaximumPower(diode);
            var openV = SingleDiode.OpenCircuitV(diode);
            Close(row, "i_l_a", diode.LightA);
            Close(row, "i_o_a", diode.SaturationA);
            Close(row, "r_sh_ohm", 1 / diode.ShuntPerOhm);
            Close(row, "a_v", diode.IdealityV);
            Close(row, "isc_a", SingleDiode.ShortCircuitA(diode));
            Close(row, "voc_v", openV);
            Close(row, "imp_a", point.CurrentA);
            Close(row, "vmp_v", point.VoltageV);
            Close(row, "pmp_w", point.PowerW);
            Close(row, "i_at_half_voc_a", SingleDiode.CurrentA(diode, openV / 2));
            Close(row, "i_at_90pc_voc_a", SingleDiode.CurrentA(diode, 0.9 * openV));
        }
    }

    // Asked for: 0.1 %. The root is sharp, so that a thousandth of that shows a slip of the formula.
    private static void Close(CsvRow row, string column, double obtained)
    {
        var expected = row.Number(column);
        Assert.True(
            Math.Abs(obtained - expected) <= 1e-6 * Math.Abs(expected),
            $"{row["id"]} {column}: expected {expected}, obtained {obtained}"
        );
    }

    [Fact]
    public void The_maximum_is_found_for_any_diode() =>
        Diode.Sample(diode =>
        {
            var point = SingleDiode.MaximumPower(diode);
            var openV = SingleDiode.OpenCircuitV(diode);
            var shortA = SingleDiode.ShortCircuitA(diode);
            Assert.True(point.RoundCount <= 60, $"{point.RoundCount} rounds");
            Assert.InRange(point.VoltageV, 0, openV);
            Assert.InRange(point.CurrentA, 0, shortA);
            Assert.True(double.IsFinite(point.PowerW) && Math.Abs(point.ResidualA) <= 1e-9 * shortA);

            // No other place of the curve gives more.
            for (var i = 0; i <= 40; i++)
            {
                var voltageV = openV * (i / 40.0);
                var powerW = voltageV * SingleDiode.CurrentA(diode, voltageV);
                Assert.True(powerW <= point.PowerW * (1 + 1e-12));
            }
        });

    [Fact]
    public void The_current_falls_as_the_voltage_rises_and_solves_the_equation() =>
        Gen.Select(Diode, Gen.Double[0, 1], Gen.Double[0, 1])
            .Sample(
                (diode, one, other) =>
                {
                    var openV = SingleDiode.OpenCircuitV(diode);
                    var (lowV, highV) = (openV * Math.Min(one, other), openV * Math.Max(one, other));
                    var currentA = SingleDiode.CurrentA(diode, lowV);
                    var u = lowV + (currentA * diode.SeriesOhm);
                    var againA =
                        diode.LightA
                        - (diode.SaturationA * (Math.Exp(u / diode.IdealityV) - 1))
                        - (u * diode.ShuntPerOhm);
                    Assert.True(Math.Abs(againA - currentA) <= 1e-9 * diode.LightA);
                    Assert.True(SingleDiode.CurrentA(diode, highV) <= currentA + (1e-12 * diode.LightA));
                }
            );

    [Fact]
    public void Without_light_there_is_nothing()
    {
        var dark = new DiodeState(0, 1e-10, 0.2, 0.01, 1.8);
        Assert.Equal(0, SingleDiode.OpenCircuitV(dark));
        Assert.Equal(0, SingleDiode.ShortCircuitA(dark));
        Assert.Equal(0, SingleDiode.MaximumPower(dark).PowerW);
    }

    [Theory]
    [InlineData(double.NaN, 1e-10, 0.2, 0.01, 1.8)]
    [InlineData(9, 0, 0.2, 0.01, 1.8)]
    [InlineData(9, 1e-10, -0.1, 0.01, 1.8)]
    [InlineData(9, 1e-10, 0.2, double.PositiveInfinity, 1.8)]
    [InlineData(9, 1e-10, 0.2, 0.01, 0)]
    public void Refuses_what_cannot_be(double lightA, double saturationA, double ohm, double shunt, double idealityV)
    {
        var diode = new DiodeState(lightA, saturationA, ohm, shunt, idealityV);
        Assert.Throws<ArgumentOutOfRangeException>(() => SingleDiode.MaximumPower(diode));
        Assert.Throws<ArgumentOutOfRangeException>(() => SingleDiode.CurrentA(diode, 0));
    }

    [Fact]
    public void A_voltage_beyond_open_circuit_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SingleDiode.CurrentA(new(9, 1e-10, 0.2, 0.01, 1.8), 60));
}
