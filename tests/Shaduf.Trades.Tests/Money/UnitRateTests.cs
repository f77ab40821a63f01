using CsCheck;
using Shaduf.Money;

namespace Shaduf.Trades.Tests.Money;

public sealed class UnitRateTests
{
    [Fact]
    public void Parts_and_additions_add_up_to_the_whole() =>
        Gen.Select(Gen.Int[1, 9].List[1, 8], Gen.Double[0, 0.3], Gen.Double[0, 0.3], Gen.Int[1, 9])
            .Sample(
                (quantities, first, second, made) =>
                {
                    var rate = UnitRate.Of(
                        [
                            .. quantities.Select(
                                (quantity, i) => new RateLine((RateKind)(i % 3), $"item {i}", quantity, 7m + i)
                            ),
                        ],
                        made,
                        [new("one", first), new("other", second, 3)]
                    );
                    var kinds = Enum.GetValues<RateKind>().Sum(rate.Of);
                    Assert.Equal(rate.Whole, kinds + rate.Additions.Sum(each => each.Amount), 9);
                    Assert.Equal(rate.Whole, rate.PerUnit * made, 9);
                }
            );

    [Fact]
    public void Refuses_what_cannot_be()
    {
        RateLine[] one = [new(RateKind.Labour, "mason", 1, 10)];
        Assert.Throws<ArgumentException>(() => UnitRate.Of([], 1, []));
        Assert.Throws<ArgumentException>(() => UnitRate.Of(one, 0, []));
        Assert.Throws<ArgumentException>(() => UnitRate.Of([one[0] with { UnitRate = -1 }], 1, []));
        Assert.Throws<ArgumentException>(() => UnitRate.Of(one, 1, [new("tools", 0, -1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => UnitRate.Of(one, 1, [new("tools", double.NaN)]));
    }
}
