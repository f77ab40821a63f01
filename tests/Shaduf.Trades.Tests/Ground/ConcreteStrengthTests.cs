using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class ConcreteStrengthTests
{
    [Theory]
    [InlineData(StrengthGain.Aci209)]
    [InlineData(StrengthGain.En1992ClassR)]
    [InlineData(StrengthGain.En1992ClassN)]
    [InlineData(StrengthGain.En1992ClassS)]
    public void Older_concrete_is_stronger_and_whole_at_28_days(StrengthGain gain)
    {
        var shares = Enumerable.Range(1, 365).Select(age => ConcreteStrength.ShareAtDays(age, gain)).ToList();
        Assert.Equal(shares.Order(), shares);
        Assert.InRange(shares[27], 0.999, 1.008);
        Assert.InRange(shares[0], 0.1, 0.5);
    }

    [Fact]
    public void Slow_cement_is_behind_normal_and_rapid()
    {
        var rapid = ConcreteStrength.ShareAtDays(7, StrengthGain.En1992ClassR);
        var normal = ConcreteStrength.ShareAtDays(7, StrengthGain.En1992ClassN);
        var slow = ConcreteStrength.ShareAtDays(7, StrengthGain.En1992ClassS);
        Assert.True(slow < normal && normal < rapid);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(400)]
    public void Refuses_an_age_outside_the_curve(double ageDays) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ConcreteStrength.ShareAtDays(ageDays, StrengthGain.Aci209));
}
