using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class PipeTests
{
    private static readonly Gen<PipeRun> Run = Gen.Select(
        Gen.Double[0.01, 0.5],
        Gen.Double[0, 0.0003],
        Gen.Double[0, 5000],
        Gen.Double[0, 50],
        (bore, roughness, length, fittings) => new PipeRun(bore, roughness, length, fittings)
    );

    [Fact]
    public void Pipe_loss_agrees_with_the_independent_figures() =>
        Assert.All(
            Oracle.Rows("pipe_loss"),
            row =>
            {
                var loss = DarcyWeisbach.Loss(
                    new(
                        row.Number("bore_mm") / 1000,
                        row.Number("roughness_mm") / 1000,
                        row.Number("length_m"),
                        row.Number("sum_k")
                    ),
                    row.Number("flow_m3_h") / 3600,
                    row.Number("kinematic_viscosity_m2_s")
                );
                Oracle.Near(row.Number("velocity_m_s"), loss.VelocityMPerS, 1e-10);
                Oracle.Near(row.Number("reynolds"), loss.ReynoldsNumber, 1e-10);
                Oracle.Near(row.Number("darcy_f"), loss.FrictionFactor, 1e-10);
                Oracle.Near(row.Number("friction_loss_m"), loss.FrictionM, 1e-10);
                Oracle.Near(row.Number("fitting_loss_m"), loss.FittingsM, 1e-10);
                Oracle.Near(row.Number("total_loss_m"), loss.TotalM, 1e-10);
            }
        );

    [Fact]
    public void Hazen_williams_agrees_with_the_independent_figures() =>
        Assert.All(
            Oracle.Rows("hazen_williams"),
            row =>
                Oracle.Near(
                    row.Number("loss_m_10_67"),
                    HazenWilliams.LossM(
                        row.Number("bore_mm") / 1000,
                        row.Number("length_m"),
                        row.Number("flow_m3_h") / 3600,
                        row.Number("c")
                    ),
                    1e-10
                )
        );

    [Fact]
    public void Surge_agrees_with_the_independent_figures() =>
        Assert.All(
            Oracle.Rows("surge"),
            row =>
            {
                var (length, velocity) = (row.Number("length_m"), row.Number("velocity_m_s"));
                var closing = row.Number("closing_time_s");
                var water = new WaterState(row.Number("density_kg_m3"), 1e-6, 2339, row.Number("bulk_modulus_pa"));
                var speed = WaveSpeed.MPerS(
                    row.Number("bore_mm") / 1000,
                    row.Number("wall_mm") / 1000,
                    row.Number("modulus_gpa") * 1e9,
                    row.Number("support_factor_c1"),
                    water
                );
                var hard = WaterHammer.JoukowskyM(speed, velocity);
                Oracle.Near(row.Number("wave_speed_m_s"), speed, 1e-9);
                Oracle.Near(row.Number("joukowsky_m"), hard, 1e-9);
                Oracle.Near(
                    row.Number("joukowsky_kpa"),
                    PressureClass.PressureBar(hard, water.DensityKgPerM3) * 100,
                    1e-9
                );
                Oracle.Near(row.Number("critical_time_s"), WaterHammer.CriticalS(length, speed), 1e-9);
                Oracle.Near(row.Number("slow_closing_m"), WaterHammer.SlowClosingM(length, velocity, closing), 1e-9);
                Oracle.Near(row.Number("governing_m"), WaterHammer.RiseM(length, speed, velocity, closing), 1e-9);
            }
        );

    [Fact]
    public void Loss_is_finite_and_rises_with_the_flow() =>
        Gen.Select(Run, Gen.Double[0, 0.05], Gen.Double[0, 0.05], Gen.Double[3e-7, 2e-6])
            .Sample(
                (run, one, other, viscosity) =>
                {
                    var less = DarcyWeisbach.Loss(run, Math.Min(one, other), viscosity).TotalM;
                    var more = DarcyWeisbach.Loss(run, Math.Max(one, other), viscosity).TotalM;
                    Assert.True(double.IsFinite(more) && less >= 0 && less <= more);
                }
            );

    [Theory]
    [InlineData(0)]
    [InlineData(double.Epsilon)]
    [InlineData(1e-18)]
    public void Water_at_rest_loses_nothing(double flow) =>
        Assert.Equal(0, DarcyWeisbach.Loss(new(0.05, 1e-5, 100, 10), flow, 1e-6).TotalM, 1e-20);

    [Fact]
    public void Working_shows_the_figures_of_the_loss()
    {
        var run = new PipeRun(0.0514, 0.00001, 850, 10);
        var loss = DarcyWeisbach.Loss(run, 0.0012, 0.8927e-6);
        var sheet = DarcyWeisbach.Show(run, 0.0012, 0.8927e-6);
        Assert.Equal(
            [loss.VelocityMPerS, loss.ReynoldsNumber, loss.FrictionFactor, loss.FrictionM, loss.FittingsM, loss.TotalM],
            sheet.Lines.Select(line => line.Value)
        );
        Assert.Equal("0.0012/((π/4) 0.0514²)", sheet.Lines[0].Numbers);
    }

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

    [Fact]
    public void Every_fitting_has_a_coefficient_and_a_source() =>
        Assert.All(
            FittingLoss.Names,
            name =>
            {
                Assert.InRange(FittingLoss.Coefficient(name, 0.05), 0.05, 15);
                Assert.NotEmpty(FittingLoss.SourceOf(name));
            }
        );

    [Fact]
    public void An_unknown_fitting_is_refused_with_the_names_that_are_known()
    {
        var trouble = Assert.Throws<ArgumentException>(() => FittingLoss.Coefficient("elbow 30", 0.05));
        Assert.Contains("elbow 90", trouble.Message);
    }

    [Theory]
    [InlineData(12, 1, 1)]
    [InlineData(25, 0.935, 1)]
    [InlineData(25.1, 0.9337, 0.80)]
    [InlineData(35, 0.805, 0.80)]
    [InlineData(40, 0.74, 0.63)]
    public void Plastic_weakens_as_the_water_warms(double degC, double polyethylene, double pvc)
    {
        Assert.Equal(polyethylene, PressureClass.PolyethyleneFactor(degC), 1e-9);
        Assert.Equal(pvc, PressureClass.PvcFactor(degC), 1e-9);
    }

    [Fact]
    public void Anchoring_stiffens_the_pipe()
    {
        Assert.Equal(0.775, WaveSpeed.AnchoredUpstreamFactor(0.45), 1e-12);
        Assert.Equal(0.7975, WaveSpeed.AnchoredThroughoutFactor(0.45), 1e-12);
    }

    [Fact]
    public void Head_and_pressure_turn_into_each_other() =>
        Gen.Double[0, 500]
            .Sample(head =>
                Assert.Equal(head, PressureClass.HeadM(PressureClass.PressureBar(head, 998.2), 998.2), 1e-9)
            );
}
