using CsCheck;
using Shaduf.Water;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Water;

public sealed class OperatingPointTests
{
    private const double SPerH = 3600;

    [Fact]
    public void Operating_points_agree_with_the_independent_figures() =>
        Assert.All(
            Oracle.Rows("operating_point"),
            row =>
            {
                // A run without length, of fittings only, stands in for k Q2.
                const double bore = 0.05;
                var fittings =
                    row.Number("k_m_per_m3h2")
                    * SPerH
                    * SPerH
                    * 2
                    * Gravity.MPerS2
                    * Math.Pow(Math.PI / 4 * bore * bore, 2);
                var lift = Lift(row, new PipeRun(bore, 0, 0, fittings), 1e-6);
                var point = OperatingPoint.Solve(OraclePump(row), lift, row.Number("speed_ratio"));
                Oracle.Near(row.Number("flow_m3_h"), point.FlowM3PerS * SPerH, 1e-9);
                Oracle.Near(row.Number("head_m"), point.HeadM, 1e-9);
                Oracle.Near(
                    row.Number("hydraulic_power_w"),
                    HydraulicPower.W(point.FlowM3PerS, point.HeadM, 998.2),
                    1e-9
                );
                Oracle.Near(
                    row.Number("speed_ratio_no_flow"),
                    OperatingPoint.LeastSpeedRatio(OraclePump(row), lift),
                    1e-9
                );
            }
        );

    [Fact]
    public void Operating_points_with_pipe_friction_agree_with_the_independent_figures() =>
        Assert.All(
            Oracle.Rows("operating_point_colebrook"),
            row =>
            {
                var run = new PipeRun(
                    row.Number("bore_mm") / 1000,
                    row.Number("roughness_mm") / 1000,
                    row.Number("length_m"),
                    row.Number("sum_k")
                );
                var viscosity = row.Number("kinematic_viscosity_m2_s");
                var lift = Lift(row, run, viscosity);
                var point = OperatingPoint.Solve(OraclePump(row), lift, row.Number("speed_ratio"));
                var loss = DarcyWeisbach.Loss(run, point.FlowM3PerS, viscosity);
                Oracle.Near(row.Number("flow_m3_h"), point.FlowM3PerS * SPerH, 1e-9);
                Oracle.Near(row.Number("head_m"), point.HeadM, 1e-9);
                Oracle.Near(row.Number("velocity_m_s"), loss.VelocityMPerS, 1e-9);
                Oracle.Near(row.Number("darcy_f"), loss.FrictionFactor, 1e-9);
            }
        );

    [Fact]
    public void Operating_point_lies_on_both_curves_or_the_pump_falls_short() =>
        Gen.Select(MadeUp.AnyPump, MadeUp.AnyLift, Gen.Double[0.2, 1.2])
            .Sample(
                (curve, lift, speed) =>
                {
                    var point = OperatingPoint.Solve(curve, lift, speed);
                    Assert.Equal(lift.HeadM(point.FlowM3PerS), point.HeadM);
                    if (point.FlowM3PerS > 0)
                    {
                        Assert.Equal(curve.HeadM(point.FlowM3PerS, speed), point.HeadM, 1e-8);
                        Assert.InRange(point.Rounds, 0, 40);
                        Assert.True(speed > OperatingPoint.LeastSpeedRatio(curve, lift));
                    }
                    else
                    {
                        Assert.True(point.ResidualM <= 1e-9);
                        Assert.True(speed <= OperatingPoint.LeastSpeedRatio(curve, lift) * (1 + 1e-9));
                    }
                }
            );

    private static PumpCurve OraclePump(CsvRow row)
    {
        var (a0, a1, a2) = (row.Number("a0_m"), row.Number("a1_m_per_m3h"), row.Number("a2_m_per_m3h2"));
        var end = -2 * a0 / (a1 - Math.Sqrt((a1 * a1) - (4 * a0 * a2)));
        return PumpCurve.Fit([
            .. Enumerable
                .Range(0, 6)
                .Select(i => -0.19 * i * end)
                .Select(q => new PumpPoint(
                    Math.Abs(q) / SPerH,
                    a0 + (a1 * Math.Abs(q)) + (a2 * q * q),
                    q == 0 ? 0 : 0.5
                )),
        ]);
    }

    private static LiftSystem Lift(CsvRow row, PipeRun run, double viscosity)
    {
        var well = new StepDrawdown(
            row.Number("drawdown_b_m_per_m3h") * SPerH,
            row.Number("drawdown_c_m_per_m3h2") * SPerH * SPerH,
            1,
            [],
            DrawdownBasis.Steps,
            1
        );
        return new(row.Number("static_head_m"), well, [run], 0, viscosity);
    }
}
