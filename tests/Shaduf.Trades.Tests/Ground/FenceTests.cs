using CsCheck;
using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class FenceTests
{
    [Fact]
    public void A_run_of_whole_bays_gets_no_bay_more() =>
        Assert.Equal(new FenceTakeoff(24, 24, 72 * 1.03, 0), Fence.AlongRuns([18, 18, 18, 18], 3, gateWidthM: 0));

    [Fact]
    public void Perimeter_alone_is_never_short_of_posts() =>
        Gen.Select(Gen.Double[6, 60], Gen.Double[6, 60], Gen.Double[0, 1], Gen.Double[1.5, 4])
            .Sample(
                (lengthM, widthM, gateAt, spacingM) =>
                {
                    const double gateWidthM = 3;
                    var leftM = 0.5 + gateAt * (lengthM - gateWidthM - 1);
                    var pegged = Fence.AlongRuns(
                        [leftM, widthM, lengthM, widthM, lengthM - gateWidthM - leftM],
                        spacingM,
                        gateWidthM
                    );
                    var planned = Fence.Along(2 * (lengthM + widthM), spacingM, gateWidthM);
                    Assert.InRange(planned.PostCount, pegged.PostCount, pegged.PostCount + 4);
                    Assert.Equal(pegged.MeshM, planned.MeshM, 1e-9);
                    Assert.Equal(1, planned.GateCount);
                }
            );

    [Fact]
    public void Refuses_nan_and_no_run()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Fence.Along(double.NaN, 3, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fence.AlongRuns([10, double.NaN], 3, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fence.AlongRuns([10], 3, double.NaN));
        Assert.Throws<ArgumentException>(() => Fence.AlongRuns([], 3, 3));
    }
}
