using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Station.Tests;

public sealed class YearRunTests
{
    private static readonly Design s_design = SmallDesign.Of();

    private static readonly Gen<(double TankM3, double Demand, double Modules)> s_any = Gen.Select(
        Gen.Double[0, 80],
        Gen.Double[0, 5],
        Gen.Double[0, 60]
    );

    private static readonly Gen<TankStops> s_stops = Gen.Select(
        Gen.Double[0, 1],
        Gen.Double[0, 0.5],
        Gen.Double[0, 0.5],
        (restart, close, more) => new TankStops(restart, close, Math.Min(1, close + more))
    );

    // What may be taken in an hour and in a day, month by month; a third of the days without a limit.
    private static readonly Gen<SourceLimits> s_limits = Gen.Select(
        Gen.Double[0.1, 12].Array[12],
        Gen.Double[0, 60].Array[12],
        (hour, day) => new SourceLimits([.. hour], [.. day.Select(each => each > 40 ? double.PositiveInfinity : each)])
    );

    [Fact]
    public void No_hour_and_no_day_takes_more_than_it_may() =>
        Gen.Select(s_any, s_stops, s_limits)
            .Sample(
                (each, stops, limits) =>
                {
                    var trace = YearTrace.Empty();
                    var run = YearRun.Run(Inputs(each) with { Stops = stops, Limits = limits }, trace);
                    for (var at = 0; at < trace.PumpedM3.Length; at += 24)
                    {
                        var (day, month) = (trace.PumpedM3.AsSpan(at, 24).ToArray(), YearCalendar.MonthOf(at));
                        Assert.True(day.Max() <= limits.HourM3[month] + 1e-9);
                        Assert.True(day.Sum() <= limits.DayM3[month] + 1e-9);
                    }

                    for (var month = 0; month < 12; month++)
                    {
                        Assert.True(run.PumpedM3[month] <= run.PumpableM3[month] + 1e-9);
                    }
                },
                iter: 50
            );

    [Fact]
    public void Water_in_is_water_out_and_what_stays_to_a_litre() =>
        Gen.Select(s_any, s_stops, s_limits)
            .Sample(
                (each, stops, limits) =>
                {
                    var run = YearRun.Run(Inputs(each) with { Stops = stops, Limits = limits });
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

    /// <summary>Stops only ever take water away, so that a run without them bounds every run with a float alone.</summary>
    [Fact]
    public void A_float_with_hysteresis_never_delivers_more_than_one_that_throttles() =>
        Gen.Select(s_any, Gen.Double[0, 1])
            .Sample(
                (each, restart) =>
                {
                    var throttled = YearRun.Run(Inputs(each));
                    var stopped = YearRun.Run(Inputs(each) with { Stops = new(restart, 0, 0) });
                    for (var month = 0; month < 12; month++)
                    {
                        Assert.InRange(stopped.DeliveredM3[month], 0, throttled.DeliveredM3[month] + 1e-9);
                    }
                },
                iter: 100
            );

    /// <summary>Hour by hour: a full tank stops the pump until the restart level, an empty one shuts the outlet until it reopens.</summary>
    [Fact]
    public void Pump_and_outlet_stop_and_start_at_their_levels()
    {
        var inputs = Inputs((10, 1, 14)) with
        {
            Stops = new(0.7, 0.1, 0.4),
            DrawM3 = [.. s_design.Demand.HourM3.Select((hour, i) => hour * (i < 4000 ? 0.5 : 6))],
        };
        var trace = YearTrace.Empty();
        YearRun.Run(inputs, trace);
        var (stops, shuts) = (0, 0);
        for (var hour = 1; hour < trace.LevelM3.Length; hour++)
        {
            var (before, after) = (trace.LevelM3[hour - 1], trace.LevelM3[hour]);
            if (before >= 10 - 1e-9)
            {
                stops++;
                for (var at = hour; at < trace.LevelM3.Length && trace.LevelM3[at - 1] > 7; at++)
                {
                    Assert.Equal(0, trace.PumpedM3[at]);
                }
            }

            if (before <= 1 + 1e-9 && trace.DeliveredM3[hour - 1] < inputs.DrawM3[hour - 1] - 1e-9)
            {
                shuts++;
                for (var at = hour; at < trace.LevelM3.Length && trace.LevelM3[at - 1] < 4; at++)
                {
                    Assert.Equal(0, trace.DeliveredM3[at]);
                }
            }

            Assert.Equal(before + trace.PumpedM3[hour] - trace.DeliveredM3[hour], after, 1e-9);
            Assert.True(after >= 1 - 1e-9 || after >= before, "the outlet drew below its stop");
        }

        Assert.True(stops > 10, "the tank never filled");
        Assert.True(shuts > 10, "the outlet never shut");
    }

    [Fact]
    public void A_room_used_again_forgets_the_run_before()
    {
        var (first, second) = (Inputs((20, 1, 10)), Inputs((5, 2, 30)));
        var room = new YearRoom();
        foreach (var inputs in new[] { first, second, first })
        {
            room.Pump(inputs.ModuleW, inputs.ModulesKept, inputs.Table, inputs.Limits);
            room.Hold(inputs.DrawM3, inputs.UsefulM3, inputs.Stops, inputs.Limits);
            var run = YearRun.Run(inputs);
            Assert.Equal(run.DeliveredM3, room.DeliveredM3.ToArray());
            Assert.Equal(run.PumpedM3, room.PumpedM3.ToArray());
            Assert.Equal((run.StartM3, run.EndM3), (room.StartM3, room.EndM3));
        }
    }

    private static YearInputs Inputs((double TankM3, double Demand, double Modules) each) =>
        s_design.Sizing.Inputs(s_design.Demand) with
        {
            Stops = TankStops.None,
            UsefulM3 = each.TankM3,
            ModulesKept = each.Modules,
            DrawM3 = [.. s_design.Demand.HourM3.Select(hour => hour * each.Demand)],
        };
}
