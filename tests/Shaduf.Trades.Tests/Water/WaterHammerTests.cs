using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class WaterHammerTests
{
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
}
