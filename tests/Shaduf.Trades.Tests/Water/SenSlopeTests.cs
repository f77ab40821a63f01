using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

public sealed class SenSlopeTests
{
    private static readonly Gen<double[]> Series = Gen.Double[-100, 100].Array[2, 40];

    private static double[] Steps(double[] values) => [.. Enumerable.Range(0, values.Length).Select(i => (double)i)];

    [Fact]
    public void A_straight_line_has_its_own_slope() =>
        Gen.Select(Gen.Double[-10, 10], Gen.Int[2, 60])
            .Sample(
                (slope, count) =>
                {
                    double[] steps = [.. Enumerable.Range(0, count).Select(i => (double)i)];
                    Assert.Equal(
                        slope,
                        SenSlope.Of(steps, [.. steps.Select(step => 3 + (slope * step))]).ChangeRatio,
                        1e-9
                    );
                },
                iter: Math.Max(100, Check.Iter / 10)
            );

    [Fact]
    public void Turned_round_in_time_it_changes_sign_and_chance_stays() =>
        Series.Sample(
            values =>
            {
                var (forth, back) = (
                    SenSlope.Of(Steps(values), values),
                    SenSlope.Of(Steps(values), [.. values.Reverse()])
                );
                Assert.Equal(forth.ChangeRatio, -back.ChangeRatio, 1e-9);
                Assert.Equal((forth.ScoreNumber, forth.ChanceShare), (-back.ScoreNumber, back.ChanceShare));
                Assert.InRange(forth.ChanceShare, 0, 1);
            },
            iter: Math.Max(100, Check.Iter / 10)
        );

    [Fact]
    public void One_wild_week_does_not_move_it_far()
    {
        double[] steps = [.. Enumerable.Range(0, 21).Select(i => (double)i)];
        double[] values = [.. steps.Select(step => 1 - (0.01 * step))];
        values[7] = 50;
        Assert.Equal(-0.01, SenSlope.Of(steps, values).ChangeRatio, 1e-9);
    }

    [Fact]
    public void What_does_not_change_is_chance() =>
        Assert.Equal(new SenSlope(0, 0, 1), SenSlope.Of([0, 1, 2, 3], [5, 5, 5, 5]));

    [Theory]
    [InlineData(new double[] { 1 }, new double[] { 1 })]
    [InlineData(new double[] { 1, 1 }, new double[] { 1, 2 })]
    [InlineData(new double[] { 2, 1 }, new double[] { 1, 2 })]
    [InlineData(new double[] { 1, 2 }, new double[] { 1, double.NaN })]
    [InlineData(new double[] { 1, 2 }, new double[] { 1, 2, 3 })]
    public void Too_few_points_and_steps_that_do_not_rise_are_refused(double[] steps, double[] values) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SenSlope.Of(steps, values));
}
