using CsCheck;
using Shaduf.Workshop;

namespace Shaduf.Trades.Tests.Workshop;

public sealed class PaintCoatTests
{
    // Volume balance the other way round: solids that stay on the steel make the film.
    [Fact]
    public void Solids_on_the_steel_make_the_film() =>
        Gen.Select(Gen.Double[1, 500], Gen.Double[0.2, 0.9], Gen.Double[20, 200], Gen.Double[0, 0.6])
            .Sample(
                (areaM2, solidsShare, filmUm, lossShare) =>
                {
                    var litres = PaintCoat.Litres(areaM2, solidsShare, filmUm, lossShare);
                    var filmM3 = litres / 1000 * (1 - lossShare) * solidsShare;
                    Assert.Equal(filmUm, filmM3 / areaM2 * 1e6, 1e-9);
                }
            );

    [Fact]
    public void Refuses_nan()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PaintCoat.Litres(double.NaN, 0.5, 40, 0.3));
        Assert.Throws<ArgumentOutOfRangeException>(() => PaintCoat.Litres(42, double.NaN, 40, 0.3));
        Assert.Throws<ArgumentOutOfRangeException>(() => PaintCoat.Litres(42, 0.5, double.NaN, 0.3));
        Assert.Throws<ArgumentOutOfRangeException>(() => PaintCoat.Litres(42, 0.5, 40, double.NaN));
    }
}
