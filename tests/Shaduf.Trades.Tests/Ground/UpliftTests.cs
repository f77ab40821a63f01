using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class UpliftTests
{
    [Fact]
    public void Concrete_found_for_a_pull_holds_it_and_no_more()
    {
        var concreteM3 = Uplift.ConcreteM3(10, 0);
        Assert.Equal(10, 0.9 * Uplift.WeightKN(concreteM3, 0), 1e-12);
    }

    [Fact]
    public void Water_takes_ten_kilonewtons_of_each_cubic_metre() =>
        Assert.Equal(10, Uplift.WeightKN(1, 0) - Uplift.WeightKN(1, 1), 1e-12);

    [Fact]
    public void A_heavy_rack_in_a_calm_pulls_nothing() => Assert.True(Uplift.PullKN(0, 5) < 0);
}
