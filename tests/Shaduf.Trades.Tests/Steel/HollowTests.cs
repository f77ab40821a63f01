using CsCheck;
using Shaduf.Steel;

namespace Shaduf.Trades.Tests.Steel;

public sealed class HollowTests
{
    [Fact]
    public void Turning_a_rectangle_swaps_its_axes() =>
        Gen.Select(Gen.Double[60, 200], Gen.Double[60, 200], Gen.Double[1, 8])
            .Sample(
                (heightMm, widthMm, wallMm) =>
                {
                    var upright = RectangularHollow.ColdFormed(heightMm, widthMm, wallMm);
                    var flat = RectangularHollow.ColdFormed(widthMm, heightMm, wallMm);
                    Near.Share(upright.InertiaYMm4, flat.InertiaZMm4, 1e-9);
                    Near.Share(upright.PlasticModulusZMm3!.Value, flat.PlasticModulusYMm3!.Value, 1e-9);
                    Near.Share(upright.TorsionConstantMm4, flat.TorsionConstantMm4, 1e-9);
                    Assert.True(upright.PlasticModulusYMm3 > upright.ElasticModulusYMm3);
                }
            );

    [Fact]
    public void Round_tube_as_thick_as_its_radius_is_a_solid_bar() =>
        Near.Share(Math.PI / 64 * Math.Pow(20, 4), CircularHollow.Of(20, 10).InertiaYMm4, 1e-12);

    [Theory]
    [InlineData(50, double.NaN)]
    [InlineData(double.NaN, 3)]
    [InlineData(50, 0)]
    [InlineData(10, 3)]
    [InlineData(600, 3)]
    public void Refuses_what_cannot_be(double widthMm, double wallMm)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SquareHollow.ColdFormed(widthMm, wallMm));
        Assert.Throws<ArgumentOutOfRangeException>(() => CircularHollow.Of(widthMm, wallMm * 2));
    }
}
