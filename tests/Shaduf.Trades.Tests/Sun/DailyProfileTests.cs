using CsCheck;
using Shaduf.Sun;

namespace Shaduf.Trades.Tests.Sun;

public sealed class DailyProfileTests
{
    [Fact]
    public void Normalised_shares_add_up_to_one_and_none_is_negative() =>
        Gen.Double[10, 180]
            .Sample(sunsetDeg =>
            {
                const int slices = 2000;
                var widthDeg = 2 * sunsetDeg / slices;
                var shares = Enumerable
                    .Range(0, slices)
                    .Select(i => DailyProfile.NormalisedShare(-sunsetDeg + ((i + 0.5) * widthDeg), sunsetDeg))
                    .ToArray();
                return shares.Min() >= 0 && Math.Abs((shares.Sum() * widthDeg / 15) - 1) < 1e-5;
            });

    [Fact]
    public void Refuses_an_hour_of_the_night() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DailyProfile.NormalisedShare(95, 90));
}
