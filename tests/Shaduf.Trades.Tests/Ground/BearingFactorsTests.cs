using CsCheck;
using Shaduf.Ground;

namespace Shaduf.Trades.Tests.Ground;

public sealed class BearingFactorsTests
{
    [Fact]
    public void Factors_grow_with_the_angle_and_have_no_step() =>
        Gen.Select(Gen.Double[0, 39.9], Gen.Bool)
            .Sample(
                (deg, isTerzaghi) =>
                {
                    Func<double, BearingFactorSet> factors = isTerzaghi
                        ? BearingFactors.Terzaghi
                        : BearingFactors.En1997;
                    var (at, above) = (factors(deg), factors(deg + 1e-4));
                    Assert.True(above.SurchargeFactor > at.SurchargeFactor);
                    Assert.True(above.WeightFactor > at.WeightFactor);
                    Assert.True(above.CohesionFactor >= at.CohesionFactor - 1e-6);
                    Assert.InRange(above.CohesionFactor - at.CohesionFactor, -1e-6, 0.001 * at.CohesionFactor);
                    Assert.InRange(above.SurchargeFactor - at.SurchargeFactor, 0, 0.001 * at.SurchargeFactor);
                }
            );

    [Fact]
    public void Between_two_rows_the_weight_factor_stays_below_a_straight_line()
    {
        var (from, middle, to) = (
            BearingFactors.Terzaghi(20).WeightFactor,
            BearingFactors.Terzaghi(22.5).WeightFactor,
            BearingFactors.Terzaghi(25).WeightFactor
        );
        Assert.Equal(Math.Sqrt(from * to), middle, 1e-9);
        Assert.True(middle < (from + to) / 2);
    }

    [Fact]
    public void Clay_without_friction_has_the_limits_of_both_authors()
    {
        Assert.Equal(Math.PI + 2, BearingFactors.En1997(0).CohesionFactor, 1e-12);
        Assert.Equal((1.5 * Math.PI) + 1, BearingFactors.Terzaghi(0).CohesionFactor, 1e-12);
        Assert.Equal(0, BearingFactors.Terzaghi(0).WeightFactor);
        Assert.Throws<ArgumentOutOfRangeException>(() => BearingFactors.Terzaghi(40.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => BearingFactors.En1997(double.NaN));
    }
}
