using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class FittingLossTests
{
    [Fact]
    public void Every_fitting_has_a_coefficient_and_a_source() =>
        Assert.All(
            FittingLoss.Names,
            name =>
            {
                Assert.InRange(FittingLoss.Coefficient(name, 0.05), 0.05, 15);
                Assert.NotEmpty(FittingLoss.SourceOf(name));
            }
        );

    [Fact]
    public void An_unknown_fitting_is_refused_with_the_names_that_are_known()
    {
        var trouble = Assert.Throws<ArgumentException>(() => FittingLoss.Coefficient("elbow 30", 0.05));
        Assert.Contains("elbow 90", trouble.Message);
    }
}
