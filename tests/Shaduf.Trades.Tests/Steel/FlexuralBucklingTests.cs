using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class FlexuralBucklingTests
{
    private static readonly Gen<(double Slenderness, BucklingCurve Curve)> Column = Gen.Select(
        Gen.Double[0.2, 20],
        Gen.Enum<BucklingCurve>()
    );

    [Fact]
    public void No_column_carries_more_than_its_yield_or_Eulers_load() =>
        Column.Sample(
            (slenderness, curve) =>
                FlexuralBuckling.ReductionFactor(slenderness, curve) is var left
                && left <= 1
                && left * slenderness * slenderness <= 1
        );

    [Fact]
    public void A_longer_column_carries_less() =>
        Column.Sample(
            (slenderness, curve) =>
                FlexuralBuckling.ReductionFactor(Math.Min(20, slenderness * 1.01), curve)
                <= FlexuralBuckling.ReductionFactor(slenderness, curve)
        );

    [Fact]
    public void A_short_column_does_not_buckle() =>
        Assert.Equal(1, FlexuralBuckling.ReductionFactor(0.2, BucklingCurve.D));
}
