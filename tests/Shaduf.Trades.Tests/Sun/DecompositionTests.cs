using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class DecompositionTests
{
    [Fact]
    public void Parts_make_up_the_whole() =>
        Gen.Select(Gen.Double[0, 1200], Gen.Double[0, 180], Gen.Double[1310, 1415])
            .Sample(
                (globalWPerM2, zenithDeg, normalWPerM2) =>
                {
                    var split = Decomposition.ErbsSplit(globalWPerM2, zenithDeg, normalWPerM2);
                    var back = (split.DirectNormalWPerM2 * Math.Cos(zenithDeg * Math.PI / 180)) + split.DiffuseWPerM2;
                    return split.DirectNormalWPerM2 >= 0
                        && split.DiffuseWPerM2 >= 0
                        && Math.Abs(back - globalWPerM2) < 1e-9;
                }
            );

    [Theory]
    [InlineData(double.NaN, 30, 1361)]
    [InlineData(500, double.NaN, 1361)]
    [InlineData(500, 30, 0)]
    [InlineData(-1, 30, 1361)]
    public void Refuses_what_cannot_be(double globalWPerM2, double zenithDeg, double normalWPerM2) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Decomposition.ErbsSplit(globalWPerM2, zenithDeg, normalWPerM2)
        );
}
