using Shaduf.Working;

namespace Shaduf.Trades.Tests.Working;

public sealed class WithinTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(-0.001)]
    [InlineData(10.001)]
    public void Refuses_what_is_not_inside(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Within.Require(value, 0, 10, "m"));

    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    public void Accepts_both_ends(double value) => Within.Require(value, 0, 10, "m");

    [Fact]
    public void Names_the_argument_and_what_is_accepted()
    {
        var headM = 12.0;
        var trouble = Assert.Throws<ArgumentOutOfRangeException>(() => Within.Require(headM, 0, 10, "m"));
        Assert.StartsWith("headM is 12 m; accepted: 0 to 10 m", trouble.Message);
    }
}
