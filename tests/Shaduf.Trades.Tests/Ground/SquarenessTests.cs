using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class SquarenessTests
{
    [Fact]
    public void Equal_diagonals_are_square_and_others_lean_to_the_longer()
    {
        Assert.Equal(0, Squareness.ErrorDeg(4, 3, 5, 5));
        Assert.True(Squareness.ErrorDeg(4, 3, 5.1, 4.9) > 0);
        Assert.Equal(Squareness.ErrorDeg(4, 3, 5.1, 4.9), -Squareness.ErrorDeg(4, 3, 4.9, 5.1), 1e-12);
    }

    [Fact]
    public void Five_millimetres_or_a_thousandth_are_accepted()
    {
        Assert.Equal(5, Squareness.MostDifferenceMm(3));
        Assert.Equal(14, Squareness.MostDifferenceMm(14), 1e-12);
    }

    [Fact]
    public void Diagonals_of_no_figure_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Squareness.ErrorDeg(4, 3, 9, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Squareness.ErrorDeg(4, double.NaN, 5, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Squareness.MostDifferenceMm(0));
    }
}
