using CsCheck;
using Shaduf.Power;

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
