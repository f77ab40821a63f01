using System.Collections.Immutable;
using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class MassCurveTests
{
    [Fact]
    public void Supply_that_follows_the_draw_needs_no_tank()
    {
        var village = DrawPattern.Named("two-peak village").HourShares;
        Assert.Equal(0, MassCurve.UsefulShare(village, village));
    }

    [Fact]
    public void Tank_share_lies_between_nothing_and_the_day() =>
        Gen.Select(Day, Day).Sample((supply, draw) => Assert.InRange(MassCurve.UsefulShare(supply, draw), 0, 1 + 1e-9));

    private static readonly Gen<ImmutableArray<double>> Day = Gen.Double[0.001, 1]
        .Array[24]
        .Select(weights => weights.Select(weight => weight / weights.Sum()).ToImmutableArray());
}
