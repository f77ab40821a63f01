using CsCheck;
using Shaduf.Power;

namespace Shaduf.Trades.Tests.Power;

public sealed class ProofKernelTests
{
    private static readonly ModuleSheet s_module = new(
        450,
        41.5,
        13.9,
        34.2,
        13.2,
        new(-0.0034, -0.0026, 0.0005),
        44,
        1500,
        25
    );

    [Fact]
    public void More_light_is_more_current_and_more_heat_less_voltage() =>
        Gen.Select(Gen.Double[100, 1200], Gen.Double[0, 80])
            .Sample(
                (light, cell) =>
                {
                    Assert.True(
                        StringOfTheDay.ShortCircuitA(s_module, light + 50, cell)
                            > StringOfTheDay.ShortCircuitA(s_module, light, cell)
                    );
                    Assert.True(
                        StringOfTheDay.OpenCircuitV(s_module, 2.8, 12, light, cell + 5)
                            < StringOfTheDay.OpenCircuitV(s_module, 2.8, 12, light, cell)
                    );
                }
            );

    [Fact]
    public void At_standard_conditions_the_card_is_read_back()
    {
        Assert.Equal(13.9, StringOfTheDay.ShortCircuitA(s_module, 1000, 25), 1e-12);
        Assert.Equal(12 * 41.5, StringOfTheDay.OpenCircuitV(s_module, 2.8, 12, 1000, 25), 1e-9);
    }

    [Fact]
    public void A_point_carried_nowhere_stays_and_carried_there_and_back_returns_without_curvature() =>
        Gen.Select(Gen.Double[0.5, 12], Gen.Double[1, 40], Gen.Double[500, 1100], Gen.Double[10, 70])
            .Sample(
                (current, voltage, light, cell) =>
                {
                    var point = new TestPoint(current, voltage);
                    TestCurve At(double shortA) => new(shortA, 0.005, -0.1, 0.3, 0);
                    TestLight here = new(light, cell);
                    Assert.Equal(point, point.Carried(At(12), here, here));
                    TestLight there = new(1000, 25);
                    var carried = point.Carried(At(12), here, there);
                    if (carried is { CurrentA: >= 0, VoltageV: >= 0 })
                    {
                        // Seen from there, the short-circuit current is what the light makes of it.
                        var back = carried.Carried(At(12 * 1000 / light), there, here);
                        Assert.Equal(current, back.CurrentA, 1e-9);
                        Assert.Equal(voltage, back.VoltageV, 1e-9);
                    }
                }
            );

    [Fact]
    public void Refuses_what_cannot_be()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StringOfTheDay.ShortCircuitA(s_module, double.NaN, 25));
        Assert.Throws<ArgumentOutOfRangeException>(() => StringOfTheDay.OpenCircuitV(s_module, 2.8, 0, 800, 25));
        Assert.Throws<ArgumentOutOfRangeException>(() => InsulationTest.TestV(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => InsulationTest.LeastMohm(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new TestPoint(1, 1).Carried(new(12, 0, 0, 0, 0), new(0, 25), new(1000, 25))
        );
    }

    [Fact]
    public void Small_systems_are_tested_gently() =>
        Assert.Equal(
            (250, 0.5, 1.0),
            (InsulationTest.TestV(60), InsulationTest.LeastMohm(60), InsulationTest.LeastMohm(400))
        );
}
