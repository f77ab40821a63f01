using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class StepDrawdownTests
{
    private static readonly Gen<PumpedStep[]> Steps = Gen.Select(
        Gen.Double[1e-5, 0.05],
        Gen.Double[0, 50],
        (flow, drawdown) => new PumpedStep(flow, drawdown)
    ).Array[1, 8];

    [Fact]
    public void Fit_gives_back_the_well_that_made_the_readings() =>
        Gen.Select(Gen.Double[100, 20_000], Gen.Double[1e3, 1e7])
            .Sample(
                (aquifer, wellLoss) =>
                {
                    var flows = new double[] { 0.0005, 0.001, 0.0015, 0.002 };
                    var fit = StepDrawdown.Fit([
                        .. flows.Select(q => new PumpedStep(q, (aquifer * q) + (wellLoss * q * q))),
                    ]);
                    Assert.Equal(DrawdownBasis.Steps, fit.Basis);
                    Near.Share(aquifer, fit.AquiferSPerM2, 1e-7);
                    Near.Share(wellLoss, fit.WellS2PerM5, 1e-7);
                    Assert.Equal(1, fit.DeterminationCoefficient, 1e-6);
                    Assert.All(fit.ResidualsM, residual => Assert.Equal(0, residual, 1e-9));
                }
            );

    [Fact]
    public void Drawdown_is_finite_and_never_falls_with_the_flow_whatever_was_read() =>
        Gen.Select(Steps, Gen.Double[0, 0.1], Gen.Double[0, 0.1])
            .Sample(
                (steps, one, other) =>
                {
                    var well = StepDrawdown.Fit(steps);
                    var (less, more) = (well.DrawdownM(Math.Min(one, other)), well.DrawdownM(Math.Max(one, other)));
                    Assert.True(double.IsFinite(more) && less >= 0 && less <= more);
                }
            );

    [Fact]
    public void Two_steps_give_a_straight_line_through_the_worse_of_them()
    {
        var well = StepDrawdown.Fit([new(0.001, 2), new(0.002, 5)]);
        Assert.Equal(DrawdownBasis.TooFewSteps, well.Basis);
        Assert.Equal(2500, well.AquiferSPerM2, 1e-9);
        Assert.Equal(0, well.WellS2PerM5);
        Assert.Null(well.Walton);
        Assert.Equal([-0.5, 0], well.ResidualsM.Select(residual => Math.Round(residual, 9)));
    }

    [Fact]
    public void Steps_at_one_and_the_same_rate_are_no_step_test() =>
        Assert.Equal(
            DrawdownBasis.TooFewSteps,
            StepDrawdown.Fit([new(0.001, 2), new(0.001, 2.1), new(0.001, 2.2), new(0.002, 5)]).Basis
        );

    [Fact]
    public void A_well_that_clears_while_tested_is_not_given_a_negative_loss()
    {
        var well = StepDrawdown.Fit([new(0.001, 4), new(0.002, 7), new(0.003, 9)]);
        Assert.Equal(DrawdownBasis.RegressionRefused, well.Basis);
        Assert.Equal(4000, well.AquiferSPerM2, 1e-9);
        Assert.Equal(0, well.WellS2PerM5);
    }

    [Fact]
    public void A_straight_well_is_not_refused_for_rounding()
    {
        var well = StepDrawdown.Fit([new(0.0011, 0.0033), new(0.0017, 0.0051), new(0.0023, 0.0069)]);
        Assert.Equal(DrawdownBasis.Steps, well.Basis);
        Assert.Equal(WaltonClass.Sound, well.Walton);
    }

    [Fact]
    public void A_single_reading_gives_its_own_drawdown_back() =>
        Assert.Equal(6.5, StepDrawdown.FromSingle(0.0015, 6.5).DrawdownM(0.0015), 1e-12);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(double.NaN, 1)]
    [InlineData(0.001, double.NaN)]
    [InlineData(0.001, -1)]
    public void Impossible_readings_are_refused(double flow, double drawdown) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StepDrawdown.FromSingle(flow, drawdown));

    [Fact]
    public void No_reading_is_no_well() => Assert.Throws<ArgumentException>(() => StepDrawdown.Fit([]));

    [Fact]
    public void Working_adds_up_to_the_drawdown()
    {
        var well = StepDrawdown.Fit([new(0.001, 2), new(0.002, 5), new(0.003, 9)]);
        var lines = well.Show(0.0025).Lines;
        Assert.Equal(well.DrawdownM(0.0025), lines[2].Value);
        Assert.Equal(lines[2].Value, lines[0].Value + lines[1].Value, 1e-12);
    }
}
