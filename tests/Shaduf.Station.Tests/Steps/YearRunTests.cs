using CsCheck;

namespace Shaduf.Station.Tests;

public sealed class YearRunTests
{
    private static readonly Design s_design = SmallDesign.Of();

    private static readonly Gen<(double TankM3, double Demand, double Modules)> s_any = Gen.Select(
        Gen.Double[0, 80],
        Gen.Double[0, 5],
        Gen.Double[0, 60]
    );

    [Fact]
    public void Water_in_is_water_out_and_what_stays_to_a_litre() =>
        s_any.Sample(
            each =>
            {
                var run = YearRun.Run(Inputs(each));
                Assert.Equal(run.StartM3 + run.PumpedM3.Sum() - run.DeliveredM3.Sum(), run.EndM3, 0.0005);
                Assert.InRange(run.StartM3, 0, each.TankM3);
                Assert.InRange(run.EndM3, 0, each.TankM3);
            },
            iter: 200
        );

    [Fact]
    public void The_hours_hold_what_the_months_say_and_the_tank_never_overflows() =>
        s_any.Sample(
            each =>
            {
                var trace = YearTrace.Empty();
                var run = YearRun.Run(Inputs(each), trace);
                Assert.All(trace.LevelM3, level => Assert.InRange(level, 0, each.TankM3));
                Assert.Equal(run.PumpedM3.Sum(), trace.PumpedM3.Sum(), 1e-6);
                Assert.Equal(run.DeliveredM3.Sum(), trace.DeliveredM3.Sum(), 1e-6);
                Assert.Equal(run.EndM3, trace.LevelM3[^1]);
            },
            iter: 20
        );

    [Fact]
    public void Nobody_receives_more_than_was_asked_or_pumped() =>
        s_any.Sample(
            each =>
            {
                var run = YearRun.Run(Inputs(each));
                for (var month = 0; month < 12; month++)
                {
                    Assert.InRange(run.DeliveredM3[month], 0, run.DemandM3[month] + 1e-9);
                    Assert.InRange(run.PumpedM3[month], -1e-9, run.PumpableM3[month] + 1e-9);
                    Assert.InRange(run.MetShare(month), 0, 1 + 1e-9);
                }
            },
            iter: 100
        );

    [Fact]
    public void More_tank_and_more_modules_never_deliver_less() =>
        Gen.Select(s_any, Gen.Double[0, 20], Gen.Double[0, 20])
            .Sample(
                (each, tankM3, modules) =>
                {
                    var run = YearRun.Run(Inputs(each));
                    var moreTank = YearRun.Run(Inputs(each with { TankM3 = each.TankM3 + tankM3 }));
                    var moreModules = YearRun.Run(Inputs(each with { Modules = each.Modules + modules }));
                    for (var month = 0; month < 12; month++)
                    {
                        Assert.True(moreTank.DeliveredM3[month] >= run.DeliveredM3[month] - 1e-9);
                        Assert.True(moreModules.DeliveredM3[month] >= run.DeliveredM3[month] - 1e-9);
                    }
                },
                iter: 100
            );

    private static YearInputs Inputs((double TankM3, double Demand, double Modules) each) =>
        s_design.Sizing.Inputs(s_design.Demand) with
        {
            UsefulM3 = each.TankM3,
            ModulesKept = each.Modules,
            DrawM3 = [.. s_design.Demand.HourM3.Select(hour => hour * each.Demand)],
        };
}
