using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class PumpTableTests
{
    private static readonly LiftSystem Lift = new(
        50,
        StepDrawdown.FromSingle(0.001, 4),
        [new(0.0514, 1e-5, 850, 10)],
        2,
        0.9e-6
    )
    {
        DensityKgPerM3 = 997,
    };

    private static readonly PumpCurve Curve = MadeUp.Pump(110, 0.1, 0.0023, 0.6);

    [Fact]
    public void Flow_never_falls_with_the_power_and_stays_within_its_ends() =>
        Gen.Select(
                Gen.Select(Gen.Double[10, 300], Gen.Double[0, 0.4], Gen.Double[0.0003, 0.03], Gen.Double[0.3, 0.8]),
                Gen.Select(Gen.Double[0, 200], Gen.Double[0, 20], Gen.Double[0.03, 0.15], Gen.Double[0, 3000]),
                Gen.Select(Gen.Double[0.1, 0.8], Gen.Double[0.8, 1.2], Gen.Double[0.0001, 0.02]),
                Gen.Double[-0.1, 1.2].Array[20]
            )
            .Sample(
                (pump, place, limits, shares) =>
                {
                    var lift = new LiftSystem(
                        place.Item1,
                        StepDrawdown.FromSingle(0.001, place.Item2),
                        [new(place.Item3, 1e-5, place.Item4, 10)],
                        0,
                        0.9e-6
                    );
                    var curve = MadeUp.Pump(pump.Item1, pump.Item2, pump.Item3, pump.Item4);
                    var table = PumpTable.Build(
                        curve,
                        lift,
                        new(limits.Item1, limits.Item2, limits.Item3),
                        shaftW => 20 + (1.3 * shaftW)
                    );
                    Assert.InRange(table.FullFlowM3PerH, 0, limits.Item3 * 3600);
                    var last = 0.0;
                    foreach (var powerW in shares.Order().Select(share => share * table.FullPowerW))
                    {
                        var flow = table.FlowM3PerH(powerW);
                        Assert.InRange(flow, last - 1e-12, table.FullFlowM3PerH + 1e-12);
                        last = flow;
                    }

                    Assert.Equal(table.FullFlowM3PerH, table.FlowM3PerH(table.FullPowerW));
                    Assert.All(table.Points, point => Assert.False(point.Operating.BeyondCurve));
                }
            );

    [Fact]
    public void Table_gives_the_operating_point_of_any_speed_back() =>
        Gen.Double[0.77, 1]
            .Sample(speed =>
            {
                var point = OperatingPoint.Solve(Curve, Lift, speed);
                var shaftW =
                    HydraulicPower.W(point.FlowM3PerS, point.HeadM, 997)
                    / Curve.EfficiencyShare(point.FlowM3PerS, speed);
                var flow = Table(new(0.3, 1, 1)).FlowM3PerH(30 + (1.4 * shaftW));
                Assert.Equal(point.FlowM3PerS * 3600, flow, 0.002);
            });

    [Fact]
    public void No_water_below_the_start_and_no_more_than_full_above()
    {
        var table = Table(new(0.3, 1, 1));
        Assert.Equal(OperatingPoint.LeastSpeedRatio(Curve, Lift), table.Points[0].Operating.SpeedRatio, 1e-12);
        Assert.Equal(0, table.FlowM3PerH(table.StartPowerW - 0.001));
        Assert.Equal(0, table.FlowM3PerH(-5));
        Assert.Equal(table.FullFlowM3PerH, table.FlowM3PerH(1e6));
        Assert.Equal(1, table.HighestRatio);
        Assert.False(table.CappedByFlow || table.CappedByCurve);
        Assert.Throws<ArgumentOutOfRangeException>(() => table.FlowM3PerH(double.NaN));
    }

    [Fact]
    public void A_lowest_speed_above_the_threshold_starts_with_a_jump()
    {
        var table = Table(new(0.9, 1, 1));
        Assert.Equal(0, table.FlowM3PerH(table.StartPowerW - 0.001));
        Assert.Equal(
            OperatingPoint.Solve(Curve, Lift, 0.9).FlowM3PerS * 3600,
            table.FlowM3PerH(table.StartPowerW),
            1e-9
        );
    }

    [Fact]
    public void Highest_speed_is_lowered_to_the_flow_allowed()
    {
        var table = Table(new(0.3, 1, 0.0008));
        Assert.True(table.CappedByFlow);
        Assert.InRange(table.FullFlowM3PerH, 0.0008 * 3600 * (1 - 1e-6), 0.0008 * 3600);
        Assert.InRange(table.HighestRatio, 0.7, 0.99);
    }

    [Fact]
    public void Highest_speed_is_lowered_to_the_end_of_the_curve()
    {
        var table = PumpTable.Build(
            Curve,
            Lift with
            {
                StaticHeadM = 3,
                Well = null,
                Runs = [],
            },
            new(0.1, 1, 1),
            Drawn
        );
        Assert.True(table.CappedByCurve);
        var last = table.Points[^1].Operating;
        Near.Share(Curve.LargestFlowM3PerS * last.SpeedRatio, last.FlowM3PerS, 1e-6);
    }

    [Fact]
    public void A_pump_that_cannot_lift_has_a_table_of_nothing()
    {
        var table = PumpTable.Build(Curve, Lift with { StaticHeadM = 150 }, new(0.3, 1, 1), Drawn);
        Assert.Empty(table.Points);
        Assert.Equal(0, table.HighestRatio);
        Assert.Equal(0, table.FlowM3PerH(0));
        Assert.Equal(0, table.FlowM3PerH(5000));
    }

    [Fact]
    public void A_flow_limit_below_that_of_the_lowest_speed_leaves_nothing()
    {
        var table = Table(new(0.9, 1, 0.0001));
        Assert.True(table.CappedByFlow);
        Assert.Equal(0, table.FlowM3PerH(5000));
    }

    [Fact]
    public void One_speed_is_all_or_nothing()
    {
        var table = Table(new(1, 1, 1));
        Assert.Equal(table.StartPowerW, table.FullPowerW);
        Assert.Equal(0, table.FlowM3PerH(table.FullPowerW - 0.001));
        Assert.True(table.FlowM3PerH(table.FullPowerW) > 3);
    }

    [Fact]
    public void A_drive_that_draws_the_same_at_any_speed_gives_full_flow_from_that_power() =>
        Assert.Equal(
            Table(new(0.3, 1, 1)).FullFlowM3PerH,
            PumpTable.Build(Curve, Lift, new(0.3, 1, 1), _ => 2000).FlowM3PerH(2000)
        );

    [Fact]
    public void A_drive_that_makes_power_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            PumpTable.Build(Curve, Lift, new(0.3, 1, 1), shaftW => 0.9 * shaftW)
        );

    [Fact]
    public void Reading_a_year_allocates_nothing()
    {
        var table = Table(new(0.3, 1, 1));
        var volume = YearM3(table);

        // The runtime itself allocates now and then while it compiles: a loop that allocates does so every time.
        Assert.Equal(0, Enumerable.Range(0, 5).Min(_ => AllocatedByAYear(table, volume)));
    }

    private static long AllocatedByAYear(PumpTable table, double expectedM3)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var volume = YearM3(table);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Equal(expectedM3, volume);
        return allocated;
    }

    private static double YearM3(PumpTable table)
    {
        var volume = 0.0;
        for (var hour = 0; hour < 8760; hour++)
        {
            volume += table.FlowM3PerH(hour % 24 * 60);
        }

        return volume;
    }

    private static double Drawn(double shaftW) => 30 + (1.4 * shaftW);

    private static PumpTable Table(SpeedRange range) => PumpTable.Build(Curve, Lift, range, Drawn);
}
