using CsCheck;
using Shaduf.Programme;

namespace Shaduf.Trades.Tests.Programme;

public sealed class ProgressTests
{
    private static readonly Network s_row = Network.Of(
        [NetworkTests.Of("a"), NetworkTests.Of("b"), NetworkTests.Of("c")],
        [new("a", "b"), new("b", "c")]
    );

    [Fact]
    public void What_is_left_goes_on_from_the_day_of_the_report()
    {
        // Tuesday 15:00; b was begun that day and is half done, two hours are left, then four of c.
        var report = new DateTime(2026, 3, 3, 15, 0, 0);
        var progress = new Progress(s_row, report, [Told("a", 2, 2, 1), new("b", new(2026, 3, 3, 8, 0, 0), null, 0.5)]);
        var path = CriticalPath.Of(s_row, NetworkTests.Start, NetworkTests.Site, progress);
        Assert.Equal(new DateTime(2026, 3, 4, 13, 0, 0), path.Finish);
        Assert.Equal(new DateTime(2026, 3, 2, 8, 0, 0), path.Timings[0].EarlyStart);
        Assert.Equal(new DateTime(2026, 3, 3, 8, 0, 0), path.Timings[1].EarlyStart);
    }

    [Fact]
    public void A_report_that_keeps_to_the_plan_changes_nothing()
    {
        var plan = CriticalPath.Of(s_row, NetworkTests.Start, NetworkTests.Site);
        var first = plan.Timings[0];
        var progress = new Progress(s_row, first.EarlyFinish, [new("a", first.EarlyStart, first.EarlyFinish, 1)]);
        var now = CriticalPath.Of(s_row, NetworkTests.Start, NetworkTests.Site, progress);
        Assert.Equal(plan.Finish, now.Finish);
        Assert.Equal(["b", "c"], now.Critical.Select(each => each.Activity.Key));
    }

    [Fact]
    public void Nothing_that_is_left_is_done_before_the_report() =>
        Gen.Select(NetworkTests.Any, Gen.Int[0, 30])
            .Sample(
                (network, days) =>
                {
                    var progress = new Progress(network, NetworkTests.Start.AddDays(days), []);
                    var path = CriticalPath.Of(network, NetworkTests.Start, NetworkTests.Site, progress);
                    Assert.All(path.Timings, each => Assert.True(each.EarlyStart >= progress.Date));
                    var levelled = Levelling.Of(path, LevellingTests.Hands(3), NetworkTests.Site, progress);
                    Assert.All(levelled.Places, each => Assert.True(each.Start >= progress.Date));
                }
            );

    [Fact]
    public void Work_begun_before_what_it_waits_for_is_told()
    {
        var progress = new Progress(s_row, new(2026, 3, 9), [Told("b", 3, 4, 1)]);
        var (begun, notDone) = Assert.Single(progress.OutOfOrder(s_row));
        Assert.Equal(("b", "a"), (begun.Key, notDone.Key));
    }

    [Theory]
    [InlineData("x", 2, 3, 1, "no activity 'x'")]
    [InlineData("a", 10, 11, 1, "after the report")]
    [InlineData("a", 4, 3, 1, "before it was begun")]
    [InlineData("a", 2, 3, 0.5, "not all done")]
    [InlineData("a", 2, 3, double.NaN, "between 0 and 1")]
    public void Progress_that_cannot_be_is_refused(string key, int from, int to, double share, string says)
    {
        var thrown = Assert.Throws<ProgrammeException>(() =>
            new Progress(s_row, new(2026, 3, 9), [Told(key, from, to, share)])
        );
        Assert.Contains(says, thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Progress_told_twice_is_refused() =>
        Assert.Throws<ProgrammeException>(() =>
            new Progress(s_row, new(2026, 3, 9), [Told("a", 2, 3, 1), Told("a", 2, 3, 1)])
        );

    [Fact]
    public void Cash_is_spread_over_the_work_and_none_is_lost() =>
        Gen.Select(NetworkTests.Any, Gen.Int[0, 1_000_000])
            .Sample(
                (network, cents) =>
                {
                    var path = CriticalPath.Of(network, NetworkTests.Start, NetworkTests.Site);
                    var places = path.Timings.Select(each => new Placed(each.EarlyStart, each.EarlyFinish)).ToList();
                    var costs = network.Activities.ToDictionary(each => each.Key, _ => cents / 100m);
                    var curve = CashCurve.Of(network, places, costs, [(path.Finish, 17.5m), (NetworkTests.Start, 3m)]);
                    Assert.Equal(costs.Values.Sum(), curve.Days.Sum(day => day.Paid));
                    Assert.Equal(20.5m - costs.Values.Sum(), curve.Days[^1].Balance);
                    Assert.Equal(curve.Days.Min(day => day.Balance), curve.Lowest!.Balance);
                }
            );

    [Fact]
    public void A_cost_of_no_activity_is_refused() =>
        Assert.Throws<ProgrammeException>(() =>
            CashCurve.Of(s_row, new Placed[3], new Dictionary<string, decimal> { ["x"] = 1 }, [])
        );

    private static ActivityProgress Told(string key, int from, int to, double share) =>
        new(key, new(2026, 3, from, 8, 0, 0), new(2026, 3, to, 12, 0, 0), share);
}
