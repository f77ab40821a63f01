using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class NpshCurveTests
{
    private static readonly NpshCurve s_curve = NpshCurve.Of([new(0.004, 3.2), new(0.001, 1.6), new(0.002, 1.8)]);

    [Fact]
    public void The_points_are_met_and_the_line_between_them_is_straight()
    {
        Assert.Equal(1.6, s_curve.RequiredM(0), 12);
        Assert.Equal(1.6, s_curve.RequiredM(0.001), 12);
        Assert.Equal(1.7, s_curve.RequiredM(0.0015), 12);
        Assert.Equal(1.8, s_curve.RequiredM(0.002), 12);
        Assert.Equal(2.5, s_curve.RequiredM(0.003), 12);
        Assert.Equal(3.9, s_curve.RequiredM(0.005), 12);
    }

    [Fact]
    public void A_sheet_that_contradicts_itself_is_refused()
    {
        Assert.Throws<ArgumentException>(() => NpshCurve.Of([new(0.001, 2)]));
        Assert.Throws<ArgumentException>(() => NpshCurve.Of([new(0.001, 2), new(0.001, 3)]));
        Assert.Throws<ArgumentException>(() => NpshCurve.Of([new(0.001, 2), new(0.002, 1.9)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => NpshCurve.Of([new(0.001, double.NaN), new(0.002, 2)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => s_curve.RequiredM(double.NaN));
    }
}
