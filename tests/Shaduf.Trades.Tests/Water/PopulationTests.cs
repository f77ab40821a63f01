using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class PopulationTests
{
    [Fact]
    public void Population_that_does_not_grow_stays() => Assert.Equal(812, Population.GeometricCount(812, 0, 20));
}
