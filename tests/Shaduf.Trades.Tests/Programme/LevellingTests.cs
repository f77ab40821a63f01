using CsCheck;
using Shaduf.Programme;

namespace Shaduf.Trades.Tests.Programme;

public sealed class LevellingTests
{
    [Fact]
    public void No_more_people_are_at_work_than_there_are_and_every_lag_is_kept() =>
        Gen.Select(NetworkTests.Any, Gen.Int[3, 6])
            .Sample(
                (network, limit) =>
                {
                    var path = CriticalPath.Of(network, NetworkTests.Start, NetworkTests.Site);
                    var levelled = Levelling.Of(path, Hands(limit), NetworkTests.Site);
                    NetworkTests.AssertKept(network, [.. levelled.Places]);
                    Assert.All(levelled.Histogram(network, "hands"), step => Assert.InRange(step.Count, 0, limit));
                    Assert.Equal(0, levelled.Histogram(network, "hands")[^1].Count);
                    Assert.True(levelled.Finish >= path.Finish);
                    Assert.True(levelled.Added >= TimeSpan.Zero);
                }
            );

    [Fact]
    public void With_people_enough_nothing_is_moved() =>
        NetworkTests.Any.Sample(network =>
        {
            var path = CriticalPath.Of(network, NetworkTests.Start, NetworkTests.Site);
            var levelled = Levelling.Of(path, Hands(1000), NetworkTests.Site);
            Assert.Equal(path.Timings.Select(each => each.EarlyStart), levelled.Places.Select(each => each.Start));
            Assert.Equal(TimeSpan.Zero, levelled.Added);
        });

    [Fact]
    public void The_activity_that_must_start_first_goes_first()
    {
        static Activity By(string key, double hours) =>
            NetworkTests.Of(key) with
            {
                Work = TimeSpan.FromHours(hours),
                Crew = Hands(2),
            };
        var network = Network.Of([By("short", 8), By("long", 8), By("after", 16)], [new("long", "after")]);
        var path = CriticalPath.Of(network, NetworkTests.Start, NetworkTests.Site);
        var levelled = Levelling.Of(path, Hands(3), NetworkTests.Site);
        Assert.True(levelled.Places[1].Start < levelled.Places[0].Start);
        Assert.Equal(TimeSpan.FromHours(8), levelled.Added);
    }

    [Fact]
    public void An_activity_for_more_people_than_there_are_is_refused_by_name()
    {
        var network = Network.Of([NetworkTests.Of("lift") with { Crew = Hands(7) }], []);
        var path = CriticalPath.Of(network, NetworkTests.Start, NetworkTests.Site);
        var thrown = Assert.Throws<ProgrammeException>(() => Levelling.Of(path, Hands(4), NetworkTests.Site));
        Assert.Equal("'the lift' needs 7 of hands, and there are 4", thrown.Message);
    }

    internal static Dictionary<string, int> Hands(int count) => new() { ["hands"] = count };
}
