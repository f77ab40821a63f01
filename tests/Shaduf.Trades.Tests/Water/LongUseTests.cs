using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class LongUseTests
{
    /// <summary>Pulses of eight hours a day, each superposed by Theis, against the sum of logarithms.</summary>
    [Fact]
    public void Days_of_pumping_leave_what_Theis_superposed_leaves()
    {
        const double t = 2e-3;
        const double s = 1e-4;
        const double q = 2e-3;
        const double hour = 3600;
        var residual = 0.0;
        for (var day = 1; day < 60; day++)
        {
            // The pump of a day ago ran for eight hours; the day at hand has pumped its eight too.
            var (began, ended) = ((24 * day + 8) * hour, 24 * day * hour);
            residual += Theis.DrawdownM(q, t, s, 0.1, began) - Theis.DrawdownM(q, t, s, 0.1, ended);
        }

        var slope = Math.Log(10) / (4 * Math.PI * t);
        Assert.Equal(residual, DailyPumping.ResidualM(slope, q * 8 * hour, 8, 60), 1e-4);
    }

    [Fact]
    public void A_line_of_drawdown_gives_back_its_own_transmissivity() =>
        Gen.Select(Gen.Double[1e-4, 1e-2], Gen.Double[1e-3, 2e-2])
            .Sample(
                (transmissivity, flow) =>
                {
                    double[] times = [3600, 7200, 14_400, 28_800, 57_600, 86_400];
                    var line = CooperJacob.Fit(
                        flow,
                        [
                            .. times.Select(t => new TimedDrawdown(
                                t,
                                Theis.DrawdownM(flow, transmissivity, 1e-4, 0.1, t)
                            )),
                        ]
                    )!;
                    Assert.Equal(transmissivity, line.TransmissivityM2PerS, transmissivity * 1e-3);
                    Assert.Equal(1, line.LateSlopeFactor, 1e-2);
                    Assert.Equal(1e-4, line.StorageCoefficient(0.1), 1e-5);
                }
            );

    [Fact]
    public void A_level_that_rises_gives_no_line() =>
        Assert.Null(CooperJacob.Fit(0.01, [new(3600, 3), new(7200, 2.9), new(9000, 2.8)]));

    [Fact]
    public void The_flow_of_a_drawdown_draws_down_so_far() =>
        Gen.Select(Gen.Double[100, 5e4], Gen.Double[0, 1e7], Gen.Double[0, 100])
            .Sample(
                (aquifer, well, drawdown) =>
                {
                    var curve = new StepDrawdown(aquifer, well, 1, [], DrawdownBasis.Steps, 1);
                    Assert.Equal(drawdown, curve.DrawdownM(curve.FlowAtM3PerS(drawdown)), 1e-6);
                }
            );
}
