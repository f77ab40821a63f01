using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class PumpCurveTests
{
    [Fact]
    public void Speed_ratio_is_the_inverse_of_the_head() =>
        Gen.Select(MadeUp.AnyPump, Gen.Double[0.3, 1.2], Gen.Double[0, 0.9])
            .Sample(
                (curve, speed, share) =>
                {
                    var flow = share * curve.NoHeadFlowM3PerS * speed;
                    Near.Share(speed, curve.SpeedRatio(flow, curve.HeadM(flow, speed)), 1e-9);
                }
            );

    [Fact]
    public void Efficiency_stays_between_the_points_and_follows_them() =>
        Gen.Select(MadeUp.AnyPump, Gen.Double[0, 1.3], Gen.Double[0.3, 1.2])
            .Sample(
                (curve, share, speed) =>
                {
                    var best = curve.Points.Max(point => point.EfficiencyShare);
                    var flow = share * curve.NoHeadFlowM3PerS * speed;
                    Assert.InRange(curve.EfficiencyShare(flow, speed), 0, best + 1e-12);
                    Assert.Equal(0, curve.EfficiencyShare(0, speed));

                    // All points are lowered as the best one is, between half and full speed.
                    var slow = Math.Clamp(speed, 0.5, 1);
                    var factor = (1 - ((1 - best) * Math.Pow(1 / slow, 0.1))) / best;
                    Assert.All(
                        curve.Points,
                        point =>
                            Assert.Equal(
                                point.EfficiencyShare * factor,
                                curve.EfficiencyShare(point.FlowM3PerS * speed, speed),
                                1e-9
                            )
                    );
                }
            );

    [Fact]
    public void An_efficiency_carried_to_another_speed_and_back_is_the_same() =>
        Gen.Select(Gen.Double[0.15, 0.9], Gen.Double[0.5, 1.2])
            .Sample(
                (share, speed) =>
                    Assert.Equal(
                        share,
                        Affinity.RatedEfficiencyShare(Affinity.EfficiencyShare(share, speed), speed),
                        1e-12
                    )
            );

    [Fact]
    public void Shaft_power_has_no_jump_at_no_flow()
    {
        var curve = MadeUp.Pump(80, 0.2, 0.002, 0.6);
        Near.Share(curve.ShaftW(0, 0.9, 1000), curve.ShaftW(1e-10, 0.9, 1000), 1e-5);
        Near.Share(
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

    private static void Refused(string reason, params PumpPoint[] points) =>
        Assert.Contains(reason, Assert.Throws<ArgumentException>(() => PumpCurve.Fit(points)).Message);
}
