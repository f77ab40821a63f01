using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class DarcyWeisbachTests
{
    private static readonly Gen<PipeRun> Run = Gen.Select(
        Gen.Double[0.01, 0.5],
        Gen.Double[0, 0.0003],
        Gen.Double[0, 5000],
        Gen.Double[0, 50],
        (bore, roughness, length, fittings) => new PipeRun(bore, roughness, length, fittings)
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
}
