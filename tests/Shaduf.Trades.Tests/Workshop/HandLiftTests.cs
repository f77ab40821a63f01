using Shaduf.Workshop;

namespace Shaduf.Trades.Tests.Workshop;

public sealed class HandLiftTests
{
    [Fact]
    public void A_team_lifts_less_than_its_members_do_and_more_than_one_less()
    {
        foreach (var height in Enum.GetValues<LiftHeight>())
        {
            Assert.True(HandLift.WomanKg(height) < HandLift.ManKg(height));
        }

        Assert.True(HandLift.TeamKg(25, 2) < 50);
        Assert.All(Enumerable.Range(1, 19), n => Assert.True(HandLift.TeamKg(25, n + 1) > HandLift.TeamKg(25, n)));
    }
}
