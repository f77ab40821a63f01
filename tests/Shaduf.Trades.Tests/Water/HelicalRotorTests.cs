using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class HelicalRotorTests
{
    private const double Q0 = 1.3 / 3600;
    private const double Slip = 0.21 / 90 / 3600;

    // Points made from the law itself, at two speeds: the fit gives the law back.
    private static readonly HelicalRotor s_rotor = HelicalRotor.Fit(
        [.. new[] { (0.0, 1.0), (40, 1), (90, 1), (30, 0.6), (60, 0.6) }.Select(each => Point(each.Item1, each.Item2))],
        130
    );

    private static RotorPoint Point(double headM, double ratio) =>
        new((ratio * Q0) - (Slip * headM), headM, ratio * (110 + (3.8 * headM)), ratio);

    [Fact]
    public void The_fit_gives_the_law_back_that_made_the_points()
    {
        Assert.Equal(Q0, s_rotor.NoHeadFlowM3PerS, 1e-15);
        Assert.Equal(Slip, s_rotor.SlipM2PerS, 1e-15);
        Assert.Equal(110, s_rotor.FrictionW, 1e-8);
        Assert.Equal(0.7 * (110 + (3.8 * 50)), s_rotor.ShaftW((0.7 * Q0) - (Slip * 50), 0.7, 1000), 1e-8);
        Assert.Equal(130, s_rotor.ShutOffHeadM);
        Assert.Equal(90, s_rotor.ReachM);
    }

    [Fact]
    public void Flow_head_and_speed_agree() =>
        Gen.Select(Gen.Double[0.3, 1.2], Gen.Double[1, 90])
            .Sample(
                (ratio, headM) =>
                {
                    var flow = (ratio * Q0) - (Slip * headM);
                    Assert.Equal(headM, s_rotor.HeadM(flow, ratio), 1e-6);
                    Assert.Equal(ratio, s_rotor.SpeedRatio(flow, headM), 1e-9);
                    Assert.InRange(s_rotor.EfficiencyShare(flow, ratio), 0, 0.95);
                }
            );

    /// <summary>On a pipe with a static head the table starts at little speed and stays below the head of the data sheet.</summary>
    [Fact]
    public void The_table_keeps_below_the_largest_head()
    {
        var system = new LiftSystem(60, null, [new(0.02, 1e-5, 900, 0)], 0, 1e-6);
        var table = PumpTable.Build(s_rotor, system, new(0.2, 1, double.PositiveInfinity), watts => watts / 0.8);
        Assert.True(table.CappedByCurve);
        Assert.InRange(table.Points[^1].Operating.HeadM, 89.99, 90);
        Assert.All(table.Points, point => Assert.False(point.Operating.BeyondCurve));
        Assert.Equal(Math.Max(0.2, Slip * 60 / Q0), table.Points[0].Operating.SpeedRatio, 1e-9);
        Assert.All(table.Points.Zip(table.Points.Skip(1)), pair => Assert.True(pair.Second.PowerW > pair.First.PowerW));
    }

    [Fact]
    public void Points_that_no_rotor_has_are_refused()
    {
        RotorPoint[] right = [Point(0, 1), Point(90, 1)];
        Refused("slips back", [right[0], right[1] with { FlowM3PerS = right[0].FlowM3PerS * 1.1 }]);
        Refused("slips back", [right[0], right[1] with { FlowM3PerS = right[0].FlowM3PerS * 0.3 }]);
        Refused("does not rise", [right[0], right[1] with { ShaftW = 50 }]);
        Refused("more than a rotor has", [right[0] with { ShaftW = 1 }, right[1] with { ShaftW = 290 }]);
        Refused("at least two heads", [right[0], right[0] with { SpeedRatio = 0.8 }]);
        Assert.Throws<ArgumentOutOfRangeException>(() => HelicalRotor.Fit(right, 80));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            HelicalRotor.Fit([right[0], right[1] with { HeadM = double.NaN }], 130)
        );
    }

    private static void Refused(string why, IReadOnlyList<RotorPoint> points) =>
        Assert.Contains(
            why,
            Assert.Throws<ArgumentException>(() => HelicalRotor.Fit(points, 130)).Message,
            StringComparison.Ordinal
        );
}
