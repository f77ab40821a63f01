using CsCheck;
using Shaduf.Water;
using Shaduf.Working;

namespace Shaduf.Trades.Tests.Water;

public sealed class PumpTests
{
    private const double SPerH = 3600;

    // A made-up pump and system of every size a station may have.
    private static readonly Gen<PumpCurve> AnyPump = Gen.Select(
        Gen.Double[10, 300],
        Gen.Double[0, 0.4],
        Gen.Double[0.0003, 0.03],
        Gen.Double[0.3, 0.8],
        Pump
    );

    private static readonly Gen<LiftSystem> AnyLift = Gen.Select(
        Gen.Double[0, 200],
        Gen.Double[0, 20_000],
        Gen.Double[0.03, 0.15],
        Gen.Double[0, 3000],
        (statics, aquifer, bore, length) =>
            new LiftSystem(
                statics,
                StepDrawdown.FromSingle(0.001, aquifer * 0.001),
                [new(bore, 1e-5, length, 10)],
                1,
                0.9e-6
            )
    );

    [Fact]
    public void Operating_points_agree_with_the_independent_figures() =>
        Assert.All(
            Oracle.Rows("operating_point"),
            row =>
            {
                // A fully rough run stands in for k Q2: K of a pipe without length.
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
        Gen.Select(AnyPump, AnyLift, Gen.Double[0.2, 1.2])
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

    [Fact]
    public void Breakdown_adds_up_to_the_head() =>
        Gen.Select(AnyLift, Gen.Double[0, 0.01])
            .Sample((lift, flow) => Assert.Equal(lift.HeadM(flow), lift.Breakdown(flow).TotalM, 1e-9));

    [Fact]
    public void Speed_ratio_is_the_inverse_of_the_head() =>
        Gen.Select(AnyPump, Gen.Double[0.3, 1.2], Gen.Double[0, 0.9])
            .Sample(
                (curve, speed, share) =>
                {
                    var flow = share * curve.NoHeadFlowM3PerS * speed;
                    Oracle.Near(speed, curve.SpeedRatio(flow, curve.HeadM(flow, speed)), 1e-9);
                }
            );

    [Fact]
    public void Efficiency_stays_between_the_points_and_follows_them() =>
        Gen.Select(AnyPump, Gen.Double[0, 1.3], Gen.Double[0.3, 1.2])
            .Sample(
                (curve, share, speed) =>
                {
                    var best = curve.Points.Max(point => point.EfficiencyShare);
                    var flow = share * curve.NoHeadFlowM3PerS * speed;
                    Assert.InRange(curve.EfficiencyShare(flow, speed), 0, best + 1e-12);
                    Assert.Equal(0, curve.EfficiencyShare(0, speed));
                    Assert.All(
                        curve.Points,
                        point =>
                            Assert.Equal(
                                point.EfficiencyShare,
                                curve.EfficiencyShare(point.FlowM3PerS * speed, speed),
                                1e-9
                            )
                    );
                }
            );

    [Fact]
    public void Shaft_power_has_no_jump_at_no_flow()
    {
        var curve = Pump(80, 0.2, 0.002, 0.6);
        Oracle.Near(curve.ShaftW(0, 0.9, 1000), curve.ShaftW(1e-10, 0.9, 1000), 1e-5);
        Oracle.Near(
            HydraulicPower.W(0.001, curve.HeadM(0.001, 0.9), 998) / curve.EfficiencyShare(0.001, 0.9),
            curve.ShaftW(0.001, 0.9, 998),
            1e-12
        );
    }

    [Fact]
    public void Misfit_is_the_largest_distance_from_the_fit()
    {
        var curve = PumpCurve.Fit([new(0, 100, 0), new(0.001, 91, 0.4), new(0.002, 70, 0.6), new(0.003, 35, 0.5)]);
        var misfit = curve.Points.Max(point => Math.Abs(point.HeadM - curve.HeadM(point.FlowM3PerS, 1)));
        Assert.Equal(misfit, curve.LargestMisfitM, 1e-12);
        Assert.InRange(misfit, 0.1, 3);
        Assert.Equal(0.002, curve.BestFlowM3PerS);
        Assert.Equal(0.003, curve.LargestFlowM3PerS);
    }

    [Fact]
    public void Curves_that_cannot_be_are_refused_with_the_reason()
    {
        Refused("at least 4", new(0, 50, 0), new(0.001, 40, 0.5), new(0.002, 20, 0.4));
        Refused("its own flow", new(0.001, 50, 0.1), new(0.001, 40, 0.5), new(0.002, 20, 0.4), new(0.003, 5, 0.2));
        Refused("does not fall", new(0, 50, 0), new(0.001, 60, 0.3), new(0.002, 70, 0.5), new(0.003, 90, 0.6));
        Refused("does not fall", new(0, 50, 0), new(0.001, 30, 0.3), new(0.002, 25, 0.5), new(0.003, 27, 0.6));
        Refused("0 at no flow", new(0, 50, 0.1), new(0.001, 45, 0.3), new(0.002, 30, 0.5), new(0.003, 5, 0.2));
        Refused("0 at no flow", new(0, 50, 0), new(0.001, 45, 0), new(0.002, 30, 0.5), new(0.003, 5, 0.2));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            PumpCurve.Fit([new(0, 50, 0), new(0.001, double.NaN, 0.3), new(0.002, 30, 0.5), new(0.003, 5, 0.2)])
        );
    }

    internal static PumpCurve Pump(double headM, double linearShare, double noHeadFlow, double best) =>
        PumpCurve.Fit([
            .. new double[] { 0, 0.2, 0.4, 0.6, 0.8, 0.95 }.Select(x => new PumpPoint(
                x * noHeadFlow,
                headM * (1 - (linearShare * x) - ((1 - linearShare) * x * x)),
                best * (1 - Math.Pow(Math.Abs((x / 0.6) - 1), 1.8))
            )),
        ]);

    private static void Refused(string reason, params PumpPoint[] points) =>
        Assert.Contains(reason, Assert.Throws<ArgumentException>(() => PumpCurve.Fit(points)).Message);

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
